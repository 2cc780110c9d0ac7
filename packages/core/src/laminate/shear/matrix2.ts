import { fail } from '../../problem/index.js';

/** Two by two, row-major, order xz, yz. */
export type Matrix2 = readonly [readonly [number, number], readonly [number, number]];

/** The inverse of a symmetric positive definite matrix `[11, 12, 22]`, as a whole matrix. */
export function inverse2(m11: number, m12: number, m22: number): Matrix2 {
  const det = m11 * m22 - m12 * m12;
  const off = (0 - m12) / det;
  return [
    [m22 / det, off],
    [off, m11 / det],
  ];
}

/** Refuses a shear stiffness that is not finite and positive definite. @throws out-of-range */
export function demandShearStiffness([[xx, xy], [yx, yy]]: Matrix2): void {
  if (Number.isFinite(xx + yy) && xx > 0 && xy === yx && xx * yy - xy * xy > 0) return;
  fail({
    code: 'out-of-range',
    message: `H is ${xx}, ${xy}; ${yx}, ${yy} N/m`,
    allowed: 'a finite, symmetric and positive definite shear stiffness',
  });
}
