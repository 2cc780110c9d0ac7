import type { Matrix3, Vector3 } from './types.js';

const six = ['11', '12', '16', '22', '26', '66'];
const nine = ['11', '12', '16', '21', '22', '26', '61', '62', '66'];

/** Six numbers in the packed order 11, 12, 16, 22, 26, 66 by their names: `A11` to `A66`. */
export const componentsAt = (name: string, values: ArrayLike<number>, at = 0): Record<string, number> =>
  Object.fromEntries(six.map((index, i) => [name + index, values[at + i] ?? 0]));

/** All nine components of a matrix by their names: `b11` to `b66`. */
export const componentsOf = (name: string, m: Matrix3): Record<string, number> =>
  Object.fromEntries(m.flat().map((value, i) => [name + nine[i], value]));

/** Three components by their names. */
export const vectorAs = (names: readonly [string, string, string], [x, y, xy]: Vector3): Record<string, number> => ({
  [names[0]]: x,
  [names[1]]: y,
  [names[2]]: xy,
});
