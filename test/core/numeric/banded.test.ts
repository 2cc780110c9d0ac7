import fc from 'fast-check';
import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { factorBanded, solveBanded } from '../../../packages/core/src/numeric/index.js';

/** A symmetric banded matrix in both forms. */
function both(entries: readonly number[], n: number, band: number, diagonal: number) {
  const dense = Matrix.zeros(n, n);
  const banded = new Float64Array((n + band) * (band + 1));
  for (let i = 0; i < n; i++) {
    for (let r = 0; r <= band && i + r < n; r++) {
      const value = entries[(7 * i + 3 * r) % entries.length]! + (r === 0 ? diagonal : 0);
      dense.set(i, i + r, value);
      dense.set(i + r, i, value);
      banded[i * (band + 1) + r] = value;
    }
  }
  return { dense, banded };
}

describe('the banded solver', () => {
  it.each([0, 1, 2, 3, 4])('with %d codiagonals agrees with a dense solver', (band) => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 20, maxLength: 60 }),
        fc.integer({ min: 1, max: 30 }),
        (entries, n) => {
          const { dense, banded } = both(entries, n, band, 10);
          const x = new Float64Array(n + band);
          for (let i = 0; i < n; i++) x[i] = entries[i % entries.length]! + 1;
          const wanted = solve(dense, Matrix.columnVector([...x.subarray(0, n)])).to1DArray();
          expect(factorBanded(banded, n, band)).toBe(0);
          solveBanded(banded, n, band, x);
          for (let i = 0; i < n; i++) expect(x[i]).toBeCloseTo(wanted[i]!, 12);
        },
      ),
      { numRuns: 50 },
    );
  });

  it.each([1, 2, 3])(
    'with %d codiagonals goes on from rows that are factors already, and answers for part of the unknowns',
    (band) => {
      const entries = [0.3, -0.7, 0.9, -0.2, 0.5, -0.4, 0.8];
      const [n, from] = [20, 11];
      const { dense, banded } = both(entries, n, band, 10);
      const original = banded.slice();
      expect(factorBanded(banded, n, band)).toBe(0);
      // The last rows change; those before stay factors.
      banded.set(original.subarray(from * (band + 1)), from * (band + 1));
      banded[from * (band + 1)] = banded[from * (band + 1)]! + 5;
      dense.set(from, from, dense.get(from, from) + 5);
      expect(factorBanded(banded, n, band, from)).toBe(0);
      const x = new Float64Array(n + band);
      x.fill(1, 15, n);
      const wanted = solve(dense, Matrix.columnVector([...x.subarray(0, n)])).to1DArray();
      solveBanded(banded, n, band, x, 15, 6);
      for (let i = 6; i < n; i++) expect(x[i]).toBeCloseTo(wanted[i]!, 13);
    },
  );

  it('counts negative eigenvalues', () => {
    // 2 on the diagonal beside -1 has eigenvalues 2 - 2 cos(k pi/6), so a shift by 1 leaves two of five negative (k = 1, and k = 2 at zero: 0.9).
    for (const [shift, wanted] of [
      [0, 0],
      [0.9, 1],
      [1.1, 2],
      [5, 5],
    ] as const) {
      const K = new Float64Array(12);
      for (let i = 0; i < 5; i++) {
        K[2 * i] = 2 - shift;
        if (i < 4) K[2 * i + 1] = -1;
      }
      expect(factorBanded(K, 5, 1)).toBe(wanted);
    }
  });

  it('refuses a zero pivot and what is no number', () => {
    expect(factorBanded(Float64Array.of(0, 0, 0, 0), 1, 1)).toBe(-1);
    expect(factorBanded(Float64Array.of(Number.NaN, 0, 0, 0), 1, 1)).toBe(-1);
    expect(factorBanded(Float64Array.of(Number.POSITIVE_INFINITY, 0, 0, 0), 1, 1)).toBe(-1);
  });
});
