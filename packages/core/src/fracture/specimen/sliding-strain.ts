import { type Bending, momentAt } from './bending.js';
import { breakingStrain } from './check.js';
import type { Model, ModelRow, State } from './model.js';
import { forceAfter } from './row-law.js';
import type { SlidingPair } from './sliding-pair.js';
import type { EnfSpecimen } from './types.js';

/** Where the surface of an arm is strained most: place from the support over the crack, m; axial force that rows and friction leave there, N; behind the tip or in the bond. */
export interface SharpestBend {
  readonly place: number;
  readonly force: number;
  readonly arm: number;
  readonly bonded: boolean;
  /** In shares of the arm nearest to its limit. */
  readonly strain: number;
}

interface SlidingStrain extends Pick<Model, 'strain' | 'strainLimit'> {
  sharpest(state: State): SharpestBend;
}

/**
 * Largest surface strain of the arms: behind the tip |M + H N| h/(2 D) + |N|/A of each arm, N the axial force that rows and friction leave in the arms;
 * in the bond that of the whole section.
 */
export function slidingStrain(
  { arms, width }: Pick<EnfSpecimen, 'arms' | 'width'>,
  pair: SlidingPair,
  bending: Bending,
  rows: Model['rows'],
): SlidingStrain {
  const { D, H, bonded } = pair;
  const limits = arms.map(breakingStrain);
  const strainLimit = Math.min(...limits);
  const weights = limits.map((limit) => (strainLimit === Number.POSITIVE_INFINITY ? 1 : strainLimit / limit));
  const axial = arms.reduce((sum, { axialStiffness }) => sum + axialStiffness, 0);
  const outer = arms.map(({ thickness }, i) => H * ((arms[1 - i]?.axialStiffness ?? 0) / axial) + thickness / 2);
  const sharpest = ({ load, crackLength, opening, largest, rubbed }: State): SharpestBend => {
    let most: SharpestBend = { place: 0, force: 0, arm: 0, bonded: false, strain: 0 };
    const at = (place: number, N: number): void => {
      const bend = Math.abs(load * momentAt(bending, place) - H * N) / (D * width);
      arms.forEach(({ thickness, axialStiffness }, i) => {
        const own = (bend * thickness) / 2 + N / (axialStiffness * width);
        const strain = own * (weights[i] as number);
        if (strain > most.strain) most = { place, force: N, arm: i, bonded: false, strain };
      });
    };
    let N = rubbed[0]?.force ?? 0;
    for (let j = 0; j < rows.length; j++) {
      const { place, law } = rows[j] as ModelRow;
      if (place >= crackLength) break;
      at(place, N);
      const w = opening[j] as number;
      const m = largest[j] as number;
      N += forceAfter(law, w, m);
    }
    at(crackLength, N);
    for (const { place } of bending.loads) {
      if (place < crackLength) at(place, N);
      else {
        const curvature = (load * momentAt(bending, place)) / (bonded * width);
        outer.forEach((distance, i) => {
          const strain = curvature * distance * (weights[i] as number);
          if (strain > most.strain) most = { place, force: 0, arm: i, bonded: true, strain };
        });
      }
    }
    return most;
  };
  return { strain: (state) => sharpest(state).strain, strainLimit, sharpest };
}
