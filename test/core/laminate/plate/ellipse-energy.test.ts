import fc from 'fast-check';
import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { stiffness } from '../../../../packages/core/src/laminate/index.js';
import { diskPoints } from '../../../../packages/core/src/laminate/plate/disk-points.js';
import { ellipseEnergy } from '../../../../packages/core/src/laminate/plate/ellipse-energy.js';
import { ellipseSamples } from '../../../../packages/core/src/laminate/plate/ellipse-samples.js';
import { bendingTable, forceTable } from '../../../../packages/core/src/laminate/plate/ellipse-tables.js';
import { largestEigenvalue } from '../../../../packages/core/src/laminate/plate/largest-eigenvalue.js';
import { diskIntegral } from '../../../../packages/core/src/laminate/plate/polynomial.js';
import type { Matrix3 } from '../../../../packages/core/src/laminate/types.js';
import { evenly, expectNear, graphite, problemCode, stackOf } from '../plies.js';

const { A, D } = stiffness(stackOf(graphite, '[30/-60/10]', 2e-4));
const near1 = (m: Matrix3): Matrix3 => {
  const size = m[0][0]! + m[1][1]!;
  const [x, y, xy] = m.map((row) => row.map((value) => value / size));
  return [x!, y!, xy!];
};
const plate = { A: near1(A), D: near1(D), strain: [-0.3, 0.1, 0.2] as const, slimness: 0.8 };

describe('points of the disk', () => {
  it('integrate every even product of powers as its closed form', () => {
    const { x, y, weight } = diskPoints(12);
    for (let i = 0; i <= 12; i++) {
      for (let j = i % 2; i + j <= 12; j += 2) {
        const sum = weight.reduce((total, share, k) => total + share * x[k]! ** i * y[k]! ** j, 0);
        expect(sum).toBeCloseTo(diskIntegral([{ c: 1, i, j: 0 }], [{ c: 1, i: 0, j }]), 14);
      }
    }
  });
});

describe('the energy of a clamped ellipse', () => {
  it.each([0, 1])('integrated in closed form is that summed over the points, parity %d', (parity) => {
    const { weight, curvature, slope } = ellipseSamples(plate.slimness, parity);
    const summed = (C: readonly (readonly number[])[], e: readonly Matrix[]) =>
      e[0]!.to2DArray().flatMap((_, p) =>
        e[0]!.to2DArray().map((__, q) =>
          weight.reduce((total, share, k) => {
            const at = (shape: number) => e.map((part) => part.get(shape, k));
            const stress = C.map((row) => row.reduce((sum, value, j) => sum + value * at(q)[j]!, 0));
            return total + share * at(p).reduce((sum, value, i) => sum + value * stress[i]!, 0);
          }, 0),
        ),
      );
    const [Nx, Ny, Nxy] = [-1, 0.3, 0.4];
    const N = [
      [Nx, Nxy],
      [Nxy, Ny],
    ];
    expectNear(bendingTable(plate.D, plate.slimness, parity).to1DArray(), summed(plate.D, curvature), 1e-12);
    expectNear(forceTable([Nx, Ny, Nxy], plate.slimness, parity).to1DArray(), summed(N, slope), 1e-12);
  });

  it('of stretching is alike in all four deflections it is made of, and not negative', () => {
    const { K, stretching } = ellipseEnergy(plate, 0);
    const coefficients = fc
      .array(evenly(-1, 1), { minLength: K.rows, maxLength: K.rows })
      .map((c) => Matrix.columnVector(c));
    fc.assert(
      fc.property(coefficients, coefficients, (c, d) => {
        const [h, g] = [stretching(c), stretching(d)];
        const ofC = c.dot(h.mmul(c));
        const ofD = d.dot(g.mmul(d));
        const scale = Math.max(ofC, ofD);
        expect(Math.min(ofC, ofD)).toBeGreaterThanOrEqual(-1e-12 * scale);
        expectNear([d.dot(h.mmul(d))], [c.dot(g.mmul(c))], 1e-10, scale);
      }),
      { numRuns: 20 },
    );
  });

  it('cannot be computed when its stiffness in the plane is not positive definite', () => {
    const indefinite: Matrix3 = [
      [1, 2, 0],
      [2, 1, 0],
      [0, 0, 1],
    ];
    expect(problemCode(() => ellipseEnergy({ ...plate, A: indefinite }, 0))).toBe('not-computable');
  });
});

describe('the largest eigenvalue of S c = μ K c', () => {
  it('comes with its c, of c·K c = 1', () => {
    // μ = 3 and 1/2 by hand: (S - μ K) is singular.
    const S = new Matrix([
      [6, 0],
      [0, 2],
    ]);
    const K = new Matrix([
      [2, 0],
      [0, 4],
    ]);
    const { value, vector } = largestEigenvalue(S, K)!;
    expect(value).toBeCloseTo(3, 14);
    expectNear(vector.getColumn(0).map(Math.abs), [Math.SQRT1_2, 0], 1e-14);
  });

  it('satisfies the equation and is no less than any ratio c·S c / c·K c', () => {
    const numbers = fc.array(evenly(-1, 1), { minLength: 9, maxLength: 9 });
    fc.assert(
      fc.property(numbers, numbers, (one, other) => {
        const M = Matrix.from1DArray(3, 3, one);
        const S = Matrix.add(M, M.transpose());
        const K = Matrix.from1DArray(3, 3, other).gram().add(Matrix.eye(3));
        const { value, vector } = largestEigenvalue(S, K)!;
        expectNear(S.mmul(vector).getColumn(0), K.mmul(vector).mul(value).getColumn(0), 1e-12, 10);
        for (const c of [Matrix.columnVector([1, 0, 0]), Matrix.columnVector([1, -2, 3])]) {
          expect(c.dot(S.mmul(c)) / c.dot(K.mmul(c))).toBeLessThanOrEqual(value + 1e-12);
        }
      }),
    );
  });

  it('is undefined when K is not positive definite or S not finite', () => {
    expect(largestEigenvalue(new Matrix([[1]]), new Matrix([[-1]]))).toBeUndefined();
    expect(largestEigenvalue(new Matrix([[Number.NaN]]), new Matrix([[1]]))).toBeUndefined();
  });
});
