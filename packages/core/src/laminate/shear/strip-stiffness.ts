import { entry } from '../matrix3.js';
import type { Matrix3, Stiffness } from '../types.js';
import { inverse2 } from './matrix2.js';

/** Bending stiffness of a long strip across x, N m. */
export interface StripStiffness {
  readonly D11: number;
  readonly D16: number;
  readonly D66: number;
}

/**
 * What a strip bends by that is long across x and whose Nx and Nxy bending does not change: the components x and xy of D - B A⁻¹ B, with A, B and D
 * cut down to these two since such a strip cannot stretch along itself (εy = κy = 0) but may shear (v free).
 */
export function stripStiffness({ A, B, D }: Stiffness): StripStiffness {
  const two = (m: Matrix3): [number, number, number] => [entry(m, 0, 0), entry(m, 0, 2), entry(m, 2, 2)];
  const [A11, A16, A66] = two(A);
  const [B11, B16, B66] = two(B);
  const [D11, D16, D66] = two(D);
  const [[a11, a16], [, a66]] = inverse2(A11, A16, A66);
  const x = [a11 * B11 + a16 * B16, a16 * B11 + a66 * B16] as const;
  const xy = [a11 * B16 + a16 * B66, a16 * B16 + a66 * B66] as const;
  return {
    D11: D11 - B11 * x[0] - B16 * x[1],
    D16: D16 - B11 * xy[0] - B16 * xy[1],
    D66: D66 - B16 * xy[0] - B66 * xy[1],
  };
}
