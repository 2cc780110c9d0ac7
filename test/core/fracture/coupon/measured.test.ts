import { describe, expect, it } from 'vitest';
import { predictCoupon } from '../../../../packages/core/src/fracture/index.js';
import { measuredBridgingLaw, measuredInterval } from '../../../../packages/core/src/stitch/index.js';
import { couponOf, light } from './support.js';

/** Invented: rises, breaks at its lock, pulls out. */
const measured = measuredBridgingLaw(
  [
    { opening: 0, force: 0 },
    { opening: 0.1e-3, force: 12 },
    { opening: 0.25e-3, force: 18 },
    { opening: 0.25e-3, force: 4 },
    { opening: 0.8e-3, force: 0 },
  ],
  'threadAtAnchor',
);
const foretold = (measuredVariation?: number) =>
  predictCoupon(
    couponOf('peel', light, 2, { measured, ...(measuredVariation !== undefined && { measuredVariation }) }),
    {
      advice: false,
    },
  );

describe('a coupon whose stitch was measured', () => {
  it('scatters by what its stitches scatter, as the closed form of the lognormal says', () => {
    for (const variation of [0.1, 0.3]) {
      const { bridging } = foretold(variation);
      const exact = measuredInterval(measured, variation);
      // Ends of 1000 samples: about 3 % of the distance to the median.
      for (const what of ['peak', 'work'] as const) {
        expect(bridging![what].low / exact[what].low).toBeCloseTo(1, 1);
        expect(bridging![what].high / exact[what].high).toBeCloseTo(1, 1);
        expect(bridging![what].median / exact[what].median).toBeCloseTo(1, 1);
      }
      expect(bridging!.opening.low).toBe(bridging!.opening.high);
      expect(bridging!.failures).toEqual(exact.failures);
    }
  });

  it('is foretold within wider ends the more its stitches scatter, and with none of it where they do not', () => {
    const widths = [0, 0.1, 0.3].map((variation) => {
      const { low, high } = foretold(variation).toughness!.specimen;
      return high / low;
    });
    expect(widths[1]).toBeGreaterThan(1.02 * widths[0]!);
    expect(widths[2]).toBeGreaterThan(1.1 * widths[1]!);
    const { peak } = foretold(0).bridging!;
    expect(peak.low).toBe(peak.high);
  });

  it('takes the scatter of the priors where none is given', () => {
    const usual = measuredInterval(measured);
    // Prior: nine in ten between 0.8 and 1.25.
    expect(usual.peak.low / measured.peak.force).toBeCloseTo(0.8, 9);
    expect(usual.peak.high / measured.peak.force).toBeCloseTo(1.25, 9);
    expect(foretold().bridging!.work.low / (0.8 * measured.work)).toBeCloseTo(1, 1);
  });
});
