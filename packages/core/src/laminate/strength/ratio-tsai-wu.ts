import { firstRootFromZero } from './first-root.js';
import type { StrengthConstants } from './strength-constants.js';

/**
 * Tsai-Wu: F1 σ1 + F2 σ2 + F11 σ1² + F22 σ2² + F66 τ12² + 2 F12 σ1 σ2 = 1 on σ = r + R s: one quadratic in R, whose
 * constant term is the residual stress.
 *
 * The residual part stands apart, so that what is left is small enough to be compiled into the kernel's loop.
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
  c: StrengthConstants,
  limit: number,
): number {
  const a = c.F11 * s1 * s1 + c.F22 * s2 * s2 + c.F66 * s12 * s12 + 2 * c.F12 * s1 * s2;
  const b = c.F1 * s1 + c.F2 * s2;
  if (r1 === 0 && r2 === 0 && r12 === 0) return firstRootFromZero(limit, a, b, -1);
  return firstRootFromZero(limit, a, b + mixed(s1, s2, s12, r1, r2, r12, c), residual(r1, r2, r12, c) - 1);
}

/** What the mechanical and the residual stress together add per unit of R. */
export function mixed(
  s1: number,
  s2: number,
  s12: number,
  r1: number,
  r2: number,
  r12: number,
  { F11, F22, F66, F12 }: StrengthConstants,
): number {
  return 2 * (F11 * s1 * r1 + F22 * s2 * r2 + F66 * s12 * r12 + F12 * (s1 * r2 + s2 * r1));
}

/** The criterion's left side for the residual stress alone. */
export function residual(
  r1: number,
  r2: number,
  r12: number,
  { F1, F2, F11, F22, F66, F12 }: StrengthConstants,
): number {
  return F1 * r1 + F2 * r2 + F11 * r1 * r1 + F22 * r2 * r2 + F66 * r12 * r12 + 2 * F12 * r1 * r2;
}
