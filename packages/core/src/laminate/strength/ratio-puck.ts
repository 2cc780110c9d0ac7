import { enter, firstRoot, leave, linearLimit } from './first-root.js';
import type { StrengthConstants } from './strength-constants.js';

/**
 * Puck's action-plane criterion in plane stress on σ = r + R s.
 *
 * Fibre: -Xc < σ1 < Xt. Between fibres, each mode as the set of stresses it allows (p+ = p⊥∥(+), p- = p⊥∥(-)):
 *
 * - A, σ2 ≥ 0: √((τ/S)² + (1 - p+ Yt/S)² (σ2/Yt)²) + p+ σ2/S < 1, squared;
 * - B, -RA ≤ σ2 < 0: √(τ² + (p- σ2)²) + p- σ2 < S, which is τ² < S² - 2 p- S σ2;
 * - C, σ2 < -RA: (τ/(2 (1 + p⊥⊥) S))² + (σ2/Yc)² < -σ2/Yc.
 *
 * B and C meet at (-RA, S √(1 + 2 p⊥⊥)) with one tangent, so that the border in stress may be drawn at σ2 = -RA.
 *
 * @returns R, Infinity when never, 0 when the residual stress r alone breaks the ply
 * @source Puck & Schürmann 1998, 2002
 */
export function puckRatio(
  s1: number,
  s2: number,
  s12: number,
  r1: number,
  r2: number,
  r12: number,
  { Xt, Xc, Yt, Yc, S, pPlus, pMinus, pAcross, RA }: StrengthConstants,
  limit: number,
): number {
  const L = 1 / (S * S);
  const a = L * s12 * s12;
  const b = 2 * L * s12 * r12;
  const c = L * r12 * r12;

  const fibre = linearLimit(r1, s1, Xt, Xc);
  const quadraticA = (1 - (2 * pPlus * Yt) / S) / (Yt * Yt);
  const linearA = (2 * pPlus) / S;
  const modeA = firstRoot(
    enter(r2, s2),
    Math.min(leave(r2, s2), limit),
    a + quadraticA * s2 * s2,
    b + 2 * quadraticA * s2 * r2 + linearA * s2,
    c + quadraticA * r2 * r2 + linearA * r2 - 1,
  );
  const linearB = (2 * pMinus) / S;
  const modeB = firstRoot(
    Math.max(enter(-r2, -s2), enter(r2 + RA, s2)),
    Math.min(leave(-r2, -s2), leave(r2 + RA, s2), limit),
    a,
    b + linearB * s2,
    c + linearB * r2 - 1,
  );
  const shearC = 1 / (4 * (1 + pAcross) * (1 + pAcross));
  const modeC = firstRoot(
    enter(-r2 - RA, -s2),
    Math.min(leave(-r2 - RA, -s2), limit),
    shearC * a + (s2 / Yc) * (s2 / Yc),
    shearC * b + (2 * s2 * r2) / (Yc * Yc) + s2 / Yc,
    shearC * c + (r2 / Yc) * (r2 / Yc) + r2 / Yc,
  );
  return Math.min(fibre, modeA, modeB, modeC);
}
