import { describe, expect, it } from 'vitest';
import { normalBelow, normalQuantile } from '../../../../packages/core/src/study/method/normal.js';
import { expectNear } from '../../stitch/support.js';

/** Simpson's rule over the density, independent of series and fraction. */
function areaBetween(a: number, b: number): number {
  const n = 20_000;
  const h = (b - a) / n;
  const f = (k: number) => Math.exp(-((a + k * h) ** 2) / 2) / Math.sqrt(2 * Math.PI);
  let sum = f(0) + f(n);
  for (let k = 1; k < n; k++) sum += f(k) * (k % 2 === 1 ? 4 : 2);
  return (sum * h) / 3;
}

describe('the normal distribution', () => {
  it('has the area under its density below z', () => {
    for (const z of [0, 0.3, 1, 1.7, 2.5, 2.999, 3.001, 4, 5]) {
      expectNear(normalBelow(z), 0.5 + areaBetween(0, z), 1e-13);
      // The tail by itself, as far out as it counts for.
      expectNear(normalBelow(-z), areaBetween(-z - 12, -z), z === 0 ? 1e-12 : 1e-11);
    }
    expect([normalBelow(Number.NEGATIVE_INFINITY), normalBelow(Number.POSITIVE_INFINITY)]).toEqual([0, 1]);
  });

  it('has the tail 2.866515718791939e-7 beyond 5 standard deviations (tabulated, recalled, not re-read)', () => {
    expectNear(normalBelow(-5), 2.866515718791939e-7, 1e-14);
  });

  it('gives back the share from the z below which it lies', () => {
    for (const share of [1e-300, 1e-100, 1e-30, 1e-15, 1e-11, 1e-8, 1e-4, 0.01, 0.074, 0.076, 0.2, 0.4, 0.4999, 0.5]) {
      expectNear(normalBelow(normalQuantile(share)), share, 2e-14 * Math.max(1, normalQuantile(share) ** 2));
    }
    for (const share of [0.51, 0.7, 0.9249, 0.9251, 0.999]) {
      expectNear(normalBelow(normalQuantile(share)), share, 1e-15 * 4);
    }
  });

  it('has 1.959963984540054 as its 97.5 % point (tabulated, recalled, not re-read)', () => {
    expectNear(normalQuantile(0.975), 1.959963984540054, 1e-15);
    expect(normalQuantile(0.5)).toBe(0);
  });
});
