/**
 * Factors K = L D Lᵀ of a symmetric banded matrix, in place, without square roots and without pivoting.
 *
 * Row i stands at `K[i * (band + 1)]` as its entries (i, i) to (i, i + band), those right of the matrix zero, with room for `band` rows more.
 * Afterwards the first entry of a row holds 1/d, the others the column of L. Our own: the chains it serves have one or three codiagonals,
 * and the libraries in use are dense.
 *
 * @param n rows
 * @param band codiagonals, 0 or more
 * @returns number of negative pivots, by Sylvester's law that of negative eigenvalues: 0 for a positive definite matrix; -1 when a pivot is
 * zero or not a number, and K is then spoilt
 */
export function factorBanded(K: Float64Array, n: number, band: number): number {
  const stride = band + 1;
  const end = n * stride;
  let negative = 0;
  for (let p = 0; p < end; p += stride) {
    const pivot = K[p]!;
    if (!(pivot < 0 || pivot > 0) || pivot - pivot !== 0) return -1;
    const inverse = 1 / pivot;
    if (pivot < 0) negative++;
    if (band === 3) stepOfThree(K, p, inverse);
    else {
      for (let r = 1, q = p + stride; r <= band; r++, q += stride) {
        const l = K[p + r]! * inverse;
        for (let s = r; s <= band; s++) K[q + s - r] = K[q + s - r]! - l * K[p + s]!;
      }
      for (let r = 1; r <= band; r++) K[p + r] = K[p + r]! * inverse;
    }
    K[p] = inverse;
  }
  return negative;
}

/** Elimination below one pivot written out for three codiagonals, for speed. */
function stepOfThree(K: Float64Array, p: number, inverse: number): void {
  const a = K[p + 1]!;
  const b = K[p + 2]!;
  const c = K[p + 3]!;
  const la = a * inverse;
  const lb = b * inverse;
  const lc = c * inverse;
  K[p + 4] = K[p + 4]! - a * la;
  K[p + 5] = K[p + 5]! - b * la;
  K[p + 6] = K[p + 6]! - c * la;
  K[p + 8] = K[p + 8]! - b * lb;
  K[p + 9] = K[p + 9]! - c * lb;
  K[p + 12] = K[p + 12]! - c * lc;
  K[p + 1] = la;
  K[p + 2] = lb;
  K[p + 3] = lc;
}

/** Solves K x = f with the factors of {@link factorBanded}, f given in x with `band` zeros after it, in place. */
export function solveBanded(K: Float64Array, n: number, band: number, x: Float64Array): void {
  const stride = band + 1;
  for (let i = 0, p = 0; i < n; i++, p += stride) {
    const value = x[i]!;
    for (let r = 1; r <= band; r++) x[i + r] = x[i + r]! - K[p + r]! * value;
    x[i] = value * K[p]!;
  }
  for (let i = n - 1, p = i * stride; i >= 0; i--, p -= stride) {
    let sum = x[i]!;
    for (let r = 1; r <= band; r++) sum -= K[p + r]! * x[i + r]!;
    x[i] = sum;
  }
}
