import { describe, expect, it } from 'vitest';
import { asRatio, commonMultiple } from '../../../packages/core/src/stitch/ratio.js';

describe('a number as a fraction', () => {
  it('is found in lowest terms for every fraction up to the largest denominator', () => {
    for (let q = 1; q <= 60; q++) {
      for (let p = -70; p <= 70; p++) {
        const found = asRatio(p / q, 60);
        expect(found && found.numerator / found.denominator).toBeCloseTo(p / q, 12);
        expect(found?.denominator).toBeLessThanOrEqual(q);
      }
    }
  });

  it('is not found for an irrational number or a larger denominator', () => {
    expect(asRatio(Math.SQRT2, 1000)).toBeUndefined();
    expect(asRatio(1 / 61, 60)).toBeUndefined();
  });

  it('has a least common multiple', () => {
    expect(commonMultiple(4, 6)).toBe(12);
    expect(commonMultiple(7, 1)).toBe(7);
  });
});
