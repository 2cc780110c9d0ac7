import type { Arm } from './types.js';

/**
 * How the root of an arm gives way on its bed, per width: lift = liftByMoment M + liftByForce Q,
 * turn = turnByMoment M + turnByForce Q, with the moment M and the force Q away from the bed at the front. turnByForce = liftByMoment.
 */
export interface Bed {
  readonly liftByMoment: number;
  readonly liftByForce: number;
  readonly turnByMoment: number;
}

/**
 * The bonded part of an arm as a long beam with shear on springs.
 *
 * k = 2 E3/h per area: the arm's inner half gives. With S² = k/kGA + 2 √(k/EI): lift = M/√(k EI) + Q S/k, turn = M S/√(k EI) + Q/√(k EI).
 * Both hold for damped waves and for plain decay of the solution. Linear: the turn should stay below about 0.2 rad.
 *
 * @returns m/N, m²/N and 1/N, for M in N m and Q in N per m of width
 * @source Kanninen 1973 (beam on an elastic bed for the cleaved specimen); closed form derived in docs/theory/peel.md
 */
export function bedOf({ bendingStiffness: D, shearStiffness, E3, thickness }: Arm): Bed {
  const k = (2 * E3) / thickness;
  const root = Math.sqrt(k * D);
  const S = Math.sqrt(k / shearStiffness + 2 * Math.sqrt(k / D));
  return { liftByMoment: 1 / root, liftByForce: S / k, turnByMoment: S / root };
}

/**
 * Length over which the bonded part takes part in the bending, m: the slowest decay of the solution on the bed, as a length.
 */
export function bedLength({ bendingStiffness: D, shearStiffness, E3, thickness }: Arm): number {
  const k = (2 * E3) / thickness;
  const half = k / (2 * shearStiffness);
  const square = half * half - k / D;
  // Roots r² = half ± √square; complex ones decay with the real part of r.
  if (square >= 0) return Math.sqrt((half + Math.sqrt(square)) / (k / D));
  return 1 / Math.sqrt((half + Math.sqrt(k / D)) / 2);
}
