import type { BridgingFailure, Interval } from '../../src/stitch/index.js';
import type { Bends } from './coupons.js';
import type { DataSet } from './inputs.js';

/** A number to some digits, without exponent. */
export const digits = (value: number, places = 2): string => String(Number(value.toPrecision(places)));

export const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** A range, or one number where both ends show alike. */
export function range(low: number, high: number, places = 2): string {
  const [from, to] = [digits(low, places), digits(high, places)];
  return from === to ? from : `${from} to ${to}`;
}

export const inMm = (low: number, high: number): string => `${range(1e3 * low, 1e3 * high)} mm`;

/** A median with its range of nine in ten. */
export const withRange = ({ median, low, high }: Interval): string => `${digits(median)} (${range(low, high)})`;

export const lawNames: Readonly<Record<Bends, string>> = {
  rigid: 'rigid bends',
  yielding: 'bends that give way',
};

export const siteNames: Readonly<Record<BridgingFailure, string>> = {
  threadAtCrack: 'thread in the plane of the crack',
  threadAtAnchor: 'thread at its lock or bend',
  threadPullOut: 'pulled out',
};

export const useNames: Readonly<Record<DataSet['use'], string>> = {
  validate: 'gate',
  context: 'context',
  doNotGate: 'context, never a gate',
};

/** "low by 1.6" or "high by 1.2", as factors. */
export function byFactor(mean: number): string {
  const factor = digits(Math.max(mean, 1 / mean));
  if (factor === '1') return 'right on average';
  return mean < 1 ? `low by a factor of ${factor}` : `high by a factor of ${factor}`;
}

/** Displacement over crack length to which linear beams hold (common practice, no source), as the specimens of the library warn. */
export const straightBend = 0.4;

/**
 * By how much the loads of a double cantilever that opens to a share of its crack length read too high by linear beams: 1/(1 - 0.3 (D/a)^2), the
 * large-displacement factor of ISO 15024 (recalled). Undefined where it comes to more than 2, which the formula is not made for.
 */
export function overstatement(bend: number): number | undefined {
  const factor = 1 - 0.3 * bend ** 2;
  return factor < 0.5 ? undefined : 1 / factor;
}

export function overstated(bend: number): string {
  const factor = overstatement(bend);
  return factor === undefined ? 'more than 2' : factor.toFixed(2);
}
