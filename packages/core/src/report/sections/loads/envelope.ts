import type { LoadResult } from '../../../design/index.js';
import type { LoadComponent } from '../../../laminate/index.js';
import type { KindName, UnitSystem } from '../../../quantity/index.js';
import type { Block } from '../../blocks.js';
import { chartFigure } from '../../figures/index.js';
import { listOf, withoutNoise } from '../build.js';
import { criterionNames, largest } from './words.js';

const kindOf = (name: LoadComponent): KindName => (name.startsWith('N') ? 'forcePerLength' : 'momentPerLength');

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** Envelopes of first-ply failure with the load in them; absent without strengths or without a load. */
export function envelopeBlocks({ model, envelope }: LoadResult, id: string, units: UnitSystem): Block[] {
  if (envelope === undefined) return [];
  const { components, load, others, held, envelopes } = envelope;
  const [first, second] = components;
  const [across, up] = [
    largest([load.x, ...envelopes.flatMap(({ points }) => points.map(({ x }) => x))]),
    largest([load.y, ...envelopes.flatMap(({ points }) => points.map(({ y }) => y))]),
  ];
  const at = ({ x, y }: { readonly x: number; readonly y: number }) => ({
    x: withoutNoise(x, across),
    y: withoutNoise(y, up),
  });
  const names = envelopes.map(({ criterion }) => criterionNames[criterion]);
  const heat = [model.temperatureChange, model.temperatureGradient, model.moisture].some((one) => one !== undefined);
  const figure = chartFigure({
    id: `${id}-envelope`,
    title: `First-ply failure under ${first} and ${second}, load ${model.name}`,
    x: { label: first, kind: kindOf(first) },
    y: { label: second, kind: kindOf(second) },
    series: envelopes.map(({ points }, i) => ({ label: names[i] ?? '', points: points.map(at) })),
    marks: [{ label: 'load', ...at(load) }],
    units,
    summary: `Criteria drawn: ${listed(names)}. Inside a line no layer breaks by that criterion.`,
  });
  return [
    figure,
    ...listOf([
      `inside a line no layer breaks by that criterion; all other components are zero${heat ? ', temperature and moisture as in this load case' : ''}`,
      ...(others.length === 0
        ? []
        : [`the load also has ${listed(others)}, which the envelope leaves out: its ratio cannot be read off here`]),
      ...(held
        ? [
            'a deformation is prescribed, and temperature and moisture make reactions to it that are in the mark: it does not move along a line from the origin as the load grows',
          ]
        : []),
    ]),
  ];
}
