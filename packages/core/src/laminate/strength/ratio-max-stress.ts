import { linearLimit } from './first-root.js';
import type { StrengthConstants } from './strength-constants.js';

/**
 * Maximum stress: the first of -Xc < σ1 < Xt, -Yc < σ2 < Yt, |τ12| < S to be reached by σ = r + R s.
 *
 * @returns R, Infinity when never, 0 when the residual stress r alone reaches a limit
 * @source Jones 1999, ch. 2.9
 */
export function maxStressRatio(
  s1: number,
  s2: number,
  s12: number,
  r1: number,
  r2: number,
  r12: number,
  c: StrengthConstants,
): number {
  return Math.min(linearLimit(r1, s1, c.Xt, c.Xc), linearLimit(r2, s2, c.Yt, c.Yc), linearLimit(r12, s12, c.S, c.S));
}
