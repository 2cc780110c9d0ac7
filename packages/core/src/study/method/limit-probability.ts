import { fail } from '../../problem/index.js';
import { demandConfidence, demandFiniteResults, demandWhole } from './check.js';
import type { RangedEstimate } from './estimate.js';
import { normalQuantile } from './normal.js';

/** What a result is to keep to, ends included; at least one of them. */
export interface Limit {
  readonly atLeast?: number;
  readonly atMost?: number;
}

/**
 * The probability that a result keeps to a limit: the share of independent samples that do, with Wilson's range.
 *
 * @param values at least 1, finite
 * @param confidence 0.5 to 0.9999; 0.95 when not given
 * @returns shares from 0 to 1
 * @throws out-of-range; contradiction for a limit without ends; not-computable for a sample that is not finite
 * @source Wilson 1927, wilson-1927
 */
export function limitProbability(values: ArrayLike<number>, limit: Limit, confidence = 0.95): RangedEstimate {
  const { atLeast, atMost } = limit;
  if (atLeast === undefined && atMost === undefined) {
    fail({ code: 'contradiction', message: 'a limit without ends', allowed: 'atLeast, atMost or both' });
  }
  const [low, high] = [atLeast ?? Number.NEGATIVE_INFINITY, atMost ?? Number.POSITIVE_INFINITY];
  if (!(low <= high)) {
    fail({
      code: 'out-of-range',
      message: `a limit from ${low} to ${high}`,
      allowed: 'numbers, the lower end not above the upper',
    });
  }
  demandFiniteResults('sample', values);
  let kept = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? 0;
    if (value >= low && value <= high) kept++;
  }
  return wilson(kept, values.length, confidence);
}

/**
 * The share of successes with Wilson's range: (p + z²/2n ± z √(p (1 - p)/n + z²/4n²))/(1 + z²/n). It never leaves 0 to 1, and has a width where all
 * or none succeed.
 *
 * @param successes whole, 0 to trials
 * @param trials whole, 1 or more
 * @throws out-of-range
 * @source Wilson 1927
 */
export function wilson(successes: number, trials: number, confidence = 0.95): RangedEstimate {
  demandWhole('the number of samples', trials, 1, Number.MAX_SAFE_INTEGER);
  demandWhole('the number that keep to the limit', successes, 0, trials);
  demandConfidence(confidence);
  const z = normalQuantile((1 + confidence) / 2);
  const value = successes / trials;
  const middle = value + (z * z) / (2 * trials);
  const half = z * Math.sqrt((value * (1 - value)) / trials + (z * z) / (4 * trials * trials));
  const whole = 1 + (z * z) / trials;
  // At the ends the formula gives 0 and 1 but for rounding.
  return {
    value,
    low: successes === 0 ? 0 : (middle - half) / whole,
    high: successes === trials ? 1 : (middle + half) / whole,
  };
}
