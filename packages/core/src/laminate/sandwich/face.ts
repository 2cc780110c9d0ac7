import { times } from '../axes.js';
import { engineeringConstants } from '../engineering-constants.js';
import { inverse } from '../matrix3.js';
import { stiffness } from '../stiffness.js';
import type { Laminate, Vector3 } from '../types.js';

/** Moduli of a face along one direction, Pa, and where it carries. */
export interface FaceStiffness {
  /** In its plane, held from bending by the core. */
  readonly membrane: number;
  /** Bent about its own mid-plane, free to stretch: the modulus of a homogeneous face that bends as much. */
  readonly bending: number;
  /** Height over its mid-plane at which a force in its plane leaves it flat, m, positive toward the bag side: 0 for a symmetric face. */
  readonly neutral: number;
}

/** Moduli of a face along x and y, and its neutral planes: M = B A⁻¹ N of a face held flat under N along one axis. @throws not-admissible as `stiffness` */
export function faceStiffness(face: Laminate): { readonly x: FaceStiffness; readonly y: FaceStiffness } {
  const whole = stiffness(face);
  const { inPlaneRestrained, flexural } = engineeringConstants(whole);
  const compliance = inverse(whole.A);
  const moment = (N: Vector3): Vector3 => times(whole.B, times(compliance, N));
  return {
    x: { membrane: inPlaneRestrained.Ex, bending: flexural.Ex, neutral: moment([1, 0, 0])[0] },
    y: { membrane: inPlaneRestrained.Ey, bending: flexural.Ey, neutral: moment([0, 1, 0])[1] },
  };
}
