import { times } from '../axes.js';
import { ROW } from '../kernel-layout.js';
import { entry, symmetric } from '../matrix3.js';
import { tabulateQbar } from '../qbar.js';
import { stiffness } from '../stiffness.js';
import type { Laminate, Matrix3, Vector3 } from '../types.js';

/** F through one ply, per unit of moment: F = at0 + s at1 + s² at2, s the height above its lower face. */
export interface PlyFlow {
  /** Height of the lower face, m from the mid-plane. */
  readonly lower: number;
  readonly thickness: number;
  /** 1/m, 1/m², 1/m³. */
  readonly coefficients: readonly [Matrix3, Matrix3, Matrix3];
}

/** Change of the moments Mx, My, Mxy along x and along y, N/m. */
export interface MomentGradient {
  readonly alongX: Vector3;
  readonly alongY: Vector3;
}

/** Shear stress xz and yz, Pa. */
export type ShearStress = readonly [xz: number, yz: number];

/**
 * What equilibrium asks of shear through the thickness: F(z) = ∫ Qbar (b + ζ d) dζ from the tool face up to z.
 *
 * Without membrane forces the stress is σ = Qbar (b + z d) M, so F M is the force that the plies below z carry. F vanishes at both faces.
 *
 * @source Whitney 1973
 */
export function shearFlow(laminate: Laminate): readonly PlyFlow[] {
  const { b, d } = stiffness(laminate);
  const { qbarTable, row } = tabulateQbar(laminate.plies);
  let lower = -laminate.thickness / 2;
  let passed: Matrix3 = zero;
  return laminate.plies.map(({ thickness }, k) => {
    const Qbar = symmetric(qbarTable, (row[k] ?? 0) * ROW);
    const bending = product(Qbar, d);
    const slope = sum(product(Qbar, b), bending, lower);
    const flow: PlyFlow = { lower, thickness, coefficients: [passed, slope, sum(zero, bending, 0.5)] };
    passed = flowAt(flow, thickness);
    lower += thickness;
    return flow;
  });
}

/** F at a height `s` above the lower face of a ply, 1/m. */
export function flowAt({ coefficients: [at0, at1, at2] }: PlyFlow, s: number): Matrix3 {
  return sum(sum(at0, at1, s), at2, s * s);
}

/** τxz = -(F1 ∂M/∂x + F6 ∂M/∂y), τyz = -(F6 ∂M/∂x + F2 ∂M/∂y), with the rows of F. */
export function stressOf(F: Matrix3, { alongX, alongY }: MomentGradient): ShearStress {
  const [x, y] = [times(F, alongX), times(F, alongY)];
  return [-(x[0] + y[2]), -(x[2] + y[1])];
}

/**
 * The gradient of moments that shear forces stand for when nothing else is known: cylindrical bending about each axis in turn,
 * ∂Mx/∂x = Vx and ∂My/∂y = Vy, the other four zero.
 *
 * @source Whitney 1973; Vlachoutsis 1992
 */
export const cylindrical = (Vx: number, Vy: number): MomentGradient => ({ alongX: [Vx, 0, 0], alongY: [0, Vy, 0] });

const zero: Matrix3 = [
  [0, 0, 0],
  [0, 0, 0],
  [0, 0, 0],
];

function combine(of: (i: number, j: number) => number): Matrix3 {
  const row = (i: number): number[] => [of(i, 0), of(i, 1), of(i, 2)];
  return [row(0), row(1), row(2)];
}

function product(Qbar: Matrix3, m: Matrix3): Matrix3 {
  const column = (j: number): Vector3 => times(Qbar, [entry(m, 0, j), entry(m, 1, j), entry(m, 2, j)]);
  const columns = [column(0), column(1), column(2)];
  return combine((i, j) => columns[j]?.[i] ?? 0);
}

/** p + f q. */
const sum = (p: Matrix3, q: Matrix3, f: number): Matrix3 => combine((i, j) => entry(p, i, j) + f * entry(q, i, j));
