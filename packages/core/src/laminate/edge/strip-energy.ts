import { freeStrain } from '../free-strain.js';
import { respond } from '../respond.js';
import type { Laminate, Vector3 } from '../types.js';

/** How a part of the laminate is held while it is stretched along x: as a strip that may bend across, or flat. */
export type Holding = 'strip' | 'flat';

/** A uniform axial strain and a change of temperature from the stress-free state, K. */
export interface StripState {
  readonly strain: number;
  readonly temperatureChange: number;
}

/**
 * Elastic energy of a part of the laminate under an axial strain, J/m², less that of its plies held at zero strain.
 *
 * U = ½ x·(N + N_T, M + M_T) - x·(N_T, M_T) = ½ x·(N - N_T, M - M_T) with x the strains and curvatures. Held are εx, κx and κxy, and κy too
 * when flat; the rest is free. The energy left out is a sum over plies and does not change when the laminate parts.
 *
 * @throws not-computable when heat acts and a ply has no thermal expansion; not-admissible as `stiffness`
 */
function stripEnergy(part: Laminate, holding: Holding, { strain, temperatureChange }: StripState): number {
  const { N: NT, M: MT } = freeStrain(part, { temperatureChange });
  const { N, M, ...found } = respond(part, {
    strain: [strain, null, null],
    curvature: [0, holding === 'flat' ? 0 : null, 0],
    temperatureChange,
  });
  return (work(found.strain, N, NT) + work(found.curvature, M, MT)) / 2;
}

/** The energy of a laminate as {@link stripEnergy} has it, each state computed once. */
export function energiesOf(part: Laminate): (holding: Holding, state: StripState) => number {
  const known = new Map<string, number>();
  return (holding, state) => {
    const key = `${holding} ${state.strain} ${state.temperatureChange}`;
    const found = known.get(key) ?? stripEnergy(part, holding, state);
    known.set(key, found);
    return found;
  };
}

const work = (x: Vector3, force: Vector3, held: Vector3): number =>
  x[0] * (force[0] - held[0]) + x[1] * (force[1] - held[1]) + x[2] * (force[2] - held[2]);
