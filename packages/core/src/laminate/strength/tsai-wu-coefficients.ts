import type { Strengths } from '../../material/index.js';
import { fail } from '../../problem/index.js';

/** Coefficients of F1 σ1 + F2 σ2 + F11 σ1² + F22 σ2² + F66 τ12² + 2 F12 σ1 σ2 = 1; 1/Pa and 1/Pa². */
export interface TsaiWuCoefficients {
  readonly F1: number;
  readonly F2: number;
  readonly F11: number;
  readonly F22: number;
  readonly F66: number;
  readonly F12: number;
}

/** The interaction when none is chosen. */
export const usualF12star = -0.5;

/**
 * Coefficients of the Tsai-Wu criterion.
 *
 * F1 = 1/Xt - 1/Xc, F11 = 1/(Xt Xc), F2 and F22 likewise, F66 = 1/S², F12 = F12* √(F11 F22). The surface is closed only
 * for |F12*| < 1.
 *
 * @param strengths all positive, Pa
 * @param F12star interaction, -1/2 when not given
 * @throws out-of-range when F12* is not between -1 and 1
 * @source Tsai & Wu 1971; F12* = -1/2 as in Tsai & Hahn 1980
 */
export function tsaiWuCoefficients({ Xt, Xc, Yt, Yc, S }: Strengths, F12star = usualF12star): TsaiWuCoefficients {
  if (!(Math.abs(F12star) < 1)) {
    fail({
      code: 'out-of-range',
      message: `F12star = ${F12star} opens the failure surface: some stress of any size would never break the ply`,
      allowed: 'more than -1 and less than 1',
    });
  }
  const F11 = 1 / (Xt * Xc);
  const F22 = 1 / (Yt * Yc);
  return {
    F1: 1 / Xt - 1 / Xc,
    F2: 1 / Yt - 1 / Yc,
    F11,
    F22,
    F66: 1 / (S * S),
    F12: F12star * Math.sqrt(F11 * F22),
  };
}
