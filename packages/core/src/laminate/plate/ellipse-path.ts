import { Matrix } from 'ml-matrix';
import { choleskyOf } from '../../numeric/index.js';
import { fail } from '../../problem/index.js';
import type { EllipseEnergy } from './ellipse-energy.js';
import { largestEigenvalue } from './largest-eigenvalue.js';

/** A deflection in equilibrium at a multiple of the strain: the column of its coefficients. */
export interface BuckledShape {
  readonly multiplier: number;
  readonly c: Matrix;
}

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
 * @throws not-computable when the energy is not a finite number
 */
export function buckledShape(
  energy: EllipseEnergy,
  critical: number,
  multiplier: number,
  from: BuckledShape = justBuckled(energy, critical, multiplier),
): BuckledShape {
  let { multiplier: last, c } = from;
  while (last < multiplier) {
    last = Math.min(multiplier, last * longestStep);
    c = relaxed(energy, last, c);
  }
  return { multiplier, c };
}

/** The first shape past buckling. */
function justBuckled(energy: EllipseEnergy, critical: number, most: number): BuckledShape {
  const { K, S, stretching } = energy;
  const multiplier = Math.min(most, firstStep * critical);
  const mode = largestEigenvalue(Matrix.mul(S, -1), K)?.vector;
  if (mode === undefined) {
    return fail({
      code: 'not-computable',
      message: 'the energy of the buckled plies is beyond what a number of 64 bits can hold',
      allowed: 'axes, strains and stiffnesses less far apart',
    });
  }
  // One mode of size m: ½ (1 - λ/λc) m² c·K c + ½ m⁴ c·h c is least at this m.
  const ratio = mode.dot(K.mmul(mode)) / mode.dot(stretching(mode).mmul(mode));
  const size = Math.sqrt((Math.max(0, multiplier / critical - 1) * ratio) / 2);
  return { multiplier, c: relaxed(energy, multiplier, mode.mul(size)) };
}

/** Energy at a multiplier of the strain. */
export const energyAt = (energy: EllipseEnergy, { multiplier, c }: BuckledShape): number =>
  stateAt(energy, linearPart(energy, multiplier), c).value;

/** K + λ S. */
const linearPart = ({ K, S }: EllipseEnergy, multiplier: number): Matrix => Matrix.add(K, Matrix.mul(S, multiplier));

/** The energy of a deflection and its derivatives by the coefficients. */
function stateAt({ stretching }: EllipseEnergy, linear: Matrix, c: Matrix) {
  const h = stretching(c);
  const [force, stretch] = [linear.mmul(c), h.mmul(c)];
  return {
    c,
    value: (c.dot(force) + c.dot(stretch)) / 2,
    gradient: force.add(stretch.mul(2)),
    hessian: h.mul(6).add(linear),
  };
}

/** The minimum of the energy near a deflection. */
function relaxed(energy: EllipseEnergy, multiplier: number, start: Matrix): Matrix {
  const linear = linearPart(energy, multiplier);
  let here = stateAt(energy, linear, start);
  for (let step = 0; step < 60; step++) {
    const move = convex(here.hessian, energy.K)?.solve(here.gradient);
    if (move === undefined) break;
    const slope = here.gradient.dot(move);
    let next: typeof here | undefined;
    for (let fraction = 1; fraction > shortest; fraction /= 2) {
      const tried = stateAt(energy, linear, Matrix.sub(here.c, Matrix.mul(move, fraction)));
      if (tried.value <= here.value - 1e-4 * fraction * slope) {
        next = tried;
        break;
      }
    }
    // Where no step lowers the energy any more, rounding is all that is left.
    if (next === undefined) break;
    here = next;
    if (slope <= 1e-13 * Math.abs(here.value)) break;
  }
  return here.c;
}

/** Shortest part of a Newton step that is tried. */
const shortest = 1e-6;

/** The factors of a second derivative, with as much of K added as makes it positive. */
function convex(hessian: Matrix, K: Matrix) {
  for (let share = 0; share < 1e6; share = share === 0 ? 1e-3 : 4 * share) {
    const factors = choleskyOf(Matrix.add(hessian, Matrix.mul(K, share)));
    if (factors !== undefined) return factors;
  }
  return undefined;
}
