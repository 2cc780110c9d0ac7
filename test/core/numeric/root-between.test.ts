import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantile, rootBetween } from '../../../packages/core/src/numeric/index.js';

describe('a root between two places', () => {
  it('is found for any rising cubic, from either end', () => {
    const inside = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(inside, fc.double({ min: 0.01, max: 100, noNaN: true }), (root, slope) => {
        const f = (x: number) => (x - root) ** 3 + slope * (x - root);
        expect(Math.abs(rootBetween(f, -6, 6) - root)).toBeLessThanOrEqual(1e-11);
        expect(Math.abs(rootBetween(f, 6, -6) - root)).toBeLessThanOrEqual(1e-11);
      }),
    );
  });

  it('is found where the function jumps or rises like a root, in far fewer steps than halving', () => {
    expect(rootBetween((x) => (x < 0.3 ? -1 : 1), 0, 1)).toBeCloseTo(0.3, 12);
    let calls = 0;
    const root = rootBetween(
      (x) => {
        calls++;
        return Math.sqrt(x) - 1e-3;
      },
      0,
      1,
    );
    expect(root).toBeCloseTo(1e-6, 15);
    expect(calls).toBeLessThan(40);
  });

  it('is the end where the function is 0, or the end nearer to 0 without a change of sign', () => {
    expect(rootBetween((x) => x, 0, 4)).toBe(0);
    expect(rootBetween((x) => x - 4, 0, 4)).toBe(4);
    expect(rootBetween((x) => 1 + x, 0, 4)).toBe(0);
  });
});

describe('a quantile', () => {
  it('lies on straight lines between the sorted numbers', () => {
    const sorted = [1, 2, 4, 8, 16];
    expect([0, 0.25, 0.5, 0.625, 1].map((share) => quantile(sorted, share))).toEqual([1, 2, 4, 6, 16]);
    expect(quantile([3], 0.9)).toBe(3);
  });
});
