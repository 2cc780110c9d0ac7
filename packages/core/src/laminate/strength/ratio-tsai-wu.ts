import { firstRoot } from './first-root.js';
import type { StrengthConstants } from './strength-constants.js';

/**
 * Tsai-Wu: F1 σ1 + F2 σ2 + F11 σ1² + F22 σ2² + F66 τ12² + 2 F12 σ1 σ2 = 1 on σ = r + R s: one quadratic in R, whose
 * constant term is the residual stress.
 *
 * @returns R, Infinity when there is no mechanical stress, 0 when the residual stress r alone breaks the ply
 * @source Tsai & Wu 1971
 */
export function tsaiWuRatio(
  s1: number,
  s2: number,
  s12: number,
  r1: number,
  r2: number,
  r12: number,
  { F1, F2, F11, F22, F66, F12 }: StrengthConstants,
): number {
  return firstRoot(
    0,
    Number.POSITIVE_INFINITY,
    F11 * s1 * s1 + F22 * s2 * s2 + F66 * s12 * s12 + 2 * F12 * s1 * s2,
    F1 * s1 + F2 * s2 + 2 * (F11 * s1 * r1 + F22 * s2 * r2 + F66 * s12 * r12 + F12 * (s1 * r2 + s2 * r1)),
    F1 * r1 + F2 * r2 + F11 * r1 * r1 + F22 * r2 * r2 + F66 * r12 * r12 + 2 * F12 * r1 * r2 - 1,
  );
}
