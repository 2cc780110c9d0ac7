import { apply, dot, gram } from '../../numeric/index.js';
import { entry } from '../matrix3.js';
import type { Matrix3, Vector3 } from '../types.js';
import { cholesky, forward, solveWith } from './cholesky.js';
import { diskPoints } from './disk-points.js';
import { deflectionShapes, energyPower, inPlaneShapes } from './ellipse-shapes.js';
import { type Polynomial, valueAt, xDerivative, yDerivative } from './polynomial.js';

/** A clamped ellipse in numbers near 1: stiffness over A11 + A22 and D11 + D22, strain times ab over W², W² = (D11 + D22)/(A11 + A22). */
export interface EllipsePlate {
  readonly A: Matrix3;
  readonly D: Matrix3;
  readonly strain: Vector3;
  /** √(b/a). */
  readonly slimness: number;
}

/** Deflection and displacements at points of the ellipse, x and y per √(ab). */
export interface EllipseFields {
  readonly weight: Float64Array;
  readonly w: Float64Array;
  readonly slope: readonly [x: Float64Array, y: Float64Array];
  /** -w,xx, -w,yy, -2 w,xy. */
  readonly curvature: readonly [Float64Array, Float64Array, Float64Array];
  /** u,x, u,y, v,x, v,y. */
  readonly gradient: readonly [Float64Array, Float64Array, Float64Array, Float64Array];
}

/**
 * Energy of a clamped ellipse over the coefficients c of its deflection: ½ c·K c + ½ λ c·S c + ½ q·Q q, with q all the products of two
 * coefficients and the displacements in the plane those of least energy.
 */
export interface EllipseEnergy {
  readonly K: readonly Float64Array[];
  readonly S: readonly Float64Array[];
  readonly Q: readonly Float64Array[];
  /** Which two coefficients each entry of q multiplies, the first no later than the second. */
  readonly pairs: readonly (readonly [number, number])[];
  readonly fieldsOf: (c: Float64Array, q: Float64Array) => EllipseFields;
}

/** @param parity 0 for shapes of even power, 1 for odd */
export function ellipseEnergy({ A, D, strain, slimness }: EllipsePlate, parity: number): EllipseEnergy {
  const [alpha, beta] = [slimness, 1 / slimness];
  const points = diskPoints(energyPower);
  const sample = (p: Polynomial, factor: number): Float64Array =>
    points.x.map((x, k) => factor * valueAt(p, x, points.y[k] ?? 0));
  const shapes = deflectionShapes(parity).map((p) => {
    const [px, py] = [xDerivative(p), yDerivative(p)];
    return {
      w: sample(p, 1),
      x: sample(px, alpha),
      y: sample(py, beta),
      xx: sample(xDerivative(px), -alpha * alpha),
      yy: sample(yDerivative(py), -beta * beta),
      xy: sample(yDerivative(px), -2 * alpha * beta),
    };
  });
  const held = inPlaneShapes().map((p) => ({ x: sample(xDerivative(p), alpha), y: sample(yDerivative(p), beta) }));
  const none = new Float64Array(points.weight.length);

  const bend = rooted(D, points.weight);
  const stretch = rooted(A, points.weight);
  const N = [0, 1, 2].map((i) => [0, 1, 2].reduce((sum, j) => sum + entry(A, i, j) * (strain[j] ?? 0), 0));
  const bent = shapes.map(({ xx, yy, xy }) => bend(xx, yy, xy));
  const pairs = shapes.flatMap((_, i) => shapes.slice(i).map((__, j) => [i, i + j] as const));
  const stretched = pairs.map(([i, j]) => {
    const [p, q] = [shapes[i], shapes[j]];
    if (p === undefined || q === undefined) return none;
    const half = i === j ? 0.5 : 1;
    const xy = p.x.map((value, k) => half * (value * (q.y[k] ?? 0) + (p.y[k] ?? 0) * (q.x[k] ?? 0)));
    return stretch(product(p.x, q.x, half), product(p.y, q.y, half), xy);
  });
  const displaced = [...held.map(({ x, y }) => stretch(x, none, y)), ...held.map(({ x, y }) => stretch(none, y, x))];
  const L = cholesky(gram(displaced)) ?? [];
  const between = displaced.map((p) => Float64Array.from(stretched, (q) => dot(p, q)));
  const relieved = columns(forward(L, between), pairs.length);
  return {
    K: gram(bent),
    S: shapes.map(({ x, y }) => {
      const [fx, fy] = [sumOf([x, y], [N[0], N[2]]), sumOf([x, y], [N[2], N[1]])].map((f) =>
        product(f, points.weight, 1),
      );
      return Float64Array.from(shapes, (q) => dot(fx ?? none, q.x) + dot(fy ?? none, q.y));
    }),
    Q: difference(gram(stretched), gram(relieved)),
    pairs,
    fieldsOf: (c, q) => {
      const d = solveWith(
        L,
        apply(between, q).map((value) => -value),
      );
      const of = (key: keyof (typeof shapes)[0]): Float64Array =>
        sumOf(
          shapes.map((shape) => shape[key]),
          [...c],
        );
      const [u, v] = [d.slice(0, held.length), d.slice(held.length)];
      const [hx, hy] = [held.map(({ x }) => x), held.map(({ y }) => y)];
      return {
        weight: points.weight,
        w: of('w'),
        slope: [of('x'), of('y')],
        curvature: [of('xx'), of('yy'), of('xy')],
        gradient: [sumOf(hx, [...u]), sumOf(hy, [...u]), sumOf(hx, [...v]), sumOf(hy, [...v])],
      };
    },
  };
}

/** The sum of vectors by factors. */
function sumOf(parts: readonly Float64Array[], by: readonly (number | undefined)[]): Float64Array {
  const sum = new Float64Array(parts[0]?.length ?? 0);
  parts.forEach((part, i) => {
    const factor = by[i] ?? 0;
    for (let k = 0; k < sum.length; k++) sum[k] = (sum[k] ?? 0) + factor * (part[k] ?? 0);
  });
  return sum;
}

const product = (p: Float64Array, q: Float64Array, by: number): Float64Array =>
  p.map((value, k) => by * value * (q[k] ?? 0));

/** Strains at the points as vectors whose product is the energy of a stiffness: √weight Cᵀ e with C Cᵀ the stiffness. */
function rooted(stiffness: Matrix3, weight: Float64Array) {
  const C = cholesky(stiffness) ?? [];
  const c = (i: number, j: number): number => C[i]?.[j] ?? 0;
  return (x: Float64Array, y: Float64Array, xy: Float64Array): Float64Array => {
    const vector = new Float64Array(3 * weight.length);
    for (let k = 0; k < weight.length; k++) {
      const root = Math.sqrt(weight[k] ?? 0);
      const [ex, ey, exy] = [x[k] ?? 0, y[k] ?? 0, xy[k] ?? 0];
      vector[3 * k] = root * (c(0, 0) * ex + c(1, 0) * ey + c(2, 0) * exy);
      vector[3 * k + 1] = root * (c(1, 1) * ey + c(2, 1) * exy);
      vector[3 * k + 2] = root * c(2, 2) * exy;
    }
    return vector;
  };
}

const columns = (rows: readonly Float64Array[], count: number): Float64Array[] =>
  Array.from({ length: count }, (_, j) => Float64Array.from(rows, (row) => row[j] ?? 0));

const difference = (p: readonly Float64Array[], q: readonly Float64Array[]): Float64Array[] =>
  p.map((row, i) => row.map((value, j) => value - (q[i]?.[j] ?? 0)));
