import type { Working } from '../../working/index.js';
import type { SpecimenResult, Verdict } from '../types.js';
import type { Model } from './model.js';
import type { RowLaw } from './row-law.js';
import { type Run, type RunPlan, run } from './run.js';

/** Displacement and load up to which the next thing is looked for, as a multiple of those at the first. */
const farthest = 100;

/** Opening to which an unbreakable row goes on, as a multiple of that at its greatest force. */
const endless = 1e6;

/**
 * What a specimen is limited by: the arm where one breaks, else the row that gives way at the highest load, else the bond.
 *
 * The model is run again with that unbreakable; the first row or arm that gives way then is the next, and its load over the first the margin: below 1 where stronger threads
 * would break the arms at a lower load. The bond is next only where an arm breaks before it grows: else it gave way long before, and
 * at its own load. A test that ends before anything does is taken further.
 */
export function verdictOf(model: Model, asTested: Run, plan: RunPlan, working?: Working): SpecimenResult['verdict'] {
  const whole = asTested.events.length > 0 ? asTested : run(model, { ...plan, displacement: Number.POSITIVE_INFINITY });
  const first = limitedBy(whole) ?? onset(whole);
  // A crack that nothing opens at its tip never grows and breaks nothing.
  if (first === undefined) return { first: 'bond', load: mostLoad(whole, Number.POSITIVE_INFINITY) };
  const limit = { first: first.kind, load: first.load };
  const grown = onset(whole) !== undefined;
  if (!canFail(model, first.kind) && grown) return limit;
  const displacement = farthest * first.displacement;
  const again = run(without(model, first.kind), { ...plan, displacement, untilRow: { load: farthest * first.load } });
  const next = limitedBy(again) ?? (grown ? undefined : onset(again));
  if (next === undefined) return limit;
  const margin = next.load / first.load;
  working?.part('limits', first.kind, next.kind).step('nextToGive', { P_f: first.load, P_n: next.load, f_n: margin });
  return { ...limit, next: next.kind, margin };
}

interface Limit {
  readonly kind: Verdict;
  readonly load: number;
  readonly displacement: number;
}

function limitedBy(tested: Run): Limit | undefined {
  const limits = tested.events
    .filter(({ kind }) => kind !== 'bond')
    .map(({ kind, load, displacement }) => ({
      kind,
      displacement,
      load: Math.max(load, mostLoad(tested, displacement)),
    }));
  const highest = limits.reduce<Limit | undefined>(
    (most, one) => (one.load > (most?.load ?? 0) ? one : most),
    undefined,
  );
  return limits.find(({ kind }) => kind === 'arm') ?? highest;
}

/** What had to be borne to get to a displacement: the load may have been higher before. */
function mostLoad({ states }: Run, displacement: number): number {
  return states.reduce((most, state) => (state.displacement <= displacement ? Math.max(most, state.load) : most), 0);
}

const onset = ({ events }: Run): Limit | undefined => events.find(({ kind }) => kind === 'bond');

/** Whether there is anything else than the bond that could give way. */
function canFail({ rows, strainLimit }: Model, besides: Verdict): boolean {
  return (besides !== 'arm' && Number.isFinite(strainLimit)) || rows.some(({ failure }) => failure !== besides);
}

function without(model: Model, kind: Verdict): Model {
  if (kind === 'bond') return { ...model, tipLimit: Number.POSITIVE_INFINITY, bondWork: Number.POSITIVE_INFINITY };
  if (kind === 'arm') return { ...model, strainLimit: Number.POSITIVE_INFINITY };
  const rows = model.rows.map((row) => (row.failure === kind ? { ...row, law: unbreakable(row.law) } : row));
  return { ...model, rows };
}

/** The curve up to its greatest force, then on along the line from nothing. */
function unbreakable(law: RowLaw): RowLaw {
  const last = law.opening.lastIndexOf(law.peak);
  const top = law.force.indexOf(Math.max(...law.force), law.opening.indexOf(law.peak));
  const points = Math.min(top, last) + 1;
  const extend = (list: Float64Array, value: number) => Float64Array.of(...list.subarray(0, points), value);
  // What is stiffer at the greatest force than before stays so.
  const firmer = law.firmer
    .filter(({ from }) => from < law.peak)
    .map((one) => (one.to >= law.peak ? { ...one, to: endless * law.peak } : one));
  const force = law.force[points - 1] ?? 0;
  const end = endless * law.peak;
  const area = (law.area[points - 1] ?? 0) + ((1 + endless) / 2) * force * (end - law.peak);
  return {
    ...law,
    opening: extend(law.opening, end),
    force: extend(law.force, endless * force),
    area: extend(law.area, area),
    peak: end,
    end,
    firmer,
  };
}
