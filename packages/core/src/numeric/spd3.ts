/**
 * Inverse of a symmetric positive definite 3x3 matrix by square-root-free Cholesky factors, M = L diag(d) Lᵀ.
 *
 * Six numbers in the order 11, 12, 13, 22, 23, 33, read from `m` at `from` and written to `out` at `to` (the same place
 * is allowed). Nothing is written when a pivot is not positive.
 *
 * @returns false when a pivot is zero, negative or not a number: the matrix is not positive definite
 */
export function invertSpd3(m: Float64Array, from: number, out: Float64Array, to: number): boolean {
  const m12 = m[from + 1]!;
  const m13 = m[from + 2]!;
  const d1 = m[from]!;
  if (!(d1 > 0)) return false;
  const r1 = 1 / d1;
  const l21 = m12 * r1;
  const l31 = m13 * r1;
  const d2 = m[from + 3]! - l21 * m12;
  if (!(d2 > 0)) return false;
  const e = m[from + 4]! - l31 * m12;
  const r2 = 1 / d2;
  const l32 = e * r2;
  const d3 = m[from + 5]! - l31 * m13 - l32 * e;
  if (!(d3 > 0 && d1 + d2 + d3 < Number.POSITIVE_INFINITY)) return false;

  // The inverse of the unit lower factor has -l21, l21 l32 - l31 and -l32 below its diagonal.
  const k31 = l21 * l32 - l31;
  const r3 = 1 / d3;
  const s31 = k31 * r3;
  out[to] = r1 + l21 * l21 * r2 + k31 * s31;
  out[to + 1] = -l21 * r2 - l32 * s31;
  out[to + 2] = s31;
  out[to + 3] = r2 + l32 * l32 * r3;
  out[to + 4] = -l32 * r3;
  out[to + 5] = r3;
  return true;
}
