import type { Arm } from '../types.js';

/**
 * Two arms that open from each other as one beam: both carry the same moment and shear force, so their compliances add.
 *
 * 1/D = 1/D1 + 1/D2, 1/S = 1/S1 + 1/S2, and one bed of both inner halves, 1/k = h1/(2 E3,1) + h2/(2 E3,2), as an arm with 2 E3/h = k.
 */
export function openingPair([one, two]: readonly [Arm, Arm]): Arm {
  const sum = (a: number, b: number) => 1 / (1 / a + 1 / b);
  const thickness = one.thickness + two.thickness;
  return {
    thickness,
    bendingStiffness: sum(one.bendingStiffness, two.bendingStiffness),
    axialStiffness: sum(one.axialStiffness, two.axialStiffness),
    shearStiffness: sum(one.shearStiffness, two.shearStiffness),
    E3: thickness / (one.thickness / one.E3 + two.thickness / two.E3),
  };
}

/** Stiffness of the bed per area, N/m³: k = 2 E3/h. */
export function bedStiffness({ E3, thickness }: Arm): number {
  return (2 * E3) / thickness;
}

/** Length by which the crack seems longer to a clamped beam, m: χ = √(D/S + 2 √(D/k)). */
export function rootLength(pair: Arm): number {
  const { bendingStiffness: D, shearStiffness: S } = pair;
  return Math.sqrt(D / S + 2 * Math.sqrt(D / bedStiffness(pair)));
}
