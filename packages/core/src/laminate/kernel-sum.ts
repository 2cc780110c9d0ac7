import { ROW } from './kernel-layout.js';

/**
 * Sums a per-ply property through the thickness: three moments of each of its six columns.
 *
 * A = Σ q t, B = Σ q t z, D = Σ q (t z² + t³/12), with z the mid-height of the ply from the laminate's mid-plane.
 * Plies are taken in pairs from both faces inward, so a mirrored stack gives B of exactly zero.
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
  // Nine sums at a time stay in registers, eighteen do not: two passes are faster than one.
  sumThreeColumns(table, 0, row, thickness, h, first, end, out, at);
  sumThreeColumns(table, 3, row, thickness, h, first, end, out, at + 3);
  return h;
}

function sumThreeColumns(
  table: Float64Array,
  column: number,
  row: Int32Array,
  thickness: Float64Array,
  h: number,
  first: number,
  end: number,
  out: Float64Array,
  at: number,
): void {
  let A0 = 0;
  let A1 = 0;
  let A2 = 0;
  let B0 = 0;
  let B1 = 0;
  let B2 = 0;
  let D0 = 0;
  let D1 = 0;
  let D2 = 0;
  let lower = -h / 2;
  let upper = h / 2;
  let i = first;
  let j = end - 1;
  for (; i < j; i++, j--) {
    const ti = thickness[i]!;
    const tj = thickness[j]!;
    const zi = lower + ti / 2;
    const zj = upper - tj / 2;
    lower += ti;
    upper -= tj;
    const bi = ti * zi;
    const bj = tj * zj;
    const di = bi * zi + (ti * ti * ti) / 12;
    const dj = bj * zj + (tj * tj * tj) / 12;
    const p = row[i]! * ROW + column;
    const q = row[j]! * ROW + column;
    let u = table[p]!;
    let v = table[q]!;
    A0 += u * ti + v * tj;
    B0 += u * bi + v * bj;
    D0 += u * di + v * dj;
    u = table[p + 1]!;
    v = table[q + 1]!;
    A1 += u * ti + v * tj;
    B1 += u * bi + v * bj;
    D1 += u * di + v * dj;
    u = table[p + 2]!;
    v = table[q + 2]!;
    A2 += u * ti + v * tj;
    B2 += u * bi + v * bj;
    D2 += u * di + v * dj;
  }
  if (i === j) {
    const t = thickness[i]!;
    const z = (lower + upper) / 2;
    const b = t * z;
    const d = b * z + (t * t * t) / 12;
    const p = row[i]! * ROW + column;
    A0 += table[p]! * t;
    B0 += table[p]! * b;
    D0 += table[p]! * d;
    A1 += table[p + 1]! * t;
    B1 += table[p + 1]! * b;
    D1 += table[p + 1]! * d;
    A2 += table[p + 2]! * t;
    B2 += table[p + 2]! * b;
    D2 += table[p + 2]! * d;
  }
  out[at] = A0;
  out[at + 1] = A1;
  out[at + 2] = A2;
  out[at + 6] = B0;
  out[at + 7] = B1;
  out[at + 8] = B2;
  out[at + 12] = D0;
  out[at + 13] = D1;
  out[at + 14] = D2;
}
