import type { RuleName, StepValues, Working } from '../../working/index.js';
import type { Vector3 } from '../types.js';
import type { Criterion } from './criterion.js';
import { hashinLimits, hillForm, hillStrengths, puckLimits, sided } from './limit-steps.js';
import type { WeakestAxes } from './mat-ratio.js';
import type { ModeKey } from './mode.js';
import { sector } from './ratio-tsai-hill.js';
import { mixed, residual } from './ratio-tsai-wu.js';
import type { StrengthConstants } from './strength-constants.js';

/** Where the steps of one point go, and whether stress of heat and moisture stands beside that of the load. */
export interface ShownPoint {
  readonly working: Working;
  readonly residual: boolean;
}

const vector = (names: readonly [string, string, string], [s1, s2, s12]: Vector3): Record<string, number> => ({
  [names[0]]: s1,
  [names[1]]: s2,
  [names[2]]: s12,
});

/** The stresses of a point by their symbols. */
const stressSymbols = (s: Vector3, r: Vector3, withResidual: boolean): StepValues =>
  withResidual
    ? { ...vector(['sigma_m1', 'sigma_m2', 'tau_m12'], s), ...vector(['sigma_r1', 'sigma_r2', 'tau_r12'], r) }
    : vector(['sigma1', 'sigma2', 'tau12'], s);

/** What a criterion finds at a point. */
interface Found {
  readonly ratio: number | undefined;
  readonly modeKey: ModeKey;
  readonly fractureAngle?: number;
}

/** Takes down, in a part of the criterion, its limits that the load reaches at a point, and the ratio; nothing where it reaches none. */
export function showPointFailure(
  criterion: Criterion,
  s: Vector3,
  r: Vector3,
  c: StrengthConstants,
  found: Found,
  at: ShownPoint,
): void {
  const { ratio: R } = found;
  if (R === undefined) return;
  const shown = { ...at, working: at.working.part(criterion) };
  const stresses = stressSymbols(s, r, shown.residual);
  if (criterion === 'tsaiHill') showTsaiHill(s, r, c, R, stresses, shown);
  else if (criterion === 'tsaiWu') showTsaiWu(s, r, c, R, stresses, shown);
  else if (criterion === 'hashin' || criterion === 'puck') showLimits(criterion, s, r, c, found, stresses, shown);
  else showStraight(criterion, s, r, c, R, stresses, shown);
}

/** The stresses that the criterion holds against the strengths along and across, and their symbols. */
function measured(criterion: 'maxStress' | 'maxStrain', [s1, s2]: Vector3, { nu12, nu21 }: StrengthConstants): Pair {
  return criterion === 'maxStress' ? [s1, s2] : [s1 - nu12 * s2, s2 - nu21 * s1];
}

type Pair = readonly [number, number];

/** Maximum stress or strain: what is used of each strength. */
function showStraight(
  criterion: 'maxStress' | 'maxStrain',
  s: Vector3,
  r: Vector3,
  c: StrengthConstants,
  R: number,
  stresses: StepValues,
  { working, residual: beside }: ShownPoint,
): void {
  const { Xt, Xc, Yt, Yc, S, nu12, nu21 } = c;
  const [m1, m2] = measured(criterion, s, c);
  const [r1, r2] = measured(criterion, r, c);
  const strain = criterion === 'maxStrain';
  const asStrain = strain ? { nu12, nu21, e_m1: m1, e_m2: m2, ...(beside ? { e_r1: r1, e_r2: r2 } : {}) } : {};
  const limits = (x: number, y: number, xy: number) => ({
    X_lim: sided(x, Xt, Xc),
    Y_lim: sided(y, Yt, Yc),
    S_lim: sided(xy, S, S),
  });
  if (R === 0) {
    const { X_lim, Y_lim, S_lim } = limits(r1, r2, r[2]);
    const f_r = Math.max(r1 / X_lim, r2 / Y_lim, r[2] / S_lim);
    working.step(`${criterion}Broken`, { ...stresses, ...asStrain, X_lim, Y_lim, S_lim, f_r, R });
    return;
  }
  const { X_lim, Y_lim, S_lim } = limits(m1, m2, s[2]);
  const shares = { f_1: m1 / (X_lim - r1), f_2: m2 / (Y_lim - r2), f_12: s[2] / (S_lim - r[2]) };
  const rule = beside ? (`${criterion}WithResidual` as const) : criterion;
  working.step(rule, { ...stresses, ...asStrain, X_lim, Y_lim, S_lim, ...shares, R });
}

/** Hashin or Puck: the limit of the fibre, the limit between fibres, and the lesser. */
function showLimits(
  criterion: 'hashin' | 'puck',
  s: Vector3,
  r: Vector3,
  c: StrengthConstants,
  { ratio: R = 0, modeKey, fractureAngle: theta_fp }: Found,
  stresses: StepValues,
  { working, residual: beside }: ShownPoint,
): void {
  if (R === 0) {
    working.step(closings[criterion].broken, { R });
    return;
  }
  const { fibre, other } = criterion === 'hashin' ? hashinLimits(s, r, c) : puckLimits(s, r, c);
  const name = criterion === 'hashin' ? 'R_matrix' : 'R_between';
  const show = (limit: typeof fibre, ratio: string): StepValues => {
    if (limit === undefined) return {};
    const reached = { [ratio]: limit.R };
    const own = working.part(ratio === 'R_fibre' ? 'fibre' : 'matrix');
    own.step(beside ? `${limit.rule}WithResidual` : limit.rule, { ...stresses, ...limit.values, ...reached });
    return reached;
  };
  const ratios = { ...show(fibre, 'R_fibre'), ...show(other, name) };
  const which = other === undefined ? 'fibre' : fibre === undefined ? 'other' : 'both';
  if (fibre !== undefined || other !== undefined) working.step(closings[criterion][which], { ...ratios, R });
  if (modeKey !== 'puckC' || theta_fp === undefined) return;
  working.step(beside ? 'puckCrackWithResidual' : 'puckCrack', { ...stresses, R_A: c.RA, R, theta_fp });
}

/** How the criteria of two limits are closed: by the lesser, by the only one that is reached, broken before the load. */
const closings = {
  hashin: { both: 'hashin', fibre: 'hashinFibreOnly', other: 'hashinMatrixOnly', broken: 'hashinBroken' },
  puck: { both: 'puck', fibre: 'puckFibreOnly', other: 'puckBetweenOnly', broken: 'puckBroken' },
} as const satisfies Record<'hashin' | 'puck', Record<string, RuleName>>;

const signs = [1, -1] as const;

/** The sector of signs in which the ratio is reached, and its one quadratic. */
function showTsaiHill(
  s: Vector3,
  r: Vector3,
  c: StrengthConstants,
  R: number,
  stresses: StepValues,
  { working, residual: beside }: ShownPoint,
): void {
  const at = (sign1: 1 | -1, sign2: 1 | -1): number => sector(sign1, sign2, ...s, ...r, c, Number.POSITIVE_INFINITY);
  const reached = signs
    .flatMap((sign1) => signs.map((sign2) => ({ sign1, sign2, R: at(sign1, sign2) })))
    .reduce((least, one) => (one.R < least.R ? one : least));
  const strengths = hillStrengths(reached.sign1, reached.sign2, c);
  const form = hillForm(strengths);
  const values = { ...stresses, ...strengths };
  const [q_2, q_1, q_0] = [form(s, s), 2 * form(s, r), form(r, r) - 1];
  if (!beside) working.step('tsaiHill', { ...values, q_2, R });
  else if (R === 0) working.step('tsaiHillBroken', { ...values, q_0, R });
  else working.step('tsaiHillWithResidual', { ...values, q_2, q_1, q_0, R });
}

function showTsaiWu(
  s: Vector3,
  r: Vector3,
  c: StrengthConstants,
  R: number,
  stresses: StepValues,
  { working, residual: beside }: ShownPoint,
): void {
  const { F1, F2, F11, F22, F66, F12 } = c;
  const values = { ...stresses, F1, F2, F11, F22, F66, F12 };
  const [s1, s2, s12] = s;
  const q_2 = F11 * s1 * s1 + F22 * s2 * s2 + F66 * s12 * s12 + 2 * F12 * s1 * s2;
  const linear = F1 * s1 + F2 * s2;
  const q_0 = residual(...r, c) - 1;
  if (!beside) working.step('tsaiWu', { ...values, q_2, q_1: linear, R });
  else if (R === 0) working.step('tsaiWuBroken', { ...values, q_0, R });
  else working.step('tsaiWuWithResidual', { ...values, q_2, q_1: linear + mixed(...s, ...r, c), q_0, R });
}

/** Takes down the axes in which a mat fails first, and the criterion there, in a part of the criterion. */
export function showMatPoint(
  criterion: Criterion,
  s: Vector3,
  r: Vector3,
  c: StrengthConstants,
  { ratio, stress, residual: rest, direction }: WeakestAxes,
  shown: ShownPoint,
): void {
  if (!Number.isFinite(ratio)) return;
  if (ratio > 0) {
    const working = shown.working.part(criterion);
    const given = vector(['sigma_a1', 'sigma_a2', 'tau_a12'], s);
    const given0 = shown.residual ? vector(['sigma_b1', 'sigma_b2', 'tau_b12'], r) : {};
    const turned = stressSymbols(stress, rest, shown.residual);
    working.step(shown.residual ? 'matAxesWithResidual' : 'matAxes', {
      ...given,
      ...given0,
      phi_mat: direction,
      ...turned,
    });
  }
  showPointFailure(criterion, stress, rest, c, { ratio, modeKey: 'none' }, shown);
}
