import { times } from '../axes.js';
import { entry } from '../matrix3.js';
import type { Matrix3, Vector3 } from '../types.js';
import { type EllipseFields, ellipseEnergy } from './ellipse-energy.js';
import { type BuckledShape, buckledShape, energyAt } from './ellipse-path.js';
import type { EllipseBuckling } from './ellipse-ritz.js';

/** A clamped ellipse past buckling. */
export interface EllipseRelease {
  /** Energy release rate, J/m², as the mean over an edge that moves out along x alone, and along y alone. */
  readonly G: readonly [x: number, y: number];
  /** Energy beyond that of the film before it buckles, J. */
  readonly energy: number;
  /** Largest deflection and the largest to the other side, m. */
  readonly deflection: number;
  readonly opposite: number;
  readonly shape: BuckledShape;
}

/** The state at a multiplier of the strain, at least that of buckling; quicker from a state at a smaller one. */
export type EllipsePath = (multiplier: number, from?: EllipseRelease) => EllipseRelease;

/**
 * Energy release rate of a clamped ellipse past buckling, by the energy of moderately large deflections.
 *
 * Π = ∫ ½ e·A e + λ ε·A e + ½ κ·D κ with e the membrane strain beyond λ ε: e_x = u,x + ½ w,x², e_y = v,y + ½ w,y²,
 * e_xy = u,y + v,x + w,x w,y. At its minimum G = -∂Π/∂a /(π b) along x and -∂Π/∂b /(π a) along y.
 *
 * @param axes half axes along x and y, m
 * @param strain of the laminate at the multiplier 1
 * @throws not-computable when the energy is not a finite number or the membrane's not positive definite
 */
export function ellipseGrowth(
  { A, D }: { readonly A: Matrix3; readonly D: Matrix3 },
  [a, b]: readonly [number, number],
  strain: Vector3,
  { multiplier: critical, parity }: EllipseBuckling,
): EllipsePath {
  const [A0, D0] = [entry(A, 0, 0) + entry(A, 1, 1), entry(D, 0, 0) + entry(D, 1, 1)];
  const W2 = D0 / A0;
  const plate = {
    A: scaled(A, 1 / A0),
    D: scaled(D, 1 / D0),
    strain: vector(strain, (value) => (value * a * b) / W2),
    slimness: Math.sqrt(b / a),
  };
  const energy = ellipseEnergy(plate, parity);
  // Energy per area in which the plate's numbers are counted.
  const unit = (D0 * W2) / (a * b) ** 2;
  return (multiplier, from) => {
    const shape = buckledShape(energy, critical, multiplier, from?.shape);
    const fields = energy.fieldsOf(shape.c);
    const [x, y] = [0, 1].map((axis) => -derivative(plate, fields, multiplier, axis) / Math.PI);
    const deflections = Math.sqrt(W2);
    return {
      G: [(x ?? 0) * unit, (y ?? 0) * unit],
      energy: energyAt(energy, shape) * unit * a * b,
      deflection: Math.max(...fields.w.map(Math.abs)) * deflections,
      opposite: Math.min(-Math.min(...fields.w), Math.max(...fields.w)) * deflections,
      shape,
    };
  };
}
/** a ∂Π/∂a (axis 0) or b ∂Π/∂b (axis 1) at fixed coefficients, per area ab. */
function derivative(
  plate: { readonly A: Matrix3; readonly D: Matrix3; readonly strain: Vector3 },
  { weight, slope, curvature, gradient }: EllipseFields,
  multiplier: number,
  axis: number,
): number {
  const [sx, sy] = slope;
  const [kx, ky, kxy] = curvature;
  const [ux, uy, vx, vy] = gradient;
  const [alongX, alongY] = axis === 0 ? [1, 0] : [0, 1];
  const initial = times(
    plate.A,
    vector(plate.strain, (value) => value * multiplier),
  );
  let sum = 0;
  weight.forEach((share, k) => {
    const at = (values: readonly number[]): number => values[k] ?? 0;
    const [p, q] = [at(sx), at(sy)];
    const e: Vector3 = [at(ux) + (p * p) / 2, at(vy) + (q * q) / 2, at(uy) + at(vx) + p * q];
    const kappa: Vector3 = [at(kx), at(ky), at(kxy)];
    const [Ae, Dk] = [times(plate.A, e), times(plate.D, kappa)];
    const density = dot(e, Ae) / 2 + dot(initial, e) + dot(kappa, Dk) / 2;
    const N: Vector3 = [Ae[0] + initial[0], Ae[1] + initial[1], Ae[2] + initial[2]];
    const shear = alongX * at(vx) + alongY * at(uy) + p * q;
    const de: Vector3 = [-alongX * (at(ux) + p * p), -alongY * (at(vy) + q * q), -shear];
    const dk: Vector3 = [-2 * alongX * kappa[0], -2 * alongY * kappa[1], -kappa[2]];
    sum += share * (density + dot(N, de) + dot(Dk, dk));
  });
  return sum;
}

const dot = (p: Vector3, q: Vector3): number => p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
const vector = ([x, y, xy]: Vector3, of: (value: number) => number): Vector3 => [of(x), of(y), of(xy)];
const scaled = (m: Matrix3, by: number): Matrix3 => {
  const row = (i: number): Vector3 => [entry(m, i, 0) * by, entry(m, i, 1) * by, entry(m, i, 2) * by];
  return [row(0), row(1), row(2)];
};
