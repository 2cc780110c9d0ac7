import { apply, dot, timesPairDerivative } from '../../numeric/index.js';
import { cholesky, solveWith } from './cholesky.js';
import type { EllipseEnergy } from './ellipse-energy.js';

/** A deflection in equilibrium at a multiple of the strain, and the products of its coefficients. */
export interface BuckledShape {
  readonly multiplier: number;
  readonly c: Float64Array;
  readonly q: Float64Array;
}

type Table = readonly Float64Array[];

/** The first step goes to this multiple of the buckling strain, where one mode is still a good guess. */
const firstStep = 1.05;
/** Each further step multiplies the strain by no more than this. */
const longestStep = 2;

/**
 * The deflection at a multiple of the strain above the buckling one, followed from there in steps.
 *
 * Newton's method on the energy; where that is not convex its second derivative is raised by the bending energy until it is.
 *
 * @param critical multiplier at buckling
 * @param from a shape at a smaller multiplier, to go on from instead
 */
export function buckledShape(
  energy: EllipseEnergy,
  critical: number,
  multiplier: number,
  from: Pick<BuckledShape, 'multiplier' | 'c'> = justBuckled(energy, critical, multiplier),
): BuckledShape {
  let { multiplier: last, c } = from;
  while (last < multiplier) {
    last = Math.min(multiplier, last * longestStep);
    c = relaxed(energy, last, c);
  }
  return { multiplier, c, q: products(energy, c) };
}

/** The first shape past buckling. */
function justBuckled(energy: EllipseEnergy, critical: number, most: number): Pick<BuckledShape, 'multiplier' | 'c'> {
  const mode = bucklingMode(energy, critical);
  const q = products(energy, mode);
  // One mode of size m: ½ (1 - λ/λc) m² c·K c + ½ m⁴ q·Q q is least at this m.
  const [first, fourth] = [quadratic(energy.K, mode), quadratic(energy.Q, q)];
  const multiplier = Math.min(most, firstStep * critical);
  const size = Math.sqrt(Math.max(0, multiplier / critical - 1) * (first / (2 * fourth)));
  const guess = mode.map((value) => size * value);
  return { multiplier, c: relaxed(energy, multiplier, guess) };
}

/** Energy at a multiplier of the strain. */
export const energyAt = (energy: EllipseEnergy, { multiplier, c }: BuckledShape): number =>
  energyOf(energy, linearPart(energy, multiplier), c);

/** The mode at a buckling multiplier, of unit bending energy, by inverse iteration. */
function bucklingMode({ K, S }: EllipseEnergy, critical: number): Float64Array {
  const L = cholesky(linearPart({ K, S }, (1 - 1e-7) * critical)) ?? [];
  let mode = Float64Array.from(K, (_, i) => 1 / (1 + i));
  for (let step = 0; step < 6; step++) {
    const next = solveWith(L, apply(K, mode));
    const size = Math.sqrt(quadratic(K, next));
    mode = next.map((value) => value / size);
  }
  return mode;
}

/** K + λ S. */
const linearPart = ({ K, S }: Pick<EllipseEnergy, 'K' | 'S'>, multiplier: number): Float64Array[] =>
  K.map((row, i) => row.map((value, j) => value + multiplier * (S[i]?.[j] ?? 0)));

function energyOf(energy: EllipseEnergy, linear: Table, c: Float64Array): number {
  return (quadratic(linear, c) + quadratic(energy.Q, products(energy, c))) / 2;
}

/** The minimum of the energy near a deflection. */
function relaxed(energy: EllipseEnergy, multiplier: number, start: Float64Array): Float64Array {
  const linear = linearPart(energy, multiplier);
  let c = start;
  let reached = energyOf(energy, linear, c);
  for (let step = 0; step < 60; step++) {
    const { gradient, hessian } = derivatives(energy, linear, c);
    const move = solveWith(convex(hessian, energy.K), gradient);
    const slope = dot(gradient, move);
    let fraction = 1;
    let next = c;
    for (; fraction > shortest; fraction /= 2) {
      next = c.map((old, i) => old - fraction * (move[i] ?? 0));
      const found = energyOf(energy, linear, next);
      if (found <= reached - 1e-4 * fraction * slope) {
        reached = found;
        break;
      }
    }
    // Where no step lowers the energy any more, rounding is all that is left.
    if (fraction <= shortest) break;
    c = next;
    if (slope <= 1e-13 * Math.abs(reached)) break;
  }
  return c;
}

/** Shortest part of a Newton step that is tried. */
const shortest = 1e-6;

/** The triangle of a second derivative, with as much of K added as makes it positive. */
function convex(hessian: Table, K: Table): Float64Array[] {
  for (let share = 0; share < 1e6; share = share === 0 ? 1e-3 : 4 * share) {
    const L = cholesky(hessian.map((row, i) => row.map((value, j) => value + share * (K[i]?.[j] ?? 0))));
    if (L !== undefined) return L;
  }
  return [];
}

/** First and second derivative of the energy by the coefficients. */
function derivatives({ Q, pairs }: EllipseEnergy, linear: Table, c: Float64Array) {
  const at = (i: number): number => c[i] ?? 0;
  const gradient = apply(linear, c);
  const hessian = linear.map((row) => row.slice());
  const add = (i: number, j: number, value: number): void => {
    const row = hessian[i];
    if (row !== undefined) row[j] = (row[j] ?? 0) + value;
  };
  const stress = apply(Q, products({ pairs }, c));
  const [first, second] = ([0, 1] as const).map((side) => Int32Array.from(pairs, (pair) => pair[side])) as [
    Int32Array,
    Int32Array,
  ];
  const QJ = timesPairDerivative(Q, first, second, c);
  pairs.forEach(([i, j], m) => {
    const s = stress[m] ?? 0;
    gradient[i] = (gradient[i] ?? 0) + s * at(j);
    gradient[j] = (gradient[j] ?? 0) + s * at(i);
    add(i, j, s);
    add(j, i, s);
    const row = QJ[m] ?? new Float64Array();
    for (let k = 0; k < row.length; k++) {
      add(i, k, (row[k] ?? 0) * at(j));
      add(j, k, (row[k] ?? 0) * at(i));
    }
  });
  return { gradient, hessian };
}

const products = ({ pairs }: Pick<EllipseEnergy, 'pairs'>, c: Float64Array): Float64Array =>
  Float64Array.from(pairs, ([i, j]) => (c[i] ?? 0) * (c[j] ?? 0));

const quadratic = (m: Table, x: Float64Array): number => dot(apply(m, x), x);
