import { breakingStrain } from './check.js';
import type { Model, ModelRow, State } from './model.js';
import { forceAfter } from './row-law.js';
import type { DcbSpecimen } from './types.js';

/** Largest surface strain of an opened arm, M h/(2 D_i): the moment behind the tip is statics. With its limit, in shares of the arm nearest to it. */
export function openingStrain(
  { arms, width }: Pick<DcbSpecimen, 'arms' | 'width'>,
  rows: Model['rows'],
): Pick<Model, 'strain' | 'strainLimit'> {
  const perMoment = arms.map(({ thickness, bendingStiffness }) => thickness / (2 * bendingStiffness * width));
  const limits = arms.map(breakingStrain);
  const strainLimit = Math.min(...limits);
  // An arm with a higher limit counts in proportion, so that one limit serves both.
  const weights = perMoment.map(
    (one, i) => one * (limits[i] === strainLimit ? 1 : strainLimit / (limits[i] as number)),
  );
  const worst = strainLimit === Number.POSITIVE_INFINITY ? Math.max(...perMoment) : Math.max(...weights);
  return { strain: (state) => worst * Math.abs(sharpestMoment(state, rows).moment), strainLimit };
}

/** Where the moment behind the tip is greatest either way, at a row or at the tip: place, m, and moment, N m. */
export function sharpestMoment(
  { load, crackLength, opening, largest }: State,
  rows: Model['rows'],
): { readonly place: number; readonly moment: number } {
  let force = load;
  let moment = 0;
  let place = 0;
  let sharpest = { place: 0, moment: 0 };
  for (let j = 0; j < rows.length; j++) {
    const { place: next, law } = rows[j] as ModelRow;
    if (next >= crackLength) break;
    moment += force * (next - place);
    if (Math.abs(moment) > Math.abs(sharpest.moment)) sharpest = { place: next, moment };
    place = next;
    const w = opening[j] as number;
    const m = largest[j] as number;
    force -= forceAfter(law, w, m);
  }
  const atTip = moment + force * (crackLength - place);
  return Math.abs(atTip) > Math.abs(sharpest.moment) ? { place: crackLength, moment: atTip } : sharpest;
}
