import { describe, expect, it } from 'vitest';
import { couponLaw, couponRows } from '../../../../packages/core/src/fracture/coupon/coupon-rows.js';
import { type PulledSpecimen, pullCoupon } from '../../../../packages/core/src/fracture/coupon/pull-coupon.js';
import { readToughness } from '../../../../packages/core/src/fracture/coupon/reading.js';
import { sampledCoupon } from '../../../../packages/core/src/fracture/coupon/sample-coupon.js';
import { drawSamples } from '../../../../packages/core/src/fracture/coupon/samples.js';
import { type Coupon, predictCoupon } from '../../../../packages/core/src/fracture/index.js';
import { quantile } from '../../../../packages/core/src/numeric/index.js';
import type { Interval } from '../../../../packages/core/src/stitch/index.js';
import { couponOf, light, strong } from './support.js';

/** Every sample simulated in full, with a seed of its own. */
function simulated(coupon: Coupon, samples: number) {
  const all = drawSamples({ samples, seed: 77 }).map((draw) => {
    const drawn = sampledCoupon(coupon, draw);
    const law = drawn.stitching && couponLaw(drawn.specimen.kind, drawn.stitching);
    const rows = couponRows(drawn, law);
    const result = pullCoupon(drawn.specimen as PulledSpecimen, rows);
    return { ...result, toughness: readToughness(result, rows.length > 0).toughness };
  });
  const interval = (values: number[]): Interval => {
    const sorted = values.sort((a, b) => a - b);
    return { median: quantile(sorted, 0.5), low: quantile(sorted, 0.05), high: quantile(sorted, 0.95) };
  };
  return {
    toughness: interval(all.map(({ toughness }) => toughness)),
    peakForce: interval(all.map(({ peakForce }) => peakForce)),
    arms: all.filter(({ verdict }) => verdict.first === 'arm').length / samples,
  };
}

function expectClose(found: Interval, wanted: Interval): void {
  expect(Math.abs(found.median / wanted.median - 1)).toBeLessThan(0.1);
  expect(Math.abs(found.low / wanted.low - 1)).toBeLessThan(0.2);
  expect(Math.abs(found.high / wanted.high - 1)).toBeLessThan(0.2);
}

describe('samples of the fast model, corrected by three simulations', () => {
  it.each([
    ['a peel limited by its threads', couponOf('peel', light, 2)],
    ['a peel limited by its arms', couponOf('peel', strong, 3)],
    ['a double cantilever beam', couponOf('dcb', strong, 8)],
    ['a bent specimen', couponOf('enf', light, 8)],
    ['a peel without stitches', couponOf('peel', undefined, 2)],
  ])(
    'have the median within 10 %% and the ends within 20 %% of sixty simulations: %s',
    (_, coupon) => {
      const wanted = simulated(coupon, 60);
      const { toughness, peakForce, shares } = predictCoupon(coupon, { advice: false });
      expectClose(toughness!.specimen, wanted.toughness);
      expectClose(peakForce, wanted.peakForce);
      expect(Math.abs(shares.arm - wanted.arms)).toBeLessThan(0.2);
    },
    60_000,
  );
});
