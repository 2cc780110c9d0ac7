import { fail } from '../../problem/index.js';

/** Directions around the full circle, degrees ascending within one turn, and for each the index of the value it takes. */
export interface FullCircle {
  readonly angles: readonly number[];
  readonly source: readonly number[];
}

const largestGap = 5;
const tolerance = 1e-6;

/**
 * Completes angles over a half turn to the full circle by repeating them 180 degrees on.
 *
 * @throws out-of-range when the angles do not ascend, span more than a turn or leave a gap above 5 degrees
 */
export function fullCircle(id: string, angles: readonly number[]): FullCircle {
  const first = angles[0] ?? 0;
  const span = (angles.at(-1) ?? 0) - first;
  const own = angles.map((_, i) => i);
  const half = span <= 180 + tolerance;
  const base = half
    ? own.filter((i) => (angles[i] ?? 0) - first < 180 - tolerance)
    : own.filter((i) => (angles[i] ?? 0) - first < 360 - tolerance);
  const source = half ? [...base, ...base] : base;
  const all = source.map((index, i) => (angles[index] ?? 0) + (half && i >= base.length ? 180 : 0));
  const gaps = all.map((angle, i) => (all[i + 1] ?? (all[0] ?? 0) + 360) - angle);
  const ascending = angles.every((angle, i) => Number.isFinite(angle) && (i === 0 || angle > (angles[i - 1] ?? 0)));
  const widest = Math.max(...gaps);
  if (angles.length === 0 || !ascending || span > 360 + tolerance || !(widest <= largestGap + tolerance)) {
    fail({
      code: 'out-of-range',
      message: `figure \`${id}\`: ${angles.length} angles from ${first}° to ${angles.at(-1) ?? first}° do not cover the circle`,
      allowed: `ascending angles at most ${largestGap}° apart over a half turn or a full one`,
    });
  }
  return { angles: all, source };
}
