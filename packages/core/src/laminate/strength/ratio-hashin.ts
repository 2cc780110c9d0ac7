import { enter, firstRoot, leave, linearLimit } from './first-root.js';
import type { StrengthConstants } from './strength-constants.js';

/**
 * Hashin in plane stress, four modes on σ = r + R s:
 *
 * fibre tension (σ1 ≥ 0) (σ1/Xt)² + α (τ12/S)² = 1; fibre compression σ1 = -Xc; matrix tension (σ2 ≥ 0) (σ2/Yt)² + (τ12/S)² = 1;
 * matrix compression (σ2 < 0) (σ2/(2 ST))² + ((Yc/(2 ST))² - 1) σ2/Yc + (τ12/S)² = 1.
 *
 * @returns R, Infinity when never, 0 when the residual stress r alone breaks the ply
 * @source Hashin 1980
 */
export function hashinRatio(
  s1: number,
  s2: number,
  s12: number,
  r1: number,
  r2: number,
  r12: number,
  { Xt, Xc, Yt, Yc, S, ST, alpha }: StrengthConstants,
  limit: number,
): number {
  const X = 1 / (Xt * Xt);
  const Y = 1 / (Yt * Yt);
  const T = 1 / (4 * ST * ST);
  const L = 1 / (S * S);
  const linear = (Yc * T - 1 / Yc) / 2;
  const shear2 = L * s12 * s12;
  const shear1 = 2 * L * s12 * r12;
  const shear0 = L * r12 * r12 - 1;

  const fibreTension = firstRoot(
    enter(r1, s1),
    Math.min(leave(r1, s1), limit),
    X * s1 * s1 + alpha * shear2,
    2 * X * s1 * r1 + alpha * shear1,
    X * r1 * r1 + alpha * (shear0 + 1) - 1,
  );
  const fibreCompression = linearLimit(r1, s1, Number.POSITIVE_INFINITY, Xc);
  const matrixTension = firstRoot(
    enter(r2, s2),
    Math.min(leave(r2, s2), limit),
    Y * s2 * s2 + shear2,
    2 * Y * s2 * r2 + shear1,
    Y * r2 * r2 + shear0,
  );
  const matrixCompression = firstRoot(
    enter(-r2, -s2),
    Math.min(leave(-r2, -s2), limit),
    T * s2 * s2 + shear2,
    2 * (T * s2 * r2 + linear * s2) + shear1,
    T * r2 * r2 + 2 * linear * r2 + shear0,
  );
  return Math.min(fibreTension, fibreCompression, matrixTension, matrixCompression);
}
