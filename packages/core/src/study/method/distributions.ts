import { fail } from '../../problem/index.js';
import { normalBelow, normalQuantile } from './normal.js';

/** Ends of what a distribution may give; absent where it has none. */
export interface Cut {
  readonly low?: number;
  readonly high?: number;
}

/** Bell-shaped; with ends, what lies beyond them is left out and the rest made up to 1. */
export interface Normal extends Cut {
  readonly kind: 'normal';
  /** Before ends are cut, as the standard deviation. */
  readonly mean: number;
  readonly standardDeviation: number;
}

/** A number above 0 whose logarithm is normal; with ends as there. */
export interface Lognormal extends Cut {
  readonly kind: 'lognormal';
  /** Before ends are cut. */
  readonly median: number;
  /** Standard deviation of the natural logarithm. */
  readonly logDeviation: number;
}

/** All values between the ends equally likely. */
export interface Uniform {
  readonly kind: 'uniform';
  readonly low: number;
  readonly high: number;
}

/** Likelihood rises straight from the low end to the likeliest value and falls straight to the high end. */
export interface Triangular {
  readonly kind: 'triangular';
  readonly low: number;
  readonly likeliest: number;
  readonly high: number;
}

/** How a number that is not exactly known is spread; its unit is the caller's. */
export type Distribution = Normal | Lognormal | Uniform | Triangular;

/** Least share of a normal or lognormal distribution that ends may leave. */
const leastLeft = 0.01;

/**
 * Refuses a distribution that cannot be.
 *
 * Ends that leave less than 1 % of a normal or lognormal distribution are refused: its mean is then no longer what the ends allow.
 *
 * @throws out-of-range
 */
export function demandDistribution(distribution: Distribution): void {
  const { kind, ...numbers } = distribution;
  for (const [name, value] of Object.entries(numbers)) {
    if (!Number.isFinite(value)) refuse(`${name} of a ${kind} distribution is ${value}`, 'a finite number');
  }
  if (kind === 'uniform' || kind === 'triangular') {
    const { low, high } = distribution;
    if (!(low < high)) refuse(`a ${kind} distribution from ${low} to ${high}`, 'a low end below the high end');
    if (kind === 'triangular' && !(distribution.likeliest >= low && distribution.likeliest <= high)) {
      refuse(`the likeliest value ${distribution.likeliest} of a triangular distribution`, `${low} to ${high}`);
    }
    return;
  }
  if (kind === 'lognormal' && !(distribution.median > 0)) {
    refuse(`the median of a lognormal distribution is ${distribution.median}`, 'above 0');
  }
  const deviation = kind === 'normal' ? distribution.standardDeviation : distribution.logDeviation;
  if (!(deviation > 0)) refuse(`the standard deviation of a ${kind} distribution is ${deviation}`, 'above 0');
  const [below, upTo] = sharesAtEnds(distribution);
  if (!(upTo - below >= leastLeft)) {
    refuse(
      `the ends leave ${(100 * Math.max(0, upTo - below)).toPrecision(2)} % of a ${kind} distribution`,
      `at least ${100 * leastLeft} %`,
    );
  }
}

const refuse = (message: string, allowed: string): never => fail({ code: 'out-of-range', message, allowed });

/** The ends as multiples of the standard deviation (of the logarithm) from the mean (its median), infinite where there is none. */
export function endsOf(distribution: Normal | Lognormal): readonly [number, number] {
  const { low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY } = distribution;
  const z = (end: number): number =>
    distribution.kind === 'normal'
      ? (end - distribution.mean) / distribution.standardDeviation
      : Math.log(Math.max(0, end) / distribution.median) / distribution.logDeviation;
  return [z(low), z(high)];
}

/** Share of the whole distribution below the low end and below the high end. */
function sharesAtEnds(distribution: Normal | Lognormal): readonly [number, number] {
  const [a, b] = endsOf(distribution);
  return [normalBelow(a), normalBelow(b)];
}

/**
 * Something that gives the value below which a share of a distribution lies.
 *
 * A number spread evenly over 0 to 1 becomes a sample of the distribution: one number per sample, so that designs of samples (Saltelli's,
 * Latin hypercubes) can be made in the unit cube.
 *
 * @returns a function of a share above 0 and below 1; never beyond the ends
 * @throws out-of-range
 */
export function quantileFunction(distribution: Distribution): (share: number) => number {
  demandDistribution(distribution);
  const { kind } = distribution;
  if (kind === 'uniform') {
    const { low, high } = distribution;
    return (share) => low + share * (high - low);
  }
  if (kind === 'triangular') {
    const { low, likeliest, high } = distribution;
    const width = high - low;
    return (share) =>
      share * width < likeliest - low
        ? low + Math.sqrt(share * width * (likeliest - low))
        : high - Math.sqrt((1 - share) * width * (high - likeliest));
  }
  const { low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY } = distribution;
  const [below, upTo] = sharesAtEnds(distribution);
  return (share) => {
    const z = normalQuantile(below + share * (upTo - below));
    const value =
      kind === 'normal'
        ? distribution.mean + distribution.standardDeviation * z
        : distribution.median * Math.exp(distribution.logDeviation * z);
    return Math.min(high, Math.max(low, value));
  };
}

/** 95 % point of the standard normal distribution. */
const z95 = normalQuantile(0.95);

/**
 * The distribution that a prior of the stitch models describes: lognormal with nine of ten samples between low and high and the value as median, or
 * triangular with the value as the likeliest.
 */
export function distributionOfPrior(prior: {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly distribution: 'lognormal' | 'triangular';
}): Lognormal | Triangular {
  const { value, low, high } = prior;
  return prior.distribution === 'lognormal'
    ? { kind: 'lognormal', median: value, logDeviation: Math.log(high / low) / (2 * z95) }
    : { kind: 'triangular', low, likeliest: value, high };
}

/**
 * The lognormal distribution with a mean and a standard deviation: σ² = ln(1 + (s/m)²), median m e^(-σ²/2).
 * @param mean above 0
 * @param standardDeviation above 0
 * @throws out-of-range
 */
export function lognormalOf(mean: number, standardDeviation: number): Lognormal {
  if (!(mean > 0)) refuse(`the mean of a lognormal distribution is ${mean}`, 'above 0');
  const variance = Math.log1p((standardDeviation / mean) ** 2);
  const found: Lognormal = {
    kind: 'lognormal',
    median: mean * Math.exp(-variance / 2),
    logDeviation: Math.sqrt(variance),
  };
  demandDistribution(found);
  return found;
}
