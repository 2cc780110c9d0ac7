import { fail } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import type { BridgingFailure, BridgingLaw } from '../bridging-types.js';
import { inMillimetres, requireNotNegative } from '../check.js';
import { areaUnder, peakOf } from './curve.js';

/** A point of a measured curve: m, N. */
export interface MeasuredPoint {
  readonly opening: number;
  readonly force: number;
}

/** What counts as zero force at the end of a measured curve, as a share of the peak. */
const nearZero = 0.05;

/**
 * A measured force-opening curve of one stitch in place of the computed law.
 * @param points from opening 0 on, opening in m never falling (two at one opening are a drop), force in N not negative
 * @param failure what was seen to give way
 * @param options `cutOff`: the test ended while the stitch still held; the work is then that up to the last point
 * @throws out-of-range fewer than two points; values not finite or negative; a first opening other than 0 or an opening that falls;
 * no force anywhere; a last force above 5 % of the peak in a curve that is not said to be cut off
 */
export function measuredBridgingLaw(
  points: readonly MeasuredPoint[],
  failure: BridgingFailure,
  options: { readonly cutOff?: boolean } = {},
): BridgingLaw {
  const bad = (message: string, allowed: string): never => fail({ code: 'out-of-range', message, allowed });
  if (points.length < 2) bad(`${points.length} points of a measured curve`, 'two points or more');
  let last = 0;
  for (const [i, { opening, force }] of points.entries()) {
    requireNotNegative(`opening of point ${i + 1}`, opening, (w) => `${w * 1e3} mm`);
    requireNotNegative(`force of point ${i + 1}`, force, (F) => `${F} N`);
    if (i === 0 && opening !== 0) {
      bad(
        `opening of the first point = ${inMillimetres(opening)}, must be 0`,
        'a curve that starts where the crack is closed',
      );
    }
    if (opening < last) {
      const before = inMillimetres(last);
      bad(
        `opening of point ${i + 1} = ${inMillimetres(opening)} comes after ${before}, must not fall`,
        'rising openings',
      );
    }
    last = opening;
  }
  const curve = { opening: points.map((point) => point.opening), force: points.map((point) => point.force) };
  const peak = peakOf(curve);
  if (!(peak.force > 0 && last > 0))
    bad('measured curve without force or without opening', 'a force above 0 over an opening above 0');
  const end = curve.force.at(-1) ?? 0;
  const holds = end > nearZero * peak.force;
  if (holds && options.cutOff !== true) {
    const percent = Number(((100 * end) / peak.force).toPrecision(3));
    fail({
      code: 'out-of-range',
      message: `force of the last point is ${percent} % of the peak, must be at or near 0`,
      allowed: `at most ${nearZero * 100} % of the peak, or a curve said to be cut off`,
      hint: 'measure until the stitch holds nothing, or say that the curve was cut off',
    });
  }
  const notes: Note[] = [{ level: 'assumption', text: 'law of the stitch as measured, not computed' }];
  if (holds) {
    const text = `the measured curve ends at ${inMillimetres(last)} while the stitch still holds: its work is a lower bound`;
    notes.push({ level: 'warning', text });
  }
  return { ...curve, peak, work: areaUnder(curve), failure, measured: true, notes, sources: [] };
}
