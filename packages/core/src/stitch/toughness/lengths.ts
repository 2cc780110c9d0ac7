import type { BridgingLaw } from '../bridging-types.js';
import { testOverSteady, zonePriors } from '../priors.js';

/** One arm beside the crack, per width. SI units. */
export interface ToughnessArm {
  /** N m: 1/d11 of a narrow arm; of a wide one the xx entry of D - B A^-1 B of the components x and xy. */
  readonly bendingStiffness: number;
  /** m */
  readonly thickness: number;
  /** Surface strain at which the arm breaks, positive numbers. */
  readonly failureStrain?: { readonly tension: number; readonly compression: number };
}

/** Stiffness of two like arms that open as much as these two: 2/(1/D_1 + 1/D_2), N m. */
export function pairStiffness(arm: ToughnessArm, other: ToughnessArm): number {
  return 2 / (1 / arm.bendingStiffness + 1 / other.bendingStiffness);
}

/**
 * Bridging length scale l = (2 D/beta)^(1/4), m; (E h^3/(6 beta))^(1/4) of a homogeneous arm. beta = N F_p/w_p, the stitches smeared to springs
 * by their secant to the peak.
 */
export function bridgingLength(
  stiffness: number,
  penetrationDensity: number,
  { peak }: Pick<BridgingLaw, 'peak'>,
): number {
  return ((2 * stiffness * peak.opening) / (penetrationDensity * peak.force)) ** 0.25;
}

/** Lengths of crack, m. */
export interface BridgingZone {
  /** Developed zone by the beam on rows, 1.4 to 3.4 bridging lengths. */
  readonly low: number;
  readonly high: number;
  /** Growth below which no steady value is given: the longest zone, for a computed law times what printed zones are longer than computed ones. */
  readonly needed: number;
}

/** The zone that a bridging length leads to. */
export function bridgingZone(length: number, measured: boolean): BridgingZone {
  const { zoneOverLength, zoneShortfall } = zonePriors;
  const high = zoneOverLength.high * length;
  return { low: zoneOverLength.low * length, high, needed: measured ? high : zoneShortfall.high * high };
}

/** What rows at a distance do to a test with aligned rows. */
export interface Discreteness {
  /** Row distance over bridging length. */
  readonly ratio: number;
  /** Toughness from onset loads over steady toughness: the widest of all computed cases, and the form of the independent script's five; absent beyond the computed cases. */
  readonly testFactor?: { readonly low: number; readonly fit: number; readonly high: number };
}

/** Least and greatest over some cases at a row distance of r bridging lengths. */
interface FactorRow {
  readonly r: number;
  readonly low: number;
  readonly high: number;
}

/** The own cases of the table, as one range for each ratio. */
const ownRows: readonly FactorRow[] = testOverSteady.own.ratios.map((r, i) => {
  const read = testOverSteady.own.cases.flatMap(({ byLoad }) => byLoad[i] ?? []);
  return { r, low: Math.min(...read), high: Math.max(...read) };
});

/** What computed cases read at a ratio, and the cases on either side of it. */
interface Beside {
  readonly low: number;
  readonly high: number;
  readonly from: FactorRow;
  readonly to: FactorRow;
}

/** Straight lines between rows, from 1 at ratio 0; undefined beyond them. */
function between(rows: readonly FactorRow[], ratio: number): Beside | undefined {
  const all = [{ r: 0, low: 1, high: 1 }, ...rows];
  const next = all.findIndex(({ r }) => r >= ratio);
  const [a, b] = [all[Math.max(0, next - 1)], all[next]];
  if (a === undefined || b === undefined) return undefined;
  const t = b.r > a.r ? (ratio - a.r) / (b.r - a.r) : 0;
  return { low: a.low + t * (b.low - a.low), high: a.high + t * (b.high - a.high), from: a, to: b };
}

/** What the cases of the independent script and the own ones read at a ratio. */
export const casesBeside = (ratio: number): readonly [script: Beside | undefined, own: Beside | undefined] => [
  between(testOverSteady.rows, ratio),
  between(ownRows, ratio),
];

/** Discreteness of rows met at a distance: the widest of the five cases of the independent script and the own ones. */
export function discreteness(rowDistance: number, length: number): Discreteness {
  const ratio = rowDistance / length;
  const [script, own] = casesBeside(ratio);
  if (script === undefined || own === undefined) return { ratio };
  const { factor, exponent } = testOverSteady.fit;
  return {
    ratio,
    testFactor: {
      low: Math.min(script.low, own.low),
      fit: 1 + factor * ratio ** exponent,
      high: Math.max(script.high, own.high),
    },
  };
}

/**
 * Toughness in opening at which an arm breaks at the tip, J/m^2: the moment M at which the weaker arm's surface reaches its
 * strain, M = 2 D eps/h, in G = M^2 (1/D_1 + 1/D_2)/2. Like arms: 4 D eps^2/h^2; homogeneous: E h eps^2/3. Absent without failure strains.
 * No bound on readings: with rows behind the tip the sharpest bend is at the hindmost row that holds, at s from the load, and a straight arm that
 * breaks there reads ((a + chi)/s)^2 times as much, often some 5 to 10 % more.
 * Surfaces half the thickness from the neutral plane; the smaller of the strains counts, since one surface is stretched and the other pressed.
 */
export function armCeiling(arm: ToughnessArm, other: ToughnessArm): number | undefined {
  const moments = [arm, other].map(armMoment);
  const known = moments.filter((moment) => moment !== undefined);
  if (known.length === 0) return undefined;
  return Math.min(...known) ** 2 / pairStiffness(arm, other);
}

/** Moment per width at which an arm's surface reaches its strain, N: 2 D eps/h; absent without failure strains. */
export function armMoment({ bendingStiffness, thickness, failureStrain }: ToughnessArm): number | undefined {
  if (failureStrain === undefined) return undefined;
  return (2 * bendingStiffness * Math.min(failureStrain.tension, failureStrain.compression)) / thickness;
}
