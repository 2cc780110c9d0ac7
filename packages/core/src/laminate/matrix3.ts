import { invertSpd3 } from '../numeric/index.js';
import type { Matrix3 } from './types.js';

/** A symmetric matrix from the packed order 11, 12, 16, 22, 26, 66. */
export function symmetric(packed: ArrayLike<number>, at = 0): Matrix3 {
  const [m11, m12, m16, m22, m26, m66] = six(packed, at);
  return [
    [m11, m12, m16],
    [m12, m22, m26],
    [m16, m26, m66],
  ];
}

/** A matrix from nine numbers by rows. */
export function full(packed: ArrayLike<number>, at = 0): Matrix3 {
  const row = (i: number): number[] => Array.from({ length: 3 }, (_, j) => packed[at + 3 * i + j] ?? 0);
  return [row(0), row(1), row(2)];
}

/** A symmetric matrix in the packed order 11, 12, 16, 22, 26, 66; its upper triangle counts. */
export function packed(m: Matrix3): Float64Array {
  return Float64Array.of(
    entry(m, 0, 0),
    entry(m, 0, 1),
    entry(m, 0, 2),
    entry(m, 1, 1),
    entry(m, 1, 2),
    entry(m, 2, 2),
  );
}

/** The inverse of a symmetric positive definite matrix. */
export function inverse(m: Matrix3): Matrix3 {
  const out = new Float64Array(6);
  invertSpd3(packed(m), 0, out, 0);
  return symmetric(out);
}

/** One entry, counted from 0. */
export function entry(m: Matrix3, i: number, j: number): number {
  return m[i]?.[j] ?? 0;
}

/** The largest magnitude among the entries. */
export function largest(m: Matrix3): number {
  return Math.max(...m.flat().map(Math.abs));
}

function six(packed: ArrayLike<number>, at: number): [number, number, number, number, number, number] {
  const k = (i: number): number => packed[at + i] ?? 0;
  return [k(0), k(1), k(2), k(3), k(4), k(5)];
}
