import { describe, expect, it } from 'vitest';
import { effectiveSamples, weightedInterval } from '../../../../packages/core/src/fracture/coupon/weighted.js';
import { quantile } from '../../../../packages/core/src/numeric/index.js';

const values = [5, 1, 4, 2, 8, 3, 7];

describe('quantiles of weighted values', () => {
  it('with equal weights are those without', () => {
    const sorted = [...values].sort((a, b) => a - b);
    const found = weightedInterval(
      values,
      values.map(() => 0.3),
    );
    expect(found.median).toBeCloseTo(quantile(sorted, 0.5), 12);
    expect(found.low).toBeCloseTo(quantile(sorted, 0.05), 12);
    expect(found.high).toBeCloseTo(quantile(sorted, 0.95), 12);
  });

  it('leave out what weighs nothing', () => {
    const many = Array.from({ length: 401 }, (_, i) => i);
    const weights = many.map((i) => (i > 100 && i < 300 ? 1 : 0));
    const found = weightedInterval([...many, 1e6], [...weights, 0]);
    expect(Math.abs(found.low - 110.95)).toBeLessThan(2);
    expect(Math.abs(found.median - 200)).toBeLessThan(2);
    expect(Math.abs(found.high - 289.05)).toBeLessThan(2);
  });

  it('of one value are that value', () => {
    expect(weightedInterval([3], [2])).toEqual({ median: 3, low: 3, high: 3 });
  });
});

describe('effective samples', () => {
  it('are all of equal weight, and one where one weighs', () => {
    expect(effectiveSamples([2, 2, 2, 2])).toBeCloseTo(4, 12);
    expect(effectiveSamples([0, 1, 0])).toBe(1);
    expect(effectiveSamples([1, 2])).toBeCloseTo(9 / 5, 12);
  });
});
