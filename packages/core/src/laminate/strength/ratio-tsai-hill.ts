import { enter, firstRoot, leave } from './first-root.js';
import type { StrengthConstants } from './strength-constants.js';

/**
 * Tsai-Hill: σ1²/X² - σ1 σ2/Xm² + σ2²/Y² + τ12²/S² = 1 on σ = r + R s.
 *
 * X and Y are tensile or compressive by the sign of their stress; Xm = X, or in the variant `crossTerm` Xt or Xc by the sign
 * of σ2. The four sectors of sign are solved apart.
 *
 * @returns R, Infinity when never, 0 when the residual stress r alone breaks the ply
 * @source Azzi & Tsai 1965 after Hill 1948; variants: Kaw 2006, ch. 2.8
 */
export function tsaiHillRatio(
  s1: number,
  s2: number,
  s12: number,
  r1: number,
  r2: number,
  r12: number,
  c: StrengthConstants,
  limit: number,
): number {
  // Without residual stress the ray stays in one sector.
  if (r1 === 0 && r2 === 0) return sector(s1 < 0 ? -1 : 1, s2 < 0 ? -1 : 1, s1, s2, s12, r1, r2, r12, c, limit);
  return Math.min(
    sector(1, 1, s1, s2, s12, r1, r2, r12, c, limit),
    sector(1, -1, s1, s2, s12, r1, r2, r12, c, limit),
    sector(-1, 1, s1, s2, s12, r1, r2, r12, c, limit),
    sector(-1, -1, s1, s2, s12, r1, r2, r12, c, limit),
  );
}

/** The ratio in one sector of signs, 1 or -1 each; Infinity when the limit is not reached there. */
export function sector(
  sign1: number,
  sign2: number,
  s1: number,
  s2: number,
  s12: number,
  r1: number,
  r2: number,
  r12: number,
  c: StrengthConstants,
  limit: number,
): number {
  const lo = Math.max(enter(sign1 * r1, sign1 * s1), enter(sign2 * r2, sign2 * s2));
  if (lo === Number.POSITIVE_INFINITY) return lo;
  const hi = Math.min(leave(sign1 * r1, sign1 * s1), leave(sign2 * r2, sign2 * s2), limit);
  const X = sign1 > 0 ? c.Xt : c.hillXc;
  const Y = sign2 > 0 ? c.Yt : c.hillYc;
  const crossSign = c.hillCrossBySigma2 === 1 ? sign2 : sign1;
  const Xm = crossSign > 0 ? c.Xt : c.hillXc;
  const F = 1 / (X * X);
  const G = 1 / (Y * Y);
  const H = 1 / (Xm * Xm);
  const L = 1 / (c.S * c.S);
  return firstRoot(
    lo,
    hi,
    F * s1 * s1 - H * s1 * s2 + G * s2 * s2 + L * s12 * s12,
    2 * (F * s1 * r1 + G * s2 * r2 + L * s12 * r12) - H * (s1 * r2 + s2 * r1),
    F * r1 * r1 - H * r1 * r2 + G * r2 * r2 + L * r12 * r12 - 1,
  );
}
