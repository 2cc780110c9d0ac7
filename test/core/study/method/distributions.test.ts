import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { uniformRandom } from '../../../../packages/core/src/numeric/index.js';
import { samplePrior } from '../../../../packages/core/src/stitch/sample-prior.js';
import {
  type Distribution,
  demandDistribution,
  distributionOfPrior,
  latinHypercube,
  lognormalOf,
  momentsOf,
  quantileFunction,
  sampleRows,
} from '../../../../packages/core/src/study/index.js';
import { codesOf, expectNear } from '../../stitch/support.js';

const examples: readonly Distribution[] = [
  { kind: 'uniform', low: -2, high: 5 },
  { kind: 'triangular', low: 1, likeliest: 1.5, high: 4 },
  { kind: 'triangular', low: 1, likeliest: 1, high: 4 },
  { kind: 'normal', mean: 10, standardDeviation: 2 },
  { kind: 'normal', mean: 10, standardDeviation: 2, low: 9 },
  { kind: 'normal', mean: 10, standardDeviation: 2, low: 8.5, high: 16 },
  { kind: 'lognormal', median: 3, logDeviation: 0.4 },
  { kind: 'lognormal', median: 3, logDeviation: 0.4, high: 3.5 },
  { kind: 'lognormal', median: 3, logDeviation: 0.4, low: 2, high: 6 },
];

/** Mean and standard deviation by the tanh-sinh rule over the shares, which bears the infinite ends. */
function momentsByShares(distribution: Distribution) {
  const quantile = quantileFunction(distribution);
  const sum = (f: (x: number) => number): number => {
    let total = 0;
    const h = 1 / 64;
    for (let k = -230; k <= 230; k++) {
      const t = k * h;
      const inner = (Math.PI / 2) * Math.sinh(t);
      const weight = ((Math.PI / 4) * Math.cosh(t)) / Math.cosh(inner) ** 2;
      const share = 1 / (1 + Math.exp(-2 * inner));
      if (share > 0 && share < 1) total += weight * h * f(quantile(share));
    }
    return total;
  };
  const mean = sum((x) => x);
  return { mean, standardDeviation: Math.sqrt(sum((x) => (x - mean) ** 2)) };
}

describe('distributions', () => {
  it('have the mean and standard deviation of their values over all shares', () => {
    for (const distribution of examples) {
      const found = momentsOf(distribution);
      const wanted = momentsByShares(distribution);
      expectNear(found.mean, wanted.mean, 1e-8);
      expectNear(found.standardDeviation, wanted.standardDeviation, 1e-7);
    }
  });

  it('keep the digits of a narrow triangle or range far from 0', () => {
    expectNear(
      momentsOf({ kind: 'triangular', low: 1e9, likeliest: 1e9 + 3, high: 1e9 + 3 }).standardDeviation,
      3 / Math.sqrt(18),
    );
    expectNear(momentsOf({ kind: 'uniform', low: 1e9, high: 1e9 + 3 }).standardDeviation, 3 / Math.sqrt(12));
  });

  it('give samples with that mean within four standard errors, and none beyond the ends', () => {
    const n = 20_000;
    for (const distribution of examples) {
      const { mean, standardDeviation } = momentsOf(distribution);
      const samples = sampleRows([distribution], n, uniformRandom(3));
      const found = samples.reduce((sum, x) => sum + x / n, 0);
      expect(Math.abs(found - mean)).toBeLessThan((4 * standardDeviation) / Math.sqrt(n));
      const { low = -Infinity, high = Infinity } = distribution;
      expect(samples.every((x) => x >= low && x <= high)).toBe(true);
    }
  });

  it('rise with the share', () => {
    for (const distribution of examples) {
      const quantile = quantileFunction(distribution);
      fc.assert(
        fc.property(
          fc.double({ min: 1e-9, max: 0.999, noNaN: true }),
          fc.double({ min: 1e-9, max: 1e-3, noNaN: true }),
          (share, more) => {
            expect(quantile(share + more * (1 - share))).toBeGreaterThanOrEqual(quantile(share));
          },
        ),
      );
    }
  });

  it('are those of the priors of stitching: nine of ten between low and high, or the same triangle', () => {
    const lognormal = distributionOfPrior({ value: 3, low: 2, high: 4.5, distribution: 'lognormal' });
    const quantile = quantileFunction(lognormal);
    expectNear(quantile(0.5), 3);
    // 4.5/3 = 3/2, so that the range stands evenly about the median.
    expectNear(quantile(0.05), 2);
    expectNear(quantile(0.95), 4.5);

    const prior = { value: 1.5, low: 1, high: 4, distribution: 'triangular' } as const;
    const triangle = quantileFunction(distributionOfPrior(prior));
    for (const share of [0.01, 0.1, 0.4, 0.99])
      expectNear(
        triangle(share),
        samplePrior(prior, () => share),
        1e-15,
      );
  });

  it('follow from a mean and a standard deviation where lognormal', () => {
    const found = momentsOf(lognormalOf(8, 3));
    expectNear(found.mean, 8);
    expectNear(found.standardDeviation, 3);
  });

  it('are refused where they cannot be', () => {
    const wrong: readonly Distribution[] = [
      { kind: 'uniform', low: 2, high: 2 },
      { kind: 'uniform', low: Number.NaN, high: 2 },
      { kind: 'triangular', low: 1, likeliest: 0.9, high: 4 },
      { kind: 'triangular', low: 1, likeliest: 4.1, high: 4 },
      { kind: 'normal', mean: Number.POSITIVE_INFINITY, standardDeviation: 1 },
      { kind: 'normal', mean: 0, standardDeviation: 0 },
      { kind: 'normal', mean: 0, standardDeviation: 1, low: 1, high: -1 },
      { kind: 'normal', mean: 0, standardDeviation: 1, low: 2.4 },
      { kind: 'lognormal', median: 0, logDeviation: 1 },
      { kind: 'lognormal', median: 1, logDeviation: -1 },
      { kind: 'lognormal', median: 1, logDeviation: 1, high: -3 },
    ];
    for (const distribution of wrong) {
      expect(codesOf(() => demandDistribution(distribution))).toEqual(['out-of-range']);
      expect(codesOf(() => momentsOf(distribution))).toEqual(['out-of-range']);
      expect(codesOf(() => quantileFunction(distribution))).toEqual(['out-of-range']);
    }
    // At least 1 % must be left above the end.
    const above = (share: number): Distribution => ({
      kind: 'normal',
      mean: 0,
      standardDeviation: 1,
      low: quantileFunction({ kind: 'normal', mean: 0, standardDeviation: 1 })(1 - share),
    });
    expect(() => demandDistribution(above(0.01005))).not.toThrow();
    expect(codesOf(() => demandDistribution(above(0.00995)))).toEqual(['out-of-range']);
    expect(codesOf(() => lognormalOf(-1, 1))).toEqual(['out-of-range']);
    expect(codesOf(() => lognormalOf(1, 0))).toEqual(['out-of-range']);
  });
});

describe('rows of samples', () => {
  const inputs: readonly Distribution[] = [
    { kind: 'uniform', low: 0, high: 1 },
    { kind: 'normal', mean: 0, standardDeviation: 1 },
  ];

  it('are the same bits from the same seed', () => {
    for (const rows of [sampleRows, latinHypercube]) {
      expect(rows(inputs, 50, uniformRandom(4))).toEqual(rows(inputs, 50, uniformRandom(4)));
      expect(rows(inputs, 50, uniformRandom(4))).not.toEqual(rows(inputs, 50, uniformRandom(5)));
    }
  });

  it('of a Latin hypercube have one sample in each of the equally likely ranges of each input', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer(), (n, seed) => {
        const uniform: Distribution = { kind: 'uniform', low: 0, high: n };
        const rows = latinHypercube([uniform, uniform], n, uniformRandom(seed));
        for (const column of [0, 1]) {
          const ranges = Array.from({ length: n }, (_, row) => Math.floor(rows[2 * row + column]!));
          expect(ranges.sort((a, b) => a - b)).toEqual(Array.from({ length: n }, (_, k) => k));
        }
      }),
    );
  });

  it('of a Latin hypercube come in all orders equally often', () => {
    // Three ranges have six orders; 6000 draws give 1000 each, ± four standard deviations of 29.
    const random = uniformRandom(2);
    const seen = new Map<string, number>();
    for (let k = 0; k < 6000; k++) {
      const order = [...latinHypercube([{ kind: 'uniform', low: 0, high: 3 }], 3, random)].map(Math.floor).join();
      seen.set(order, (seen.get(order) ?? 0) + 1);
    }
    expect(seen.size).toBe(6);
    for (const times of seen.values()) expect(Math.abs(times - 1000)).toBeLessThan(116);
  });

  it('are refused without inputs or samples', () => {
    for (const rows of [sampleRows, latinHypercube]) {
      expect(codesOf(() => rows([], 5, uniformRandom(1)))).toEqual(['out-of-range']);
      expect(codesOf(() => rows(inputs, 0, uniformRandom(1)))).toEqual(['out-of-range']);
      expect(codesOf(() => rows(inputs, 1.5, uniformRandom(1)))).toEqual(['out-of-range']);
    }
  });
});
