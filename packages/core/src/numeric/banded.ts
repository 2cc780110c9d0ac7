/**
 * Factors K = L D Lᵀ of a symmetric banded matrix, in place, without square roots and without pivoting.
 *
 * Row i stands at `K[i * (band + 1)]` as its entries (i, i) to (i, i + band), those right of the matrix zero, with room for `band` rows more.
 * Afterwards the first entry of a row holds 1/d, the others the column of L D. Each row is worked out from the `band` rows before it, so that rows whose
 * own and whose predecessors' entries have not changed may be left as factors. Our own: the chains it serves have one or three codiagonals
 * and change at one end only, and the libraries in use are dense.
 *
 * @param n rows
 * @param band codiagonals, 0 or more
 * @param from rows before this one are factors already
 * @returns number of negative pivots from that row on, of all rows by Sylvester's law that of negative eigenvalues: 0 for a positive definite matrix; -1
 * when a pivot is zero or not a number, and K is then spoilt
 */
export function factorBanded(K: Float64Array, n: number, band: number, from = 0): number {
  const stride = band + 1;
  if (band === 3) return factorThree(K, n, from);
  let negative = 0;
  for (let i = from; i < n; i++) {
    const p = i * stride;
    for (let back = Math.min(band, i); back > 0; back--) {
      const q = p - back * stride;
      const l = K[q + back]! * K[q]!;
      for (let r = back; r <= band; r++) K[p + r - back] = K[p + r - back]! - l * K[q + r]!;
    }
    const pivot = K[p]!;
    if (!(pivot < 0 || pivot > 0) || pivot - pivot !== 0) return -1;
    if (pivot < 0) negative++;
    K[p] = 1 / pivot;
  }
  return negative;
}

/** The same written out for three codiagonals, for speed: a, b, c are the last three rows, the nearest first. */
function factorThree(K: Float64Array, n: number, from: number): number {
  let negative = 0;
  const row = (back: number, entry: number): number => (from >= back ? K[4 * (from - back) + entry]! : 0);
  let [ia, a1, a2, a3] = [row(1, 0), row(1, 1), row(1, 2), row(1, 3)];
  let [ib, b2, b3] = [row(2, 0), row(2, 2), row(2, 3)];
  let [ic, c3] = [row(3, 0), row(3, 3)];
  const end = 4 * n;
  for (let p = 4 * from; p < end; p += 4) {
    const la = a1 * ia;
    const lb = b2 * ib;
    const pivot = K[p]! - a1 * la - b2 * lb - c3 * c3 * ic;
    if (!(pivot < 0 || pivot > 0) || pivot - pivot !== 0) return -1;
    if (pivot < 0) negative++;
    const one = K[p + 1]! - a2 * la - b3 * lb;
    const two = K[p + 2]! - a3 * la;
    K[p + 1] = one;
    K[p + 2] = two;
    ic = ib;
    c3 = b3;
    ib = ia;
    b2 = a2;
    b3 = a3;
    ia = 1 / pivot;
    K[p] = ia;
    a1 = one;
    a2 = two;
    a3 = K[p + 3]!;
  }
  return negative;
}

/**
 * Solves K x = f with the factors of {@link factorBanded}, f given in x with `band` zeros after it, in place.
 *
 * @param from unknowns before this one bear nothing
 * @param to unknowns before this one are not wanted; what stands there afterwards means nothing
 */
export function solveBanded(K: Float64Array, n: number, band: number, x: Float64Array, from = 0, to = 0): void {
  const stride = band + 1;
  for (let i = from, p = from * stride; i < n; i++, p += stride) {
    const value = x[i]! * K[p]!;
    for (let r = 1; r <= band; r++) x[i + r] = x[i + r]! - K[p + r]! * value;
  }
  if (band === 3) {
    backThree(K, n, x, to);
    return;
  }
  for (let i = n - 1, p = i * stride; i >= to; i--, p -= stride) {
    let sum = x[i]!;
    for (let r = 1; r <= band; r++) sum -= K[p + r]! * x[i + r]!;
    x[i] = sum * K[p]!;
  }
}

/** Back substitution written out for three codiagonals, for speed. */
function backThree(K: Float64Array, n: number, x: Float64Array, to: number): void {
  let [a, b, c] = [0, 0, 0];
  for (let i = n - 1, p = 4 * i; i >= to; i--, p -= 4) {
    const value = (x[i]! - K[p + 1]! * a - K[p + 2]! * b - K[p + 3]! * c) * K[p]!;
    x[i] = value;
    c = b;
    b = a;
    a = value;
  }
}
