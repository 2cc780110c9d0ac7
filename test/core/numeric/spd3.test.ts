import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { invertSpd3 } from '../../../packages/core/src/numeric/index.js';

const entry = fc.double({ min: -10, max: 10, noNaN: true });

describe('the inverse of a symmetric positive definite matrix', () => {
  it('times the matrix is the unit matrix', () => {
    const lower = fc.array(entry, { minLength: 3, maxLength: 3 });
    const diagonal = fc.array(fc.double({ min: 1, max: 10, noNaN: true }), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(lower, diagonal, ([p, q, r], [x, y, z]) => {
        const L = [
          [x!, 0, 0],
          [p!, y!, 0],
          [q!, r!, z!],
        ];
        const M = L.map((row) => L.map((other) => row.reduce((sum, value, k) => sum + value * other[k]!, 0)));
        const packed = Float64Array.of(M[0]![0]!, M[0]![1]!, M[0]![2]!, M[1]![1]!, M[1]![2]!, M[2]![2]!);
        const out = new Float64Array(6);
        expect(invertSpd3(packed, 0, out, 0)).toBe(true);
        const [a, b, c, d, e, f] = out;
        const inverse = [
          [a!, b!, c!],
          [b!, d!, e!],
          [c!, e!, f!],
        ];
        M.forEach((row, i) => {
          inverse.forEach((_, j) => {
            const product = row.reduce((sum, value, k) => sum + value * inverse[k]![j]!, 0);
            expect(product).toBeCloseTo(i === j ? 1 : 0, 6);
          });
        });
      }),
    );
  });

  it('is refused, with nothing written, when a pivot is zero, negative or not a number', () => {
    for (const m of [
      [0, 0, 0, 1, 0, 1],
      [1, 1, 0, 1, 0, 1],
      [1, 0, 2, 1, 0, 1],
      [1, 0, 0, Number.NaN, 0, 1],
      [Number.POSITIVE_INFINITY, 0, 0, 1, 0, 1],
    ]) {
      const out = new Float64Array(6).fill(7);
      expect(invertSpd3(Float64Array.from(m), 0, out, 0)).toBe(false);
      expect([...out]).toEqual([7, 7, 7, 7, 7, 7]);
    }
  });
});
