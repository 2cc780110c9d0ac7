import { cosDegrees, sinDegrees } from '../numeric/index.js';
import { checkPattern } from './check-pattern.js';
import { asRatio, commonMultiple } from './ratio.js';
import type { CrossingPattern } from './types.js';

/** How the holes of two crossing sets lie to each other. */
export interface Meetings {
  /** True when the common pattern of both sets repeats. */
  readonly repeats: boolean;
  /** Holes that belong to both sets, per area, 1/m^2. */
  readonly sharedDensity: number;
  /** Smallest distance between two distinct holes of different sets, m; when the pattern does not repeat, among the holes searched. */
  readonly closest: number;
}

/** Longest repeat looked for, in rows or pitches of the second set. */
const longestRepeat = 200;

/**
 * Where two crossing sets of holes meet.
 *
 * The second set's holes, in coordinates of the first set's pitch and row spacing, are M k + c with k whole,
 * M = diag(p1, s1)^-1 R(angle) diag(p2, s2) and c the offset. A hole is shared when M k + c is whole. If all of M is rational with least common
 * denominator q, M k + c repeats (less whole numbers) with period q in both directions of k, so shared density = N2 x matches / q^2 over one
 * period, exactly. A larger q than 200, or an irrational M, is taken as not repeating: at most one hole in q of the second set can then be shared.
 * @throws out-of-range see {@link checkPattern}
 */
export function meetings(pattern: CrossingPattern): Meetings {
  checkPattern(pattern);
  const { pitch: p1, rowSpacing: s1 } = pattern;
  const { pitch: p2, rowSpacing: s2 } = pattern.second;
  const cos = cosDegrees(pattern.angle ?? 90);
  const sin = sinDegrees(pattern.angle ?? 90);
  const M = [(cos * p2) / p1, (-sin * s2) / p1, (sin * p2) / s1, (cos * s2) / s1] as const;
  const [m11, m12, m21, m22] = M;
  const c = [(pattern.offset?.x ?? 0) / p1, (pattern.offset?.y ?? 0) / s1] as const;
  const period = commonDenominator(M);
  const steps = period ?? longestRepeat;
  const sameHole = 1e-6 * Math.min(p1, s1, p2, s2);
  let matches = 0;
  let closest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < steps; i++) {
    for (let j = 0; j < steps; j++) {
      const x = m11 * i + m12 * j + c[0];
      const y = m21 * i + m22 * j + c[1];
      // The cell of the first set is a rectangle, so the nearest of its holes is the rounded one.
      const distance = Math.hypot((x - Math.round(x)) * p1, (y - Math.round(y)) * s1);
      if (distance <= sameHole) matches++;
      else closest = Math.min(closest, distance);
    }
  }
  // Where a hole is shared, the neighbours of either set are distinct holes of the other as well.
  if (matches > 0) closest = Math.min(closest, p1, s1, p2, s2);
  const sharedDensity = period === undefined ? 0 : matches / (period * period * p2 * s2);
  return { repeats: period !== undefined, sharedDensity, closest };
}

function commonDenominator(values: readonly number[]): number | undefined {
  let q = 1;
  for (const value of values) {
    const ratio = asRatio(value, longestRepeat);
    if (ratio === undefined) return undefined;
    q = commonMultiple(q, ratio.denominator);
    if (q > longestRepeat) return undefined;
  }
  return q;
}
