import type { SpecimenEvent, SpecimenResult, Verdict } from '../types.js';
import type { Model } from './model.js';
import type { RowLaw } from './row-law.js';
import { type RunPlan, run } from './run.js';

/** Displacement up to which the next thing is looked for, as a multiple of that at the first. */
const farthest = 100;

/** Opening to which an unbreakable row goes on, as a multiple of that at its greatest force. */
const endless = 1e6;

/**
 * What gives way first, and what would be next if it did not: the model is run again with the bond, the threads or the arms past breaking.
 * The margin is the load of the next over that of the first. A test that ends before anything does is
 * taken further.
 */
export function verdictOf(model: Model, events: readonly SpecimenEvent[], plan: RunPlan): SpecimenResult['verdict'] {
  const onward = { ...plan, displacement: Number.POSITIVE_INFINITY, untilEvent: true };
  const first = events[0] ?? run(model, onward).events[0];
  // A crack that nothing opens at its tip never grows and breaks nothing.
  if (first === undefined) return { first: 'bond' };
  const stronger = without(model, first.kind);
  const displacement = farthest * first.displacement;
  const [next] = run(stronger, { ...plan, displacement, untilEvent: true }).events;
  if (next === undefined) return { first: first.kind };
  return { first: first.kind, next: next.kind, margin: next.load / first.load };
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
  };
}
