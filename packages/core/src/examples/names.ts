import type { Matrix3, Vector3 } from '../laminate/index.js';
import type { ComputedValues } from './types.js';

const pairs = ['11', '12', '16', '22', '26', '66'] as const;

/** The six entries of a packed symmetric matrix (11, 12, 16, 22, 26, 66) under `NAMEij`. */
export function named(name: string, packed: ArrayLike<number>, at = 0): ComputedValues {
  return Object.fromEntries(pairs.map((pair, i) => [`${name}${pair}`, packed[at + i] ?? Number.NaN]));
}

/** The upper triangle of a symmetric matrix under `NAMEij`. */
export const namedMatrix = (name: string, [[m11, m12, m16], [, m22, m26], [, , m66]]: Matrix3): ComputedValues =>
  named(
    name,
    [m11, m12, m16, m22, m26, m66].map((entry) => entry ?? Number.NaN),
  );

/** Three components under the names given. */
export const namedVector = (names: readonly [string, string, string], vector: Vector3): ComputedValues => ({
  [names[0]]: vector[0],
  [names[1]]: vector[1],
  [names[2]]: vector[2],
});
