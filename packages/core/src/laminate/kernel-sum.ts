import { ROW } from './kernel-layout.js';

const twelfth = 1 / 12;

/**
 * Sums a per-ply property through the thickness: three moments of each of its six columns.
 *
 * A = Σ q t, B = Σ q t z, D = Σ q (t z² + t³/12), with z the mid-height of the ply from the laminate's mid-plane.
 * Plain sums from the tool side up; what rounding leaves of a B that cancels is for the caller to judge.
 *
 * @param table rows of six columns: ply stiffness, or any other six properties
 * @param row row of the table per ply
 * @param thickness m per ply
 * @param first index of the laminate's first ply
 * @param end index after its last ply
 * @param out written: 6 numbers of A, 6 of B, 6 of D from `at` on
 * @returns the laminate's thickness, m
 */
export function sumStack(
  table: Float64Array,
  row: Int32Array,
  thickness: Float64Array,
  first: number,
  end: number,
  out: Float64Array,
  at: number,
): number {
  let h = 0;
  for (let k = first; k < end; k++) h += thickness[k]!;
  sumPlies(table, row, thickness, first, end, -h * 0.5, out, at);
  return h;
}

/**
 * The sums of {@link sumStack} over some of the plies: a single one gives what it adds.
 *
 * @param z height of the lower face of the first of them, m
 */
export function sumPlies(
  table: Float64Array,
  row: Int32Array,
  thickness: Float64Array,
  first: number,
  end: number,
  z: number,
  out: Float64Array,
  at: number,
): void {
  let A0 = 0;
  let A1 = 0;
  let A2 = 0;
  let A3 = 0;
  let A4 = 0;
  let A5 = 0;
  let B0 = 0;
  let B1 = 0;
  let B2 = 0;
  let B3 = 0;
  let B4 = 0;
  let B5 = 0;
  let D0 = 0;
  let D1 = 0;
  let D2 = 0;
  let D3 = 0;
  let D4 = 0;
  let D5 = 0;
  let lower = z;
  for (let k = first; k < end; k++) {
    const w = thickness[k]!;
    const middle = lower + w * 0.5;
    lower += w;
    const b = w * middle;
    const d = b * middle + w * w * w * twelfth;
    const p = row[k]! * ROW;
    let q = table[p]!;
    A0 += q * w;
    B0 += q * b;
    D0 += q * d;
    q = table[p + 1]!;
    A1 += q * w;
    B1 += q * b;
    D1 += q * d;
    q = table[p + 2]!;
    A2 += q * w;
    B2 += q * b;
    D2 += q * d;
    q = table[p + 3]!;
    A3 += q * w;
    B3 += q * b;
    D3 += q * d;
    q = table[p + 4]!;
    A4 += q * w;
    B4 += q * b;
    D4 += q * d;
    q = table[p + 5]!;
    A5 += q * w;
    B5 += q * b;
    D5 += q * d;
  }
  out[at] = A0;
  out[at + 1] = A1;
  out[at + 2] = A2;
  out[at + 3] = A3;
  out[at + 4] = A4;
  out[at + 5] = A5;
  out[at + 6] = B0;
  out[at + 7] = B1;
  out[at + 8] = B2;
  out[at + 9] = B3;
  out[at + 10] = B4;
  out[at + 11] = B5;
  out[at + 12] = D0;
  out[at + 13] = D1;
  out[at + 14] = D2;
  out[at + 15] = D3;
  out[at + 16] = D4;
  out[at + 17] = D5;
}
