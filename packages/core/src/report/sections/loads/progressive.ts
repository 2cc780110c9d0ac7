import type { LoadResult } from '../../../design/index.js';
import type { ProgressiveFailure, ProgressiveStep } from '../../../laminate/index.js';
import { formatQuantity, type KindName, type UnitSystem } from '../../../quantity/index.js';
import type { Block, Cell } from '../../blocks.js';
import { chartFigure } from '../../figures/index.js';
import { amount, heading, listOf, table, withoutNoise } from '../build.js';
import { atWords, sandwichLimit } from './limits.js';
import { criterionNames, largest, percent, short } from './words.js';

/** Steps at one load: the first, and the cascade that follows from it. */
function levels(steps: readonly ProgressiveStep[]): ProgressiveStep[][] {
  const found: ProgressiveStep[][] = [];
  for (const step of steps) {
    const last = found.at(-1);
    if (step.cascade && last !== undefined) last.push(step);
    else found.push([step]);
  }
  return found;
}

/** "3, 4, 11 to 14": numbers in order, runs of three and more shortened. */
function numbers(values: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const value of [...new Set(values)].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last !== undefined && value === last[1] + 1) last[1] = value;
    else runs.push([value, value]);
  }
  return runs
    .flatMap(([from, to]) => (to - from < 2 ? [from, ...(to > from ? [to] : [])].map(String) : [`${from} to ${to}`]))
    .join(', ');
}

const becomes = { whole: 'whole', cracked: 'matrix cracked', failed: 'failed' } as const;

/** More loads than this are gathered. */
const mostLevels = 20;

/** Neighbouring loads in one, until a twentieth of the stiffness is gone or fibres break. */
function gathered(all: readonly ProgressiveStep[][]): ProgressiveStep[][] {
  if (all.length <= mostLevels) return [...all];
  const found: ProgressiveStep[][] = [];
  let start = 1;
  let open = false;
  for (const steps of all) {
    const fibres = steps.some(({ plies }) => plies.some(({ becomes: state }) => state === 'failed'));
    const last = found.at(-1);
    if (open && last !== undefined && !fibres) last.push(...steps);
    else {
      found.push([...steps]);
      start = last?.at(-1)?.stiffnessShare ?? 1;
    }
    open = !fibres && start - (steps.at(-1)?.stiffnessShare ?? 0) < 0.05;
  }
  return found;
}

/** One row per way of failing: the layers, what becomes of them, the stiffness left once all of that load has happened. */
function stepRows(all: readonly ProgressiveStep[][]): Cell[][] {
  return all.flatMap((steps) => {
    // A layer that cracks and then fails at one load is told once, as it ends.
    const ends = new Map(steps.flatMap(({ plies }) => plies).map((ply) => [ply.ply, ply]));
    const groups = new Map<string, { layers: number[]; what: string; mode: string; after: string }>();
    for (const { ply, name, angle, mode, becomes: state } of ends.values()) {
      const key = `${name} ${angle} ${mode} ${state}`;
      const group = groups.get(key) ?? { layers: [], what: `${angle}° ${name}`, mode, after: becomes[state] };
      group.layers.push(ply);
      groups.set(key, group);
    }
    const [from, to] = [steps[0]?.ratio ?? 0, steps.at(-1)?.ratio ?? 0];
    const load = to > from ? `${short(from)} to ${short(to)}` : amount(from, 'number');
    const left = steps.at(-1)?.stiffnessShare ?? 0;
    return [...groups.values()].map(({ layers, what, mode, after }, i): Cell[] => [
      i === 0 ? load : '',
      numbers(layers),
      what,
      mode,
      after,
      i === groups.size - 1 ? amount(left, 'fraction', 3) : '',
    ]);
  });
}

const axes = ['x', 'y', 'xy'] as const;

/** The deformation that does most work under the load: the one to plot. */
function mostWorking({ response, model, progressive }: LoadResult): { key: 'strain' | 'curvature'; i: 0 | 1 | 2 } {
  const before = progressive?.firstPly.before;
  const works = ([0, 1, 2] as const).flatMap((i) => [
    { key: 'strain' as const, i, work: Math.abs((model.N?.[i] ?? 0) * (before?.strain[i] ?? response.strain[i])) },
    {
      key: 'curvature' as const,
      i,
      work: Math.abs((model.M?.[i] ?? 0) * (before?.curvature[i] ?? response.curvature[i])),
    },
  ]);
  return works.reduce((most, one) => (one.work > most.work ? one : most));
}

/** The figure ends at this multiple of the deformation before the last load at which layers fail. */
const shownBeyond = 1.5;

/** Where the axis of deformation ends, and the deformations that lie beyond it: after the last layers there is little stiffness left. */
function axisEnd(found: ProgressiveFailure, key: 'strain' | 'curvature', i: 0 | 1 | 2) {
  const last = found.steps.findLastIndex(({ cascade }) => !cascade);
  const before = found.steps[last]?.before ?? found.firstPly.before;
  const end = found.curve.findLastIndex(({ ratio }) => ratio < before.ratio);
  const most = largest([...found.curve.slice(0, end + 1), before].map((point) => point[key][i]));
  const limit = most > 0 ? shownBeyond * most : Number.POSITIVE_INFINITY;
  const { steps } = found;
  const jumps = steps.map(({ after }) => after[key][i]).filter((value) => Math.abs(value) > limit);
  return { limit, jumps };
}

/** Where the load-deformation line would go outside the figure. */
function beyondWords(jumps: readonly number[], symbol: string | undefined, kind: KindName, units: UnitSystem): string {
  const most = jumps.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
  return `Beyond the end of the axis: the last failures take ${symbol ?? 'it'} to ${formatQuantity(most, kind, { units, digits: 3 })} at the same load.`;
}

function curve(result: LoadResult, found: ProgressiveFailure, id: string, units: UnitSystem): Block[] {
  const { key, i } = mostWorking(result);
  const symbol = key === 'strain' ? ['εx', 'εy', 'γxy'][i] : `κ${axes[i]}`;
  const kind: KindName = key;
  const size = largest(found.curve.map((point) => point[key][i]));
  const { limit, jumps } = axisEnd(found, key, i);
  const at = (point: ProgressiveStep['before']) => ({
    x: withoutNoise(Math.max(-limit, Math.min(limit, point[key][i])), size),
    y: point.ratio,
  });
  const beyond = jumps.length === 0 ? [] : [beyondWords(jumps, symbol, kind, units)];
  const { firstPly, lastPly } = found;
  const single = found.steps.length === 1;
  const figure = chartFigure({
    id: `${id}-progress`,
    title: `Load against deformation as layers fail, load ${result.model.name}`,
    x: { label: `${symbol} from the cured, unloaded laminate`, kind },
    y: { label: 'Load, times the load as given', kind: 'number' },
    series: [{ label: 'load raised, never lowered', points: found.curve.map(at) }],
    marks: [
      { label: single ? 'first and last layer' : 'first layer', ...at(firstPly.before) },
      ...(single || lastPly.ratio <= firstPly.ratio ? [] : [{ label: 'last layer', ...at(lastPly.before) }]),
    ],
    units,
    summary: [
      `First failure at ${short(firstPly.ratio)} times the load, the end at ${short(lastPly.ratio)} times.`,
      ...beyond,
    ].join(' '),
  });
  return [figure, ...listOf(beyond)];
}

/** What the layers of a sandwich say nothing about. */
function coreWords(result: LoadResult): string[] {
  if (result.sandwich === undefined) return [];
  const limit = sandwichLimit(result);
  return [
    `shear of the core and wrinkling of the faces are left out here${limit === undefined ? '' : `: ${limit.what} ${atWords(limit)}`}`,
  ];
}

function statements(result: LoadResult, found: ProgressiveFailure, units: UnitSystem): string[] {
  const { firstPly, lastPly, collapsed, discount, factor, collapse, criterion } = found;
  const [first, last] = [firstPly.ratio, lastPly.ratio];
  const reserve =
    first === 0
      ? `layers fail before any load acts; the last at ${short(last)} times the load`
      : last > 1.001 * first
        ? `first layer at ${short(first)} times the load, last at ${short(last)} times: after the first failure the laminate takes ${short(last / first)} times as much`
        : `the first failure, at ${short(first)} times the load, is also the last: no reserve after it`;
  return [
    reserve,
    last < 1
      ? 'THE LOAD AS GIVEN IS NOT CARRIED TO THE END'
      : `the load as given does not end the ${result.sandwich === undefined ? 'laminate' : 'layers'}`,
    ...coreWords(result),
    ...(collapsed ? [] : ['the layers ran out before the stiffness did: see the warning below']),
    `by the criterion ${criterionNames[criterion]}, discount \`${discount}\`: a failed layer keeps ${percent(factor, units)} of what it loses; the end is where ${percent(collapse, units)} of the stiffness against the load is left`,
  ];
}

/** From the first layer to the last; absent where nothing is raised. */
export function progressiveBlocks(result: LoadResult, id: string, units: UnitSystem): Block[] {
  const { progressive } = result;
  if (progressive === undefined) return [];
  const all = levels(progressive.steps);
  const shown = gathered(all);
  const some =
    shown.length < all.length
      ? `; ${all.length} loads gathered by what they cost, one by one in the JSON document`
      : '';
  return [
    heading(3, 'From the first layer to the last', `${id}-progressive`),
    ...listOf(statements(result, progressive, units)),
    table(
      `${id}-steps`,
      `What fails as the load is raised, and the stiffness against the load that is left${some}`,
      [
        { label: 'Load ×' },
        { label: 'Layers' },
        { label: 'Material' },
        { label: 'Mode' },
        { label: 'then' },
        { label: 'Stiffness left' },
      ],
      stepRows(shown),
    ),
    ...curve(result, progressive, id, units),
  ];
}
