import { engineeringConstants } from '../engineering-constants.js';
import { stiffness } from '../stiffness.js';
import type { Laminate } from '../types.js';

/** Moduli of a face along one direction, Pa. */
export interface FaceStiffness {
  /** In its plane, held from bending by the core. */
  readonly membrane: number;
  /** Bent about its own mid-plane, free to stretch: the modulus of a homogeneous face that bends as much. */
  readonly bending: number;
}

/** Moduli of a face along x and y. @throws not-admissible as `stiffness` */
export function faceStiffness(face: Laminate): { readonly x: FaceStiffness; readonly y: FaceStiffness } {
  const { inPlaneRestrained, flexural } = engineeringConstants(stiffness(face));
  return {
    x: { membrane: inPlaneRestrained.Ex, bending: flexural.Ex },
    y: { membrane: inPlaneRestrained.Ey, bending: flexural.Ey },
  };
}
