import { inverse, Matrix } from 'ml-matrix';
import type { StepValues } from '../working/index.js';

/** Indices of the nine places of a block: of a symmetric one, of one that is not. */
const symmetric = ['11', '12', '16', '12', '22', '26', '16', '26', '66'];
const full = ['11', '12', '16', '21', '22', '26', '61', '62', '66'];

/** The blocks a, b and d of the inverse of a stiffness, by their symbols; nothing when it has none. */
export function invertedStiffness(numberOf: (symbol: string) => number): StepValues {
  const K = Matrix.zeros(6, 6);
  for (let i = 0; i < 6; i++) {
    for (let j = 0; j < 6; j++) {
      const block = i < 3 ? (j < 3 ? 'A' : 'B') : j < 3 ? 'B' : 'D';
      K.set(i, j, numberOf(block + symmetric[3 * (i % 3) + (j % 3)]));
    }
  }
  let c: Matrix;
  try {
    c = inverse(K);
  } catch {
    return {};
  }
  const block = (name: string, row: number, column: number): [string, number][] =>
    (name === 'b' ? full : symmetric).map((ij, k) => [name + ij, c.get(row + Math.trunc(k / 3), column + (k % 3))]);
  return Object.fromEntries([...block('a', 0, 0), ...block('b', 0, 3), ...block('d', 3, 3)]);
}
