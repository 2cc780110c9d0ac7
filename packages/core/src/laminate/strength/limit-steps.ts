import type { StepValues } from '../../working/index.js';
import type { Vector3 } from '../types.js';
import { enter, firstRoot, leave, linearLimit } from './first-root.js';
import type { StrengthConstants } from './strength-constants.js';

/*
 * The limits of a criterion one by one, for the eyes of a reader. The ratio functions, which batches of laminates call for every face, join the same
 * coefficients without a record of them: taking them from here costs a third of their speed. The tests hold the two together.
 */

/** Rules of a limit that also stand with the stress of heat and moisture: `puckA` and `puckAWithResidual`. */
type LimitRule =
  | 'hashinFibreTension'
  | 'hashinFibreCompression'
  | 'hashinMatrixTension'
  | 'hashinMatrixCompression'
  | 'puckFibre'
  | 'puckA'
  | 'puckB'
  | 'puckC';

/** A limit that the load reaches: its rule, the numbers in it and the ratio. */
interface ReachedLimit {
  readonly rule: LimitRule;
  readonly values: StepValues;
  readonly R: number;
}

/** What the stress r + R s reaches of the fibre and of what is between fibres: of each the limit that comes first, if any. */
export type Limits = (
  s: Vector3,
  r: Vector3,
  c: StrengthConstants,
) => { readonly fibre: ReachedLimit | undefined; readonly other: ReachedLimit | undefined };

/** The limit that is reached first. */
const earliest = (limits: readonly (ReachedLimit | undefined)[]): ReachedLimit | undefined =>
  limits
    .filter((one) => one !== undefined)
    .reduce<ReachedLimit | undefined>(
      (least, one) => (least === undefined || one.R < least.R ? one : least),
      undefined,
    );

/** The limit of the fibre alone; none where it is never reached, or passed before the load. */
function straight(rule: LimitRule, [r, m]: Pair, [above, below]: Pair): ReachedLimit | undefined {
  const R = linearLimit(r, m, above, below);
  if (!Number.isFinite(R) || R === 0) return undefined;
  return { rule, values: { X_lim: m > 0 ? above : -below }, R };
}

type Pair = readonly [number, number];

/** A strength on the side that a stress drives to. */
export const sided = (stress: number, above: number, below: number): number => (stress < 0 ? -below : above);

/** A limit p σ² + l σ + q τ² = e of one direct stress and the shear, on an interval of R. */
interface PairLimit {
  readonly rule: LimitRule;
  readonly p: number;
  readonly l: number;
  readonly q: number;
  readonly e: 0 | 1;
  readonly from: number;
  readonly to: number;
  readonly values: StepValues;
}

/** Where two limits meet, the one may begin on the other by rounding. */
const rounding = 1e-9;

/** Its coefficients of R², R and 1, and the ratio; none where it is not reached on its interval, or passed when that begins. */
function paired(
  { rule, p, l, q, e, from, to, values }: PairLimit,
  [s, t]: Pair,
  [r, u]: Pair,
): ReachedLimit | undefined {
  const q_2 = p * s * s + q * t * t;
  const q_1 = 2 * (p * s * r + q * t * u) + l * s;
  const q_0 = p * r * r + q * u * u + l * r - e;
  const R = firstRoot(from, to, q_2, q_1, q_0);
  if (!Number.isFinite(R) || R === 0 || (q_2 * from + q_1) * from + q_0 > rounding) return undefined;
  return { rule, values: { ...values, q_2, q_1, q_0 }, R };
}

export const hashinLimits: Limits = ([s1, s2, s12], [r1, r2, r12], { Xt, Xc, Yt, Yc, S, ST, alpha }) => {
  const q = 1 / (S * S);
  const linear = Yc / (4 * ST * ST) - 1 / Yc;
  const fibre = { p: 1 / (Xt * Xt), l: 0, q: alpha * q, e: 1 } as const;
  const opened = { p: 1 / (Yt * Yt), l: 0, q, e: 1 } as const;
  const pressed = { p: 1 / (4 * ST * ST), l: linear, q, e: 1 } as const;
  const inTension = (r: number, s: number) => ({ from: enter(r, s), to: leave(r, s) });
  const [along, alongRest]: [Pair, Pair] = [
    [s1, s12],
    [r1, r12],
  ];
  const [across, acrossRest]: [Pair, Pair] = [
    [s2, s12],
    [r2, r12],
  ];
  const ofFibre = { ...fibre, ...inTension(r1, s1), values: { Xt, S, alpha_H: alpha } };
  const ofTension = { ...opened, ...inTension(r2, s2), values: { Yt, S } };
  const ofCompression = { ...pressed, ...inTension(-r2, -s2), values: { Yc, S, S_T: ST } };
  return {
    fibre: earliest([
      paired({ ...ofFibre, rule: 'hashinFibreTension' }, along, alongRest),
      straight('hashinFibreCompression', [r1, s1], [Number.POSITIVE_INFINITY, Xc]),
    ]),
    other: earliest([
      paired({ ...ofTension, rule: 'hashinMatrixTension' }, across, acrossRest),
      paired({ ...ofCompression, rule: 'hashinMatrixCompression' }, across, acrossRest),
    ]),
  };
};

export const puckLimits: Limits = ([s1, s2, s12], [r1, r2, r12], c) => {
  const { Xt, Xc, Yt, Yc, S, pPlus: p_plus, pMinus: p_minus, pAcross: p_across, RA } = c;
  const q = 1 / (S * S);
  const shearC = 4 * (1 + p_across) * (1 + p_across) * S * S;
  const modeA = { p: (1 - (2 * p_plus * Yt) / S) / (Yt * Yt), l: (2 * p_plus) / S, q, e: 1 } as const;
  const modeB = { p: 0, l: (2 * p_minus) / S, q, e: 1 } as const;
  const modeC = { p: 1 / (Yc * Yc), l: 1 / Yc, q: 1 / shearC, e: 0 } as const;
  const inA = { from: enter(r2, s2), to: leave(r2, s2) };
  const inB = {
    from: Math.max(enter(-r2, -s2), enter(r2 + RA, s2)),
    to: Math.min(leave(-r2, -s2), leave(r2 + RA, s2)),
  };
  const inC = { from: enter(-r2 - RA, -s2), to: leave(-r2 - RA, -s2) };
  const [s, r]: [Pair, Pair] = [
    [s2, s12],
    [r2, r12],
  ];
  return {
    fibre: straight('puckFibre', [r1, s1], [Xt, Xc]),
    other: earliest([
      paired({ ...modeA, ...inA, rule: 'puckA', values: { Yt, S, p_plus } }, s, r),
      paired({ ...modeB, ...inB, rule: 'puckB', values: { S, p_minus } }, s, r),
      paired({ ...modeC, ...inC, rule: 'puckC', values: { Yc, S, p_across } }, s, r),
    ]),
  };
};

/** The strengths of a sector of signs by Tsai-Hill. */
export function hillStrengths(
  sign1: 1 | -1,
  sign2: 1 | -1,
  c: StrengthConstants,
): { readonly X_hill: number; readonly Y_hill: number; readonly X_cross: number; readonly S: number } {
  const along = (sign: 1 | -1): number => (sign > 0 ? c.Xt : c.hillXc);
  const Y_hill = sign2 > 0 ? c.Yt : c.hillYc;
  return { X_hill: along(sign1), Y_hill, X_cross: along(c.hillCrossBySigma2 === 1 ? sign2 : sign1), S: c.S };
}

/** The criterion's left side as a product of two stresses: that of one stress with itself. */
export const hillForm =
  ({ X_hill, Y_hill, X_cross, S }: ReturnType<typeof hillStrengths>) =>
  ([x1, x2, x12]: Vector3, [y1, y2, y12]: Vector3): number =>
    (x1 * y1) / X_hill ** 2 - (x1 * y2 + x2 * y1) / (2 * X_cross ** 2) + (x2 * y2) / Y_hill ** 2 + (x12 * y12) / S ** 2;
