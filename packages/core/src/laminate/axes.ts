import { sinCosDegrees } from '../numeric/index.js';
import { entry } from './matrix3.js';
import type { Matrix3, Vector3 } from './types.js';

/**
 * Strain seen from axes turned by an angle: from laminate to ply axes with the ply's angle, back with its negative.
 *
 * ε1 = c² εx + s² εy + cs γxy; γ12 = 2cs (εy - εx) + (c² - s²) γxy (engineering shear strain).
 *
 * @param strain x, y, xy
 * @param angle degrees from x to the new first axis, positive toward y
 * @source Jones 1999, ch. 2.6
 */
export function rotateStrain([x, y, xy]: Vector3, angle: number): Vector3 {
  const { sin: s, cos: c } = sinCosDegrees(angle);
  const half = c * s * xy;
  return [c * c * x + s * s * y + half, s * s * x + c * c * y - half, 2 * c * s * (y - x) + (c - s) * (c + s) * xy];
}

/**
 * Stress, or force or moment per length, seen from axes turned by an angle.
 *
 * σ1 = c² σx + s² σy + 2cs τxy; τ12 = cs (σy - σx) + (c² - s²) τxy.
 *
 * @param stress x, y, xy
 * @param angle degrees from x to the new first axis, positive toward y
 * @source Jones 1999, ch. 2.6
 */
export function rotateStress([x, y, xy]: Vector3, angle: number): Vector3 {
  const { sin: s, cos: c } = sinCosDegrees(angle);
  const twice = 2 * c * s * xy;
  return [c * c * x + s * s * y + twice, s * s * x + c * c * y - twice, c * s * (y - x) + (c - s) * (c + s) * xy];
}

/**
 * Compliance seen from axes turned by an angle: T c Tᵀ with T the rotation of strain.
 *
 * @param c compliance (a, b or d of a laminate), strain per stress with engineering shear strain
 * @param angle degrees from x to the new first axis, positive toward y
 */
export function rotateCompliance(c: Matrix3, angle: number): Matrix3 {
  // Each pass turns the columns and exchanges rows with columns: (T (T c)ᵀ)ᵀ = T c Tᵀ.
  return turnedAcross(turnedAcross(c, angle), angle);
}

/** The transpose of T m. */
function turnedAcross(m: Matrix3, angle: number): Matrix3 {
  const column = (j: number): Vector3 => rotateStrain([entry(m, 0, j), entry(m, 1, j), entry(m, 2, j)], angle);
  return [column(0), column(1), column(2)];
}

/** The product of a matrix with a vector. */
export function times(m: Matrix3, [x, y, xy]: Vector3): Vector3 {
  const row = (i: number): number => entry(m, i, 0) * x + entry(m, i, 1) * y + entry(m, i, 2) * xy;
  return [row(0), row(1), row(2)];
}
