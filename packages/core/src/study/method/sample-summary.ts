import { quantile } from '../../numeric/index.js';
import type { Note, SourceKey } from '../../provenance/index.js';
import { demandBetween, demandConfidence, demandFiniteResults, demandWhole } from './check.js';
import type { RangedEstimate } from './estimate.js';
import { normalQuantile } from './normal.js';

/** A statistic of samples and how far it is from that of all that could be drawn. */
export interface WithError {
  readonly value: number;
  readonly standardError: number;
}

/** The value below which a share lies. */
export interface Percentile extends WithError {
  readonly share: number;
  /** Range of the stated confidence, between two of the samples; absent where there are too few samples for one. */
  readonly range?: Omit<RangedEstimate, 'value'>;
}

/** What samples say of a quantity, each number with its own uncertainty. */
export interface SampleSummary {
  readonly count: number;
  readonly mean: WithError;
  /** With n - 1. */
  readonly standardDeviation: WithError;
  readonly least: number;
  readonly most: number;
  readonly percentiles: readonly Percentile[];
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

export interface SummaryOptions {
  /** Rising, above 0 and below 1; 0.05, 0.5, 0.95 when not given. */
  readonly shares?: readonly number[];
  /** Of the percentiles' ranges, 0.5 to 0.9999; 0.95 when not given. */
  readonly confidence?: number;
}

/** Mean, sum of squares and of fourth powers about it. */
interface CentralSums {
  readonly mean: number;
  readonly squares: number;
  readonly fourths: number;
}

/** Sums about the mean, in two passes. */
function centralSums(values: ArrayLike<number>): CentralSums {
  const n = values.length;
  let mean = 0;
  for (let i = 0; i < n; i++) mean += ((values[i] ?? 0) - mean) / (i + 1);
  let squares = 0;
  let fourths = 0;
  for (let i = 0; i < n; i++) {
    const square = ((values[i] ?? 0) - mean) ** 2;
    squares += square;
    fourths += square * square;
  }
  return { mean, squares, fourths };
}

/**
 * Mean and standard deviation of independent samples with their standard errors.
 *
 * s/√n for the mean. For the standard deviation √((m4 - s⁴ (n - 3)/(n - 1))/n)/(2 s), which for a normal distribution is s/√(2 n) at large n and needs no normal
 * distribution.
 */
export function meanAndDeviation(values: ArrayLike<number>): {
  readonly mean: WithError;
  readonly standardDeviation: WithError;
} {
  const n = values.length;
  const { mean, squares, fourths } = centralSums(values);
  const variance = squares / (n - 1);
  const deviation = Math.sqrt(variance);
  const ofVariance = Math.max(0, (fourths / n - (variance * variance * (n - 3)) / (n - 1)) / n);
  return {
    mean: { value: mean, standardError: deviation / Math.sqrt(n) },
    standardDeviation: { value: deviation, standardError: deviation > 0 ? Math.sqrt(ofVariance) / (2 * deviation) : 0 },
  };
}

/**
 * What independent samples say: mean, standard deviation and percentiles, each with its standard error.
 *
 * A percentile's error comes from the samples next to it in order: of n samples n p ± √(n p (1 - p)) lie below it. Half the distance of the
 * samples at these two places is the standard error; z times as far apart stand the ends of its range. No shape of the distribution is supposed.
 *
 * @param values at least 10, finite
 * @throws out-of-range; not-computable for a sample that is not finite
 * @source variance of a sample variance: Cramér 1946; order statistics: David & Nagaraja 2003
 */
export function sampleSummary(values: ArrayLike<number>, options: SummaryOptions = {}): SampleSummary {
  const { shares = [0.05, 0.5, 0.95], confidence = 0.95 } = options;
  demandWhole('the number of samples', values.length, 10, 100_000_000);
  demandConfidence(confidence);
  for (const share of shares) demandBetween('the share of a percentile', share, 1e-9, 1 - 1e-9);
  demandFiniteResults('sample', values);
  const sorted = Float64Array.from(values).sort();
  const z = normalQuantile((1 + confidence) / 2);
  const percentiles = shares.map((share) => percentileOf(sorted, share, z));
  const short = percentiles.filter(({ range }) => range === undefined);
  return {
    count: sorted.length,
    ...meanAndDeviation(values),
    least: sorted[0] ?? 0,
    most: sorted.at(-1) ?? 0,
    percentiles,
    notes: short.map(({ share }) => ({
      level: 'warning',
      text: `${sorted.length} samples are too few for a range of the ${Number((100 * share).toPrecision(6))} % point; its standard error is a rough one.`,
    })),
    sources: ['cramer-1946', 'david-nagaraja-2003'],
  };
}

function percentileOf(sorted: Float64Array, share: number, z: number): Percentile {
  const n = sorted.length;
  const spread = Math.sqrt(n * share * (1 - share));
  // Samples are counted from 1; the range reaches to the next sample outward.
  const lowest = Math.floor(n * share - z * spread);
  const highest = Math.ceil(n * share + z * spread) + 1;
  const near = (places: number): number =>
    quantile(sorted, Math.min(1, Math.max(0, (n * share + places - 0.5) / (n - 1))));
  const found: Percentile = {
    share,
    value: quantile(sorted, share),
    standardError: (near(spread) - near(-spread)) / 2,
  };
  if (lowest < 1 || highest > n) return found;
  return { ...found, range: { low: sorted[lowest - 1] ?? 0, high: sorted[highest - 1] ?? 0 } };
}
