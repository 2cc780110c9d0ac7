import type { Working } from '../working/index.js';
import type { Ply } from './types.js';

/** Plane-stress stiffness in ply axes, Pa: `[Q11, Q12, Q22, Q66]`. */
export type ReducedStiffness = readonly [Q11: number, Q12: number, Q22: number, Q66: number];

/** In-plane engineering constants of an orthotropic layer; moduli in Pa. */
export type InPlaneConstants = Pick<Ply, 'E1' | 'E2' | 'G12' | 'nu12'>;

/** The five combinations of the plane-stress stiffness that angle formulas are built from, Pa. */
export interface StiffnessInvariants {
  readonly U1: number;
  readonly U2: number;
  readonly U3: number;
  readonly U4: number;
  readonly U5: number;
}

/**
 * Plane-stress stiffness of a ply in its own axes: Q11 = E1/d, Q12 = nu12 E2/d, Q22 = E2/d, Q66 = G12
 * with d = 1 - nu12^2 E2/E1.
 * @param constants Pa, admissible (see `ply`).
 * @param working takes the steps down, when given.
 * @returns `[Q11, Q12, Q22, Q66]`, Pa.
 * @source Jones 1999, ch. 2 (recalled, not re-read).
 */
export function reducedStiffness({ E1, E2, G12, nu12 }: InPlaneConstants, working?: Working): ReducedStiffness {
  const d = 1 - (nu12 * nu12 * E2) / E1;
  const Q: ReducedStiffness = [E1 / d, (nu12 * E2) / d, E2 / d, G12];
  working?.step('reducedStiffness', { E1, E2, G12, nu12, nu21: (nu12 * E2) / E1, ...named(Q) });
  return Q;
}

const named = ([Q11, Q12, Q22, Q66]: ReducedStiffness) => ({ Q11, Q12, Q22, Q66 });

/**
 * Engineering constants from a plane-stress stiffness, the inverse of `reducedStiffness`:
 * E1 = Q11 - Q12^2/Q22, E2 = Q22 - Q12^2/Q11, nu12 = Q12/Q22, G12 = Q66.
 * @param Q Pa, positive definite.
 */
export function constantsFromStiffness([Q11, Q12, Q22, Q66]: ReducedStiffness): InPlaneConstants {
  return { E1: Q11 - (Q12 * Q12) / Q22, E2: Q22 - (Q12 * Q12) / Q11, G12: Q66, nu12: Q12 / Q22 };
}

/**
 * Invariants U1 to U5 of a plane-stress stiffness; the stiffness at any angle is linear in them:
 * Qbar11 = U1 + U2 cos 2t + U3 cos 4t, Qbar12 = U4 - U3 cos 4t, Qbar66 = U5 - U3 cos 4t.
 * U1, U4 and U5 = (U1 - U4)/2 do not change with rotation; U2 and U3 are the amplitudes of the two harmonics.
 * @param Q Pa.
 * @param working takes the steps down, when given.
 * @returns Pa.
 * @source Tsai & Pagano 1968; Jones 1999, ch. 2 (recalled, not re-read).
 */
export function stiffnessInvariants(Q: ReducedStiffness, working?: Working): StiffnessInvariants {
  const [Q11, Q12, Q22, Q66] = Q;
  const invariants = {
    U1: (3 * Q11 + 3 * Q22 + 2 * Q12 + 4 * Q66) / 8,
    U2: (Q11 - Q22) / 2,
    U3: (Q11 + Q22 - 2 * Q12 - 4 * Q66) / 8,
    U4: (Q11 + Q22 + 6 * Q12 - 4 * Q66) / 8,
    U5: (Q11 + Q22 - 2 * Q12 + 4 * Q66) / 8,
  };
  working?.step('invariants', { ...named(Q), ...invariants });
  return invariants;
}

/**
 * Plane-stress stiffness of two layers at equal strain, one at 0 and one at 90 degrees: Q11 = s Q11' + (1-s) Q22",
 * Q22 = s Q22' + (1-s) Q11", Q12 and Q66 by their shares.
 * @param at0 Pa, in its own axes. @param share Of the thickness in the layer at 0 degrees, 0 to 1.
 * @param at90 Pa, in its own axes; that of `at0` when not given.
 * @source Jones 1999, ch. 4 (recalled, not re-read).
 */
export function crossPlyStiffness(at0: ReducedStiffness, share: number, at90 = at0): ReducedStiffness {
  const mean = (first: number, second: number): number => share * first + (1 - share) * second;
  return [mean(at0[0], at90[2]), mean(at0[1], at90[1]), mean(at0[2], at90[0]), mean(at0[3], at90[3])];
}
