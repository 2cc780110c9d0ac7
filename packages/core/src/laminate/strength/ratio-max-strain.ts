import { maxStressRatio } from './ratio-max-stress.js';
import type { StrengthConstants } from './strength-constants.js';

/**
 * Maximum strain: -Xc/E1 < ε1 < Xt/E1, -Yc/E2 < ε2 < Yt/E2, |γ12| < S/G12.
 *
 * The strain is the one that stress makes, ε1 = (σ1 - ν12 σ2)/E1 and ε2 = (σ2 - ν21 σ1)/E2; with limits that are strength over
 * modulus, the moduli cancel.
 *
 * @returns R, Infinity when never, 0 when the residual stress r alone reaches a limit
 * @source Jones 1999, ch. 2.9
 */
export function maxStrainRatio(
  s1: number,
  s2: number,
  s12: number,
  r1: number,
  r2: number,
  r12: number,
  c: StrengthConstants,
): number {
  const { nu12, nu21 } = c;
  return maxStressRatio(s1 - nu12 * s2, s2 - nu21 * s1, s12, r1 - nu12 * r2, r2 - nu21 * r1, r12, c);
}
