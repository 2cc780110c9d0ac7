import type { StitchingModel, StitchLaw } from '../../../design/index.js';
import { formatQuantity, type UnitSystem } from '../../../quantity/index.js';
import type { BridgingCurve } from '../../../stitch/index.js';
import type { FigureBlock } from '../../blocks.js';
import { type ChartSeries, chartFigure } from '../../figures/index.js';

interface Point {
  readonly x: number;
  readonly y: number;
}

const pointsOf = ({ opening, force }: BridgingCurve): Point[] => opening.map((x, i) => ({ x, y: force[i] ?? 0 }));

/** A curve up to a place; where it goes on, to its height there. */
function upTo(points: readonly Point[], end: number): Point[] {
  const next = points.findIndex(({ x }) => x > end);
  const [a, b] = [points[next - 1], points[next]];
  if (a === undefined || b === undefined) return [...points];
  return [...points.slice(0, next), { x: end, y: a.y + ((b.y - a.y) * (end - a.x)) / (b.x - a.x) }];
}

/** Where the peak of nine in ten samples lies, with its opening. */
function rangeOf(name: string, { interval }: StitchLaw): ChartSeries[] {
  if (interval === undefined) return [];
  const { peak, opening } = interval;
  if (!(peak.high > peak.low) || !(opening.high > opening.low)) return [];
  return [
    {
      label: `${name}, range of its peak`,
      points: [
        { x: opening.low, y: peak.low },
        { x: opening.high, y: peak.low },
        { x: opening.high, y: peak.high },
        { x: opening.low, y: peak.high },
      ],
      closed: true,
    },
  ];
}

/** How far beyond the last peak the curves are followed: where thread is drawn out they go on falling, and only that. */
const beyond = 1.25;

/** Force of one stitch over opening and sliding, about the peaks; the drawing out that follows is told in words. */
export function bridgingFigure(
  model: StitchingModel,
  laws: readonly (readonly [name: string, law: StitchLaw])[],
  id: string,
  units: UnitSystem,
): FigureBlock {
  const ends = laws.map(([, { law }]) => law.opening.at(-1) ?? 0);
  const peaks = laws.map(([, { law, interval }]) => Math.max(law.peak.opening, interval?.opening.high ?? 0));
  const end = Math.min(Math.max(...ends), beyond * Math.max(...peaks));
  const rest = laws.flatMap(([name], i) =>
    (ends[i] ?? 0) > end ? [`${name} ends at ${formatQuantity(ends[i] ?? 0, 'length', { units, digits: 3 })}`] : [],
  );
  const ranges = laws.flatMap(([name, law]) => rangeOf(name, law));
  const said = [
    ...(ranges.length === 0 ? [] : ['A box holds nine in ten of the peak forces, and of the places of the peak.']),
    ...(rest.length === 0 ? [] : [`The drawing stops beyond the peaks: ${rest.join(', ')}.`]),
  ];
  return chartFigure({
    id: `${id}-curve`,
    title: `One stitch across a crack, plan ${model.name}`,
    x: { label: 'opening or sliding', kind: 'length' },
    y: { label: 'force of one stitch', kind: 'force' },
    series: [...laws.map(([name, { law }]) => ({ label: name, points: upTo(pointsOf(law), end) })), ...ranges],
    marks: laws.map(([name, { law }]) => ({ label: `peak, ${name}`, x: law.peak.opening, y: law.peak.force })),
    units,
    ...(said.length === 0 ? {} : { summary: said.join(' ') }),
  });
}
