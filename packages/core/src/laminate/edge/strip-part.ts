import { freeStrain } from '../free-strain.js';
import { respond } from '../respond.js';
import type { Laminate, Vector3 } from '../types.js';

/** A uniform axial strain and a change of temperature from the stress-free state, K. */
export interface StripState {
  readonly strain: number;
  readonly temperatureChange: number;
}

/** A laminate, or a part of it, as a strip that is stretched along x and bends across it as it likes. */
export interface StripPart {
  /** Elastic energy, J/m², less that of its plies held at zero strain. */
  readonly energy: (state: StripState) => number;
  /** κy, 1/m; a strip with a smaller one than the strip below it bends away from it toward the edge. */
  readonly curvature: (state: StripState) => number;
  /** My per κy with the axial strain held, N m. */
  readonly bending: number;
}

/**
 * Energy and curvature across of a strip under an axial strain; each state is computed once.
 *
 * U = ½ x·(N + N_T, M + M_T) - x·(N_T, M_T) = ½ x·(N - N_T, M - M_T) with x the strains and curvatures. Held are εx, κx and κxy; the
 * rest is free. The energy left out is a sum over plies and does not change when the laminate parts.
 *
 * @throws not-computable when heat acts and a ply has no thermal expansion; not-admissible as `stiffness`
 */
export function stripPart(part: Laminate): StripPart {
  const known = new Map<string, { energy: number; curvature: number }>();
  const at = ({ strain, temperatureChange }: StripState) => {
    const key = `${strain} ${temperatureChange}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const { N: NT, M: MT } = freeStrain(part, { temperatureChange });
    const { N, M, ...found } = respond(part, {
      strain: [strain, null, null],
      curvature: [0, null, 0],
      temperatureChange,
    });
    const energy = (work(found.strain, N, NT) + work(found.curvature, M, MT)) / 2;
    const state = { energy, curvature: found.curvature[1] };
    known.set(key, state);
    return state;
  };
  const bent = respond(part, { strain: [0, null, null], curvature: [0, 1, 0] });
  return { energy: (state) => at(state).energy, curvature: (state) => at(state).curvature, bending: bent.M[1] };
}

const work = (x: Vector3, force: Vector3, held: Vector3): number =>
  x[0] * (force[0] - held[0]) + x[1] * (force[1] - held[1]) + x[2] * (force[2] - held[2]);
