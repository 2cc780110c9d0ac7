import { Matrix } from 'ml-matrix';
import { choleskyOf } from '../../numeric/index.js';
import { fail } from '../../problem/index.js';
import type { Matrix3 } from '../types.js';
import type { EllipseSamples } from './ellipse-samples.js';

/** What the stretching of a deflected ellipse makes of the column c of its coefficients. */
export interface EllipseMembrane {
  /**
   * The symmetric h of the energy ½ c·h c, at displacements in the plane of least energy.
   *
   * Its entries are Σ F_ijkl c_k c_l with F alike in all four places: the derivatives of the energy are 2 h c and 6 h.
   */
  readonly stretching: (c: Matrix) => Matrix;
  /** Coefficients of these displacements: a row along x and a row along y. */
  readonly displacements: (c: Matrix) => Matrix;
}

type Pair = readonly [i: number, j: number];

/**
 * The energy ∫ ½ e·A e with e_x = u,x + ½ w,x², e_y = v,y + ½ w,y², e_xy = u,y + v,x + w,x w,y, least over u and v.
 *
 * With T the energies of all pairs of strains of two deflections, B theirs with the displacements and G those of the displacements, what is
 * left at the best displacements is T - Bᵀ G⁻¹ B.
 *
 * @param A in numbers near 1
 * @throws not-computable when A or G is not positive definite
 */
export function ellipseMembrane(A: Matrix3, samples: EllipseSamples): EllipseMembrane {
  const [n, held] = [samples.slope[0].rows, 2 * samples.held[0].rows];
  const pairs = Array.from({ length: n }, (_, i) => Array.from({ length: n - i }, (__, j): Pair => [i, i + j])).flat();
  const table = strainColumns(A, samples, pairs).gram();
  const last = table.rows - 1;
  const B = table.subMatrix(0, held - 1, held, last);
  const moved = factorsOf(table.subMatrix(0, held - 1, 0, held - 1)).solve(B);
  const F = alike(Matrix.sub(table.subMatrix(held, last, held, last), B.transposeMultiply(moved)), pairs, n);
  const products = (c: Matrix): Matrix =>
    Matrix.columnVector(pairs.map(([i, j]) => (i === j ? 1 : 2) * c.get(i, 0) * c.get(j, 0)));
  return {
    stretching: (c) => {
      const sums = F.mmul(products(c));
      const h = new Matrix(n, n);
      pairs.forEach(([i, j], p) => {
        h.set(i, j, sums.get(p, 0)).set(j, i, sums.get(p, 0));
      });
      return h;
    },
    displacements: (c) => {
      const d = moved.mmul(products(c)).mul(-1).getColumn(0);
      return new Matrix([d.slice(0, held / 2), d.slice(held / 2)]);
    },
  };
}

/**
 * Strains at all points as columns whose products are the energy: √weight Cᵀ e with C Cᵀ = A; of the displacements along x, of those along y,
 * and of each pair of deflections.
 */
function strainColumns(A: Matrix3, { weight, slope, held }: EllipseSamples, pairs: readonly Pair[]): Matrix {
  const C = factorsOf(new Matrix(A)).lowerTriangularMatrix;
  const [c11, c21, c31] = [C.get(0, 0), C.get(1, 0), C.get(2, 0)];
  const [c22, c32, c33] = [C.get(1, 1), C.get(2, 1), C.get(2, 2)];
  const displaced = held[0].rows;
  const columns = new Matrix(3 * weight.length, 2 * displaced + pairs.length);
  weight.forEach((share, k) => {
    const root = Math.sqrt(share);
    const put = (column: number, x: number, y: number, xy: number): void => {
      columns.set(3 * k, column, root * (c11 * x + c21 * y + c31 * xy));
      columns.set(3 * k + 1, column, root * (c22 * y + c32 * xy));
      columns.set(3 * k + 2, column, root * c33 * xy);
    };
    for (let s = 0; s < displaced; s++) {
      const [x, y] = [held[0].get(s, k), held[1].get(s, k)];
      put(s, x, 0, y);
      put(displaced + s, 0, y, x);
    }
    pairs.forEach(([i, j], p) => {
      const [xi, yi, xj, yj] = [slope[0].get(i, k), slope[1].get(i, k), slope[0].get(j, k), slope[1].get(j, k)];
      put(2 * displaced + p, (xi * xj) / 2, (yi * yj) / 2, (xi * yj + yi * xj) / 2);
    });
  });
  return columns;
}

/** The mean over the three ways to put four shapes in two pairs; in a sum over products of four coefficients no more counts. */
function alike(table: Matrix, pairs: readonly Pair[], n: number): Matrix {
  const place = new Matrix(n, n);
  pairs.forEach(([i, j], p) => {
    place.set(i, j, p).set(j, i, p);
  });
  const at = (one: Pair, other: Pair): number => table.get(place.get(...one), place.get(...other));
  const mean = new Matrix(pairs.length, pairs.length);
  pairs.forEach(([i, j], p) => {
    pairs.forEach(([k, l], q) => {
      const sum = table.get(p, q) + at([i, k], [j, l]) + at([i, l], [j, k]);
      mean.set(p, q, sum / 3);
    });
  });
  return mean;
}

const factorsOf = (m: Matrix) =>
  choleskyOf(m) ??
  fail({
    code: 'not-computable',
    message: 'the membrane energy of the buckled plies is not positive definite in numbers of 64 bits',
    allowed: 'axes and stiffnesses less far apart',
  });
