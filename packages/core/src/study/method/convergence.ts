import { demandBetween, demandFiniteResults, demandWhole } from './check.js';
import { meanAndDeviation } from './sample-summary.js';

/** Whether samples are enough. */
export interface Convergence {
  readonly settled: boolean;
  /** Standard error of the mean and of the standard deviation, the larger of the two, as a share of the mean's size, 1e6 at most. */
  readonly error: number;
  /** By how many standard errors the means, or the standard deviations, of the two halves differ, whichever is more, 1e6 at most. */
  readonly halves: number;
  /** For a reader. */
  readonly statement: string;
}

/** The halves of samples of one distribution differ by more than this in 0.5 % of all cases (two comparisons). */
const mostApart = 3;

/** Quotients are cut off here, so that a mean of 0 does not make them infinite. */
const most = 1e6;

/**
 * Whether samples, in the order in which they were drawn, are enough: the standard errors of mean and standard deviation are below a share of the
 * mean, and the first half agrees with the second.
 *
 * @param values at least 20, finite, independent
 * @param share of the mean, above 0, up to 1; 0.01 when not given
 * @param size what the share is of where the mean is no measure, above 0; the mean's size when not given
 * @throws out-of-range; not-computable for a sample that is not finite
 */
export function convergence(values: ArrayLike<number>, share = 0.01, size?: number): Convergence {
  demandWhole('the number of samples', values.length, 20, 100_000_000);
  demandBetween('share', share, 1e-9, 1);
  if (size !== undefined) demandBetween('size', size, Number.MIN_VALUE, Number.MAX_VALUE);
  demandFiniteResults('sample', values);
  const { mean, standardDeviation } = meanAndDeviation(values);
  const scale = size ?? Math.abs(mean.value);
  const worst = Math.max(mean.standardError, standardDeviation.standardError);
  // Samples that do not scatter are settled even about a mean of 0; others about 0 never are.
  const error = worst === 0 ? 0 : Math.min(worst / scale, most);

  const all = Array.from(values);
  const half = Math.floor(all.length / 2);
  const [first, second] = [meanAndDeviation(all.slice(0, half)), meanAndDeviation(all.slice(half))];
  const halves = Math.max(apart(first.mean, second.mean), apart(first.standardDeviation, second.standardDeviation));
  const settled = error <= share && halves <= mostApart;
  const percent = (part: number): string => `${Number((100 * part).toPrecision(2))} %`;
  const measure = size === undefined ? 'of the mean' : `of ${size}`;
  return {
    settled,
    error,
    halves,
    statement: `${all.length} samples ${settled ? 'are enough' : 'are not enough'}: the standard error is ${percent(error)} ${measure} (wanted: at most ${percent(share)}), the two halves differ by ${halves.toPrecision(2)} standard errors (wanted: at most ${mostApart}).`,
  };
}

interface Statistic {
  readonly value: number;
  readonly standardError: number;
}

/** Difference in standard errors of the difference; 0 for equals, even where neither scatters. */
function apart(a: Statistic, b: Statistic): number {
  const difference = Math.abs(a.value - b.value);
  const error = Math.hypot(a.standardError, b.standardError);
  return difference === 0 ? 0 : Math.min(difference / error, most);
}
