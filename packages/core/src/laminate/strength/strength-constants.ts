import type { Ply, Strengths } from '../../material/index.js';
import { choice, fail } from '../../problem/index.js';
import type { Working } from '../../working/index.js';
import { type Criterion, puckInclination, type StrengthOptions, tsaiHillVariants } from './criterion.js';
import { type TsaiWuCoefficients, tsaiWuCoefficients, usualF12star } from './tsai-wu-coefficients.js';

/**
 * Everything that the ratio functions need of one material, as one flat record of numbers: computed once, then read at
 * every point. Strengths in Pa.
 */
export interface StrengthConstants extends Strengths, TsaiWuCoefficients {
  readonly nu12: number;
  readonly nu21: number;
  /** Tsai-Hill: what stands for Xc and Yc, and 1 when X of the cross term goes by the sign of σ2. */
  readonly hillXc: number;
  readonly hillYc: number;
  readonly hillCrossBySigma2: number;
  /** Hashin: shear strength across the fibre, and the share of shear in fibre tension. */
  readonly ST: number;
  readonly alpha: number;
  /** Puck: inclinations p⊥∥(+), p⊥∥(-), p⊥⊥; fracture resistance RA of the plane; shear at the joint of modes B and C. */
  readonly pPlus: number;
  readonly pMinus: number;
  readonly pAcross: number;
  readonly RA: number;
  readonly shearAtJoint: number;
}

/** A ply as far as its strength goes. */
export type StrengthPly = Pick<Ply, 'E1' | 'E2' | 'nu12'> & { readonly name?: string; readonly strengths: Strengths };

/**
 * The constants of one material for a criterion.
 *
 * ν21 = ν12 E2/E1. Puck: RA = S/(2p) (√(1 + 2p Yc/S) - 1), p⊥⊥ = p RA/S, joint at τ = S √(1 + 2 p⊥⊥), p = p⊥∥(-).
 *
 * @param ply moduli and strengths, Pa, strengths all positive
 * @param criterion whose own options are checked; the constants of the others are there too
 * @param working takes down what the criterion makes of the strengths, when given
 * @throws out-of-range for a strength that is not positive, |F12*| of 1 or more, an alpha outside 0 to 1, a shear strength
 *   that is not positive, an inclination below 0 or p⊥∥(+) of S/Yt or more; not-a-choice for an unknown name
 * @source Tsai & Wu 1971; Hashin 1980; Puck & Schürmann 1998
 */
export function strengthConstants(
  { E1, E2, nu12, name, strengths }: StrengthPly,
  criterion: Criterion,
  options: StrengthOptions = {},
  working?: Working,
): StrengthConstants {
  const { Xt, Xc, Yt, Yc, S } = strengths;
  for (const [symbol, value] of Object.entries({ Xt, Xc, Yt, Yc, S })) positive(symbol, value);
  const variant = choice('variant', options.variant ?? 'sign', tsaiHillVariants);
  const ST = options.transverseShearStrength ?? Yc / 2;
  const alpha = options.alpha ?? 1;
  const p = puckInclination(options);
  if (criterion === 'hashin') checkHashin(ST, alpha);
  if (criterion === 'puck') checkPuck(p.plus, p.minus, strengths, name);

  // The printed RA = S/(2p) (√(1 + 2p Yc/S) - 1), without its 0/0 at p = 0.
  const RA = Yc / (1 + Math.sqrt(1 + (2 * p.minus * Yc) / S));
  const pAcross = (p.minus * RA) / S;
  const found = {
    Xt,
    Xc,
    Yt,
    Yc,
    S,
    nu12,
    nu21: (nu12 * E2) / E1,
    hillXc: variant === 'tensile' ? Xt : Xc,
    hillYc: variant === 'tensile' ? Yt : Yc,
    hillCrossBySigma2: variant === 'crossTerm' ? 1 : 0,
    ...tsaiWuCoefficients(strengths, criterion === 'tsaiWu' ? options.F12star : undefined),
    ST,
    alpha,
    pPlus: p.plus,
    pMinus: p.minus,
    pAcross,
    RA,
    shearAtJoint: S * Math.sqrt(1 + 2 * pAcross),
  };
  if (working !== undefined) showConstants(found, criterion, options, working);
  return found;
}

/** Takes down the constants that a criterion has beside the strengths. */
function showConstants(c: StrengthConstants, criterion: Criterion, options: StrengthOptions, working: Working): void {
  const { Xt, Xc, Yt, Yc, S, F1, F2, F11, F22, F66, F12, pMinus, pAcross } = c;
  if (criterion === 'tsaiWu') {
    const F12star = options.F12star ?? usualF12star;
    working.step('tsaiWuCoefficients', { Xt, Xc, Yt, Yc, S, F12star, F1, F2, F11, F22, F66, F12 });
  }
  if (criterion === 'hashin' && options.transverseShearStrength === undefined) {
    working.step('hashinShear', { Yc, S_T: c.ST });
  }
  if (criterion === 'puck') {
    const plane = { R_A: c.RA, p_across: pAcross, tau_c: c.shearAtJoint };
    working.step('puckConstants', { Yc, S, p_minus: pMinus, ...plane });
  }
}

function positive(name: string, value: number): void {
  if (value > 0 && Number.isFinite(value)) return;
  fail({ code: 'out-of-range', message: `the strength ${name} is ${value} Pa`, allowed: 'a finite number above 0' });
}

function checkHashin(ST: number, alpha: number): void {
  positive('transverseShearStrength', ST);
  if (alpha >= 0 && alpha <= 1) return;
  fail({ code: 'out-of-range', message: `alpha of the criterion of Hashin is ${alpha}`, allowed: '0 to 1' });
}

function checkPuck(plus: number, minus: number, { Yt, S }: Strengths, name: string | undefined): void {
  if (!(minus >= 0 && Number.isFinite(minus))) {
    fail({ code: 'out-of-range', message: `the inclination \`minus\` is ${minus}`, allowed: 'a finite number from 0' });
  }
  if (plus >= 0 && plus * Yt < S) return;
  fail({
    code: 'out-of-range',
    message: `the inclination \`plus\` is ${plus}, the ply${name === undefined ? '' : ` ${name}`} has S/Yt = ${Number((S / Yt).toPrecision(4))}`,
    allowed: 'from 0 to less than S/Yt: beyond, the curve no longer meets Yt',
  });
}
