import type { UnitSystem } from '../../quantity/index.js';
import type { Sweep, SweepPoint } from '../../study/index.js';
import type { Block, Cell, Report } from '../blocks.js';
import { type ChartSeries, chartFigure } from '../figures/index.js';
import { amount, heading, listOf, slug, table } from '../sections/build.js';

const numberOf = (value: unknown): number => (typeof value === 'number' ? value : Number.parseFloat(String(value)));

/** The unit that all values of an input are written in; undefined for words. */
function unitOf(values: readonly unknown[]): string | undefined {
  const units = values.map((value) => /^\s*[+-]?[\d.]+(?:[eE][+-]?\d+)?\s*(.*)$/.exec(String(value))?.[1]);
  return units.every((unit) => unit !== undefined && unit === units[0]) ? units[0] : undefined;
}

function pointRows({ quantities }: Sweep, points: readonly SweepPoint[]): Cell[][] {
  const judged = points.some(({ met }) => met !== undefined);
  return points.map(({ inputs, values, met }): Cell[] => [
    ...inputs.map(String),
    ...(values === undefined
      ? quantities.map(() => 'none')
      : values.map((value, i) => amount(value, quantities[i]?.kind ?? 'number'))),
    ...(judged ? [met === undefined ? '–' : met ? 'met' : 'NOT MET'] : []),
  ]);
}

/** Points that cannot be computed and are told of one by one. */
const mostFailed = 10;

/** Why points have no values. */
function failedPoints({ variations, points }: Sweep): Block[] {
  const failed = points.filter(({ values }) => values === undefined);
  const told = failed.slice(0, mostFailed).map(({ inputs, problems }) => {
    const where = inputs.map((value, i) => `${variations[i]?.path} = ${value}`).join(', ');
    return `${where}: ${problems?.[0]?.message ?? 'not computed'}`;
  });
  const more = failed.length - told.length;
  return listOf(
    failed.length === 0
      ? []
      : [
          `${failed.length} of ${points.length} points could not be computed`,
          ...told,
          ...(more > 0 ? [`and ${more} more; the JSON form says why`] : []),
        ],
  );
}

/** Most lines in one frame. */
const mostLines = 6;

function figureOf(sweep: Sweep, index: number, units: UnitSystem): Block[] {
  const [outer, inner] = sweep.variations;
  const quantity = sweep.quantities[index];
  if (outer === undefined || quantity === undefined) return [];
  const along = inner ?? outer;
  const unit = unitOf(along.values);
  if (unit === undefined) return [];
  const at = (point: SweepPoint) => ({ x: numberOf(point.inputs.at(-1)), y: point.values?.[index] });
  const points = (list: readonly SweepPoint[]) =>
    list.map(at).flatMap(({ x, y }) => (y === undefined ? [] : [{ x, y }]));
  const rows = inner === undefined ? [undefined] : outer.values;
  const step = Math.ceil(rows.length / mostLines);
  const series = rows.flatMap((value, i): ChartSeries[] => {
    if (i % step !== 0) return [];
    const list = points(inner === undefined ? sweep.points : sweep.points.filter(({ inputs }) => inputs[0] === value));
    const label = value === undefined ? quantity.path : `${outer.path} = ${value}`;
    return list.length === 0 ? [] : [{ label, points: list, marks: list.length < 30 }];
  });
  if (series.length === 0) return [];
  const shown = step === 1 ? '' : `, for ${series.length} of the ${rows.length} values of ${outer.path}`;
  return [
    chartFigure({
      id: `sweep-${slug(quantity.path)}`,
      title: `${quantity.path} over ${along.path}${shown}`,
      x: { label: unit === '' ? along.path : `${along.path}, ${unit}`, kind: 'number' },
      y: { label: quantity.path, kind: quantity.kind },
      series,
      units,
    }),
  ];
}

/** The report of a sweep: a table of every point and a figure for each quantity. */
export function sweepReport(
  sweep: Sweep,
  { units = 'metric', title }: { readonly units?: UnitSystem; readonly title?: string } = {},
): Report {
  const { variations, quantities, points, notes } = sweep;
  const judged = points.some(({ met }) => met !== undefined);
  const varied = variations.map(({ path }) => path).join(' and ');
  return {
    title: title ?? `Sweep over ${varied}`,
    subtitle: `${points.length} points over ${varied}`,
    units,
    blocks: [
      heading(2, 'Points', 'points'),
      table(
        'sweep',
        judged ? 'Every point; the verdict is that of all hard targets together' : 'Every point',
        [
          ...variations.map(({ path }) => ({ label: path })),
          ...quantities.map(({ path, kind }) => ({ label: path, kind })),
          ...(judged ? [{ label: 'Targets' }] : []),
        ],
        pointRows(sweep, points),
      ),
      ...(notes.length > 0 ? [{ kind: 'notes' as const, notes }] : []),
      ...failedPoints(sweep),
      ...quantities.flatMap((_, i) => figureOf(sweep, i, units)),
    ],
    data: {
      format: 1,
      variations,
      quantities,
      points: points.map(({ inputs, values, met, problems }) => ({
        inputs,
        values: values ?? null,
        ...(met === undefined ? {} : { met }),
        ...(problems === undefined ? {} : { problems: problems.map(({ code, message }) => ({ code, message })) }),
      })),
      notes,
    },
  };
}
