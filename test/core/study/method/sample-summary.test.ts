import { describe, expect, it } from 'vitest';
import { uniformRandom } from '../../../../packages/core/src/numeric/index.js';
import {
  convergence,
  type Distribution,
  limitProbability,
  quantileFunction,
  sampleRows,
  sampleSummary,
  wilson,
} from '../../../../packages/core/src/study/index.js';
import { codesOf, expectNear } from '../../stitch/support.js';

const normal: Distribution = { kind: 'normal', mean: 20, standardDeviation: 3 };
const skew: Distribution = { kind: 'lognormal', median: 5, logDeviation: 0.5 };

/** Standard deviation of a statistic over many independent sets of samples, and the mean of the standard error that each set states. */
function repeated(
  distribution: Distribution,
  n: number,
  of: (values: Float64Array) => { value: number; standardError: number },
) {
  const sets = 400;
  const found = Array.from({ length: sets }, (_, seed) => of(sampleRows([distribution], n, uniformRandom(seed))));
  const mean = found.reduce((sum, { value }) => sum + value / sets, 0);
  const scatter = Math.sqrt(found.reduce((sum, { value }) => sum + (value - mean) ** 2 / (sets - 1), 0));
  return { scatter, stated: found.reduce((sum, { standardError }) => sum + standardError / sets, 0) };
}

describe('a summary of samples', () => {
  it('has the mean, standard deviation and order statistics of a short list', () => {
    // 1 to 11: mean 6, sum of squares 110, of fourth powers 2 (1 + 16 + 81 + 256 + 625) = 1958.
    const found = sampleSummary([11, 2, 3, 9, 5, 6, 7, 8, 4, 10, 1], { shares: [0.5], confidence: 0.9 });
    expect(found.count).toBe(11);
    expectNear(found.mean.value, 6);
    expectNear(found.mean.standardError, 1);
    expectNear(found.standardDeviation.value, Math.sqrt(11));
    // √((1958/11 - 121 · 8/10)/11)/(2 √11)
    expectNear(found.standardDeviation.standardError, Math.sqrt(81.2 / 11) / (2 * Math.sqrt(11)));
    expect([found.least, found.most]).toEqual([1, 11]);
    expect(found.percentiles[0]!.value).toBe(6);
    // √(11/4) = 1.658 places on either side of the middle, and 1.645 times as many: floor(2.77) = 2 and ceil(8.23) + 1 = 10.
    expectNear(found.percentiles[0]!.standardError, Math.sqrt(11) / 2);
    expect(found.percentiles[0]!.range).toEqual({ low: 2, high: 10 });
  });

  it('states standard errors that are the scatter of repeated sets, for a skew distribution too', () => {
    for (const distribution of [normal, skew]) {
      const n = 400;
      const mean = repeated(distribution, n, (values) => sampleSummary(values).mean);
      const deviation = repeated(distribution, n, (values) => sampleSummary(values).standardDeviation);
      const median = repeated(distribution, n, (values) => sampleSummary(values).percentiles[1]!);
      const low = repeated(distribution, n, (values) => sampleSummary(values).percentiles[0]!);
      // The scatter of 400 sets is known to 1/√800 = 3.5 %; of skew ones the standard deviation's to less.
      expect(Math.abs(mean.stated / mean.scatter - 1)).toBeLessThan(0.12);
      expect(Math.abs(deviation.stated / deviation.scatter - 1)).toBeLessThan(0.2);
      expect(Math.abs(median.stated / median.scatter - 1)).toBeLessThan(0.15);
      expect(Math.abs(low.stated / low.scatter - 1)).toBeLessThan(0.2);
    }
  });

  it('holds the true percentile in its range at least as often as stated', () => {
    const wanted = quantileFunction(skew)(0.9);
    let held = 0;
    for (let seed = 1; seed <= 500; seed++) {
      const { range } = sampleSummary(sampleRows([skew], 200, uniformRandom(seed)), { shares: [0.9] }).percentiles[0]!;
      if (range !== undefined && range.low <= wanted && range.high >= wanted) held++;
    }
    // 95 % less three standard deviations of 1 %.
    expect(held / 500).toBeGreaterThan(0.92);
    expect(held / 500).toBeLessThan(0.995);
  });

  it('gives no range where there are too few samples for one, and says so', () => {
    const { percentiles, notes } = sampleSummary(sampleRows([normal], 20, uniformRandom(1)), { shares: [0.05, 0.5] });
    expect(percentiles.map(({ range }) => range === undefined)).toEqual([true, false]);
    expect(notes.map(({ text }) => text)).toEqual([
      '20 samples are too few for a range of the 5 % point; its standard error is a rough one.',
    ]);
    expect(percentiles.every(({ standardError }) => Number.isFinite(standardError) && standardError > 0)).toBe(true);
  });

  it('keeps its digits far from 0 and is quiet where nothing scatters', () => {
    const shifted = Array.from({ length: 10 }, (_, k) => 1e9 + k);
    expectNear(sampleSummary(shifted).standardDeviation.value, Math.sqrt(82.5 / 9));
    const still = sampleSummary(new Float64Array(50).fill(7));
    expect([still.standardDeviation, still.mean]).toEqual([
      { value: 0, standardError: 0 },
      { value: 7, standardError: 0 },
    ]);
  });

  it('is refused for too few samples, shares beyond the ends and numbers that are not finite', () => {
    const values = Array.from({ length: 12 }, (_, k) => k);
    expect(codesOf(() => sampleSummary(values.slice(3)))).toEqual(['out-of-range']);
    expect(codesOf(() => sampleSummary(values, { shares: [0] }))).toEqual(['out-of-range']);
    expect(codesOf(() => sampleSummary(values, { confidence: 0.4 }))).toEqual(['out-of-range']);
    expect(codesOf(() => sampleSummary([...values, Number.NaN]))).toEqual(['not-computable']);
  });
});

describe('the probability of keeping to a limit', () => {
  it('has the range that solves (p - share)² = z² p (1 - p)/n', () => {
    // The definition of Wilson's range, from which its formula follows.
    for (const [successes, trials] of [
      [3, 10],
      [1, 200],
      [10, 10],
      [0, 7],
    ] as const) {
      const { value, low, high } = wilson(successes, trials);
      const z = 1.959963984540054;
      for (const p of [low, high]) {
        expect((p - value) ** 2).toBeCloseTo((z * z * p * (1 - p)) / trials, 12);
      }
      expect(low).toBeLessThanOrEqual(value);
      expect(high).toBeGreaterThanOrEqual(value);
      expect(low < high && low >= 0 && high <= 1).toBe(true);
    }
  });

  it('counts samples at the ends as kept', () => {
    const values = [1, 2, 3, 4];
    expect(limitProbability(values, { atLeast: 2 }).value).toBe(0.75);
    expect(limitProbability(values, { atMost: 2 }).value).toBe(0.5);
    expect(limitProbability(values, { atLeast: 2, atMost: 3 }).value).toBe(0.5);
  });

  it('is that of the distribution, within its range about as often as stated', () => {
    let held = 0;
    const wanted = 0.975;
    const limit = quantileFunction(normal)(wanted);
    for (let seed = 1; seed <= 400; seed++) {
      const { low, high } = limitProbability(sampleRows([normal], 150, uniformRandom(seed)), { atMost: limit });
      if (low <= wanted && high >= wanted) held++;
    }
    expect(Math.abs(held / 400 - 0.95)).toBeLessThan(0.05);
  });

  it('is wider with more confidence and narrower with more samples', () => {
    const width = ({ low, high }: { low: number; high: number }) => high - low;
    expect(width(wilson(30, 100, 0.99))).toBeGreaterThan(width(wilson(30, 100, 0.9)));
    expect(width(wilson(300, 1000))).toBeLessThan(width(wilson(30, 100)));
  });

  it('is refused without an end, without samples and for ends that cross', () => {
    expect(codesOf(() => limitProbability([1], {}))).toEqual(['contradiction']);
    expect(codesOf(() => limitProbability([1], { atLeast: 2, atMost: 1 }))).toEqual(['out-of-range']);
    expect(codesOf(() => limitProbability([1], { atLeast: Number.NaN }))).toEqual(['out-of-range']);
    expect(codesOf(() => limitProbability([], { atLeast: 1 }))).toEqual(['out-of-range']);
    expect(codesOf(() => limitProbability([Number.NaN], { atLeast: 1 }))).toEqual(['not-computable']);
    expect(codesOf(() => wilson(3, 2))).toEqual(['out-of-range']);
    expect(codesOf(() => wilson(1, 2, 2))).toEqual(['out-of-range']);
  });
});

describe('convergence', () => {
  const samples = (n: number, seed = 1) => sampleRows([normal], n, uniformRandom(seed));

  it('is reached where the standard error is below the share of the mean', () => {
    // 3/√n over 20: 1 % at n = 225.
    const few = convergence(samples(150));
    const many = convergence(samples(400));
    expect([few.settled, many.settled]).toEqual([false, true]);
    expect(few.error).toBeGreaterThan(0.01);
    expect(Math.abs(many.error / (3 / 20 / 20) - 1)).toBeLessThan(0.15);
    expect(many.statement).toContain('400 samples are enough');
    expect(few.statement).toContain('150 samples are not enough');
  });

  it('is not reached where the two halves differ', () => {
    const drifting = samples(2000).map((value, i) => value + (i < 1000 ? 0 : 1));
    const found = convergence(drifting);
    expect(found.error).toBeLessThan(0.01);
    // One in about 3 √(2/1000) = 0.134.
    expect(found.halves).toBeGreaterThan(4);
    expect(found.settled).toBe(false);
    const wilder = samples(2000).map((value, i) => (i < 1000 ? value : 20 + 1.5 * (value - 20)));
    expect(convergence(wilder).settled).toBe(false);
  });

  it('bears halves that differ by three standard errors and no more', () => {
    // Halves of 100 that go up and down by 1: their standard deviation is √(100/99), the standard error of the difference √(2/99).
    const apart = (errors: number) =>
      Array.from({ length: 200 }, (_, i) => 100 + (i % 2 === 0 ? 1 : -1) + (i < 100 ? 0 : errors * Math.sqrt(2 / 99)));
    expect(convergence(apart(2.98)).settled).toBe(true);
    expect(convergence(apart(3.02)).settled).toBe(false);
    expectNear(convergence(apart(2.98)).halves, 2.98, 1e-9);
  });

  it('of samples of one distribution seldom finds halves that differ', () => {
    let apart = 0;
    for (let seed = 1; seed <= 200; seed++) if (convergence(samples(200, seed), 0.5).halves > 3) apart++;
    expect(apart).toBeLessThan(6);
  });

  it('can be measured against a size where the mean is about 0, and stays finite there', () => {
    const about0 = samples(400).map((value) => value - 20);
    expect(convergence(about0).settled).toBe(false);
    expect(convergence(about0, 0.01, 20).settled).toBe(true);
    const even = Array.from({ length: 40 }, (_, i) => (i % 2 === 0 ? 1 : -1));
    expect(convergence(even).error).toBe(1e6);
    expect(convergence(even).statement).not.toMatch(/NaN|Infinity/);
    const still = convergence(new Float64Array(40));
    expect([still.settled, still.error, still.halves]).toEqual([true, 0, 0]);
    const stepped = Array.from({ length: 40 }, (_, i) => (i < 20 ? 5 : 5.001));
    expect(convergence(stepped)).toMatchObject({ halves: 1e6, settled: false });
  });

  it('is refused for too few samples and shares that are none', () => {
    const values = samples(40);
    expect(codesOf(() => convergence(values.slice(0, 19)))).toEqual(['out-of-range']);
    expect(codesOf(() => convergence(values, 0))).toEqual(['out-of-range']);
    expect(codesOf(() => convergence(values, 0.01, 0))).toEqual(['out-of-range']);
    expect(codesOf(() => convergence([...values, Number.NaN]))).toEqual(['not-computable']);
  });
});
