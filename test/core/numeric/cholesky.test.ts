import fc from 'fast-check';
import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { choleskyOf } from '../../../packages/core/src/numeric/index.js';

const entry = fc.double({ min: -10, max: 10, noNaN: true });

describe('the Cholesky factors of a symmetric matrix', () => {
  it('solve its systems, and leave it as it was', () => {
    const system = fc.integer({ min: 1, max: 6 }).chain((n) => {
      const row = fc.array(entry, { minLength: n, maxLength: n });
      return fc.tuple(fc.array(row, { minLength: n, maxLength: n }), row);
    });
    fc.assert(
      fc.property(system, ([root, f]) => {
        const m = new Matrix(root).gram().add(Matrix.eye(f.length));
        const before = m.to2DArray();
        const x = choleskyOf(m)!.solve(Matrix.columnVector(f));
        m.mmul(x)
          .getColumn(0)
          .forEach((value, i) => {
            expect(value).toBeCloseTo(f[i]!, 7);
          });
        expect(m.to2DArray()).toEqual(before);
      }),
    );
  });

  it('need no unknowns to answer', () => {
    expect(choleskyOf(new Matrix([]))!.solve(Matrix.columnVector([])).rows).toBe(0);
  });

  it.each([
    [
      'singular',
      [
        [1, 2],
        [2, 4],
      ],
    ],
    [
      'indefinite',
      [
        [1, 2],
        [2, 1],
      ],
    ],
    ['not a number', [[Number.NaN]]],
    ['not finite', [[Number.POSITIVE_INFINITY]]],
  ])('are undefined when it is %s', (_, m) => {
    expect(choleskyOf(new Matrix(m))).toBeUndefined();
  });
});
