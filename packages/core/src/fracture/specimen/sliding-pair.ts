import type { Arm } from '../types.js';

/** Two arms that bend as one and slide on each other, per width. */
export interface SlidingPair {
  /** Bending stiffness of both without hold on each other, N m. */
  readonly D: number;
  /** Bonded, N m: D + A* H². */
  readonly bonded: number;
  /** Shear stiffness of both, N/m. */
  readonly S: number;
  /** Distance of their mid-planes, m. */
  readonly H: number;
  /** Stretch stiffness of both against each other, N/m: 1/A* = 1/A1 + 1/A2. */
  readonly axial: number;
  /** Stiffness against sliding with bending left to itself, N/m: 1/B = 1/A* + H²/D. */
  readonly B: number;
  /** Stiffness of the bed against sliding per area, N/m³. */
  readonly k: number;
  /** Decay of sliding on the bed, 1/m: ω = √(k/B). */
  readonly decay: number;
}

/**
 * The pair of arms of a specimen that slides.
 *
 * The bed is what an arm's face yields beyond the arm's mean shift and turn when shear stress grows linearly from its free face: of
 * u = τ z²/(2 h G) less its best straight line there remains h/12 G at the face. So 1/k = h1/(12 G1) + h2/(12 G2), G = S/(5/6 h).
 * For two like arms 1/ω = h √(E/(48 G)) without free choice; Wang & Williams 1992 give 0.42 times the correction of opening, nearly the same.
 * @source derived in docs/theory/specimens.md; wang-williams-1992
 */
export function slidingPair([one, two]: readonly [Arm, Arm]): SlidingPair {
  const D = one.bendingStiffness + two.bendingStiffness;
  const H = (one.thickness + two.thickness) / 2;
  const axial = 1 / (1 / one.axialStiffness + 1 / two.axialStiffness);
  const B = 1 / (1 / axial + (H * H) / D);
  const yielding = ({ thickness: h, shearStiffness }: Arm) => (h * h * 5) / (72 * shearStiffness);
  const k = 1 / (yielding(one) + yielding(two));
  const S = one.shearStiffness + two.shearStiffness;
  return { D, bonded: D + axial * H * H, S, H, axial, B, k, decay: Math.sqrt(k / B) };
}
