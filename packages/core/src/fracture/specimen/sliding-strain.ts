import { type Bending, momentAt } from './bending.js';
import { breakingStrain } from './check.js';
import type { Model, ModelRow, State } from './model.js';
import { forceAfter } from './row-law.js';
import type { SlidingPair } from './sliding-pair.js';
import type { EnfSpecimen } from './types.js';

/**
 * Largest surface strain of the arms: behind the tip |M + H N| h/(2 D) + |N|/A of each arm, N the axial force that rows and friction leave in the arms;
 * in the bond that of the whole section.
 */
export function slidingStrain(
  { arms, width }: EnfSpecimen,
  pair: SlidingPair,
  bending: Bending,
  rows: Model['rows'],
): Pick<Model, 'strain' | 'strainLimit'> {
  const { D, H, bonded } = pair;
  const limits = arms.map(breakingStrain);
  const strainLimit = Math.min(...limits);
  const weights = limits.map((limit) => (strainLimit === Number.POSITIVE_INFINITY ? 1 : strainLimit / limit));
  const axial = arms.reduce((sum, { axialStiffness }) => sum + axialStiffness, 0);
  const outer = arms.map(({ thickness }, i) => H * ((arms[1 - i]?.axialStiffness ?? 0) / axial) + thickness / 2);
  const strain = ({ load, crackLength, opening, largest, rubbed }: State): number => {
    let most = 0;
    const at = (place: number, N: number): void => {
      const bend = Math.abs(load * momentAt(bending, place) - H * N) / (D * width);
      arms.forEach(({ thickness, axialStiffness }, i) => {
        const own = (bend * thickness) / 2 + N / (axialStiffness * width);
        most = Math.max(most, own * (weights[i] as number));
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
          most = Math.max(most, curvature * distance * (weights[i] as number));
        });
      }
    }
    return most;
  };
  return { strain, strainLimit };
}
