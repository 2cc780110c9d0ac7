import { describe, expect, it } from 'vitest';
import { couponLaw, couponRows } from '../../../../packages/core/src/fracture/coupon/coupon-rows.js';
import { type PulledSpecimen, pullCoupon } from '../../../../packages/core/src/fracture/coupon/pull-coupon.js';
import { readToughness } from '../../../../packages/core/src/fracture/coupon/reading.js';
import { sampledCoupon } from '../../../../packages/core/src/fracture/coupon/sample-coupon.js';
import { drawSamples } from '../../../../packages/core/src/fracture/coupon/samples.js';
import { type Coupon, predictCoupon, type Verdict } from '../../../../packages/core/src/fracture/index.js';
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
    share: (kind: Verdict) => all.filter(({ verdict }) => verdict.first === kind).length / samples,
  };
}

function expectClose(found: Interval, wanted: Interval): void {
  expect(Math.abs(found.median / wanted.median - 1)).toBeLessThan(0.1);
  expect(Math.abs(found.low / wanted.low - 1)).toBeLessThan(0.2);
  expect(Math.abs(found.high / wanted.high - 1)).toBeLessThan(0.2);
}

const bent = couponOf(
  'enf',
  strong,
  3,
  { pattern: { kind: 'staggered', pitch: 4e-3, rowSpacing: 5e-3 }, to: 0.05 },
  { bondToughness: 1300, span: 0.1 },
);
const underTwoLoads = couponOf(
  'enf',
  strong,
  1,
  { pattern: { kind: 'parallel', pitch: 4e-3, rowSpacing: 4e-3 }, from: 0.034, origin: 0.034, to: 0.07 },
  { bondToughness: 250, span: 0.1, loadSpan: 0.04 },
);
const stiff = couponOf(
  'peel',
  strong,
  44,
  { pattern: { kind: 'parallel', pitch: 4e-3, rowSpacing: 4e-3 }, from: 0.034, origin: 0.034, to: 0.1 },
  { bondToughness: 250, crackLength: 0.03, length: 0.1, until: {} },
);

describe('samples of the fast model, corrected by three simulations', () => {
  it.each([
    ['a peel limited by its threads', couponOf('peel', light, 2)],
    ['a peel limited by its arms', couponOf('peel', strong, 3)],
    ['a double cantilever beam', couponOf('dcb', strong, 8)],
    ['a bent specimen', couponOf('enf', light, 8)],
    ['a peel without stitches', couponOf('peel', undefined, 2)],
    ['a bent specimen whose arms break before the bond grows, among its stitches, or not at all', bent],
    ['a bent specimen under two loads, limited by its arms', underTwoLoads],
  ])(
    'are close to sixty simulations, median within a tenth and ends within a fifth: %s',
    (_, coupon) => {
      const wanted = simulated(coupon, 60);
      const { toughness, peakForce, shares } = predictCoupon(coupon, { advice: false });
      expectClose(toughness!.specimen, wanted.toughness);
      expectClose(peakForce, wanted.peakForce);
      for (const kind of ['bond', 'threadAtCrack', 'threadAtAnchor', 'threadPullOut', 'arm'] as const) {
        expect(Math.abs(shares[kind] - wanted.share(kind)), kind).toBeLessThan(0.15);
      }
    },
    60_000,
  );
});

describe('where the fast model does not follow the simulations', () => {
  const found = predictCoupon(stiff, { advice: false });

  it('ranges and shares are those of samples simulated in full, which is said', () => {
    expect(found.notes.find(({ text }) => text.includes('simulated in full'))?.level).toBe('warning');
    for (const { low, median, high, nominal } of [found.peakForce, found.toughness!.specimen]) {
      expect(low).toBeLessThan(median);
      expect(median).toBeLessThan(0.95 * high);
      expect(nominal).toBeGreaterThan(low);
      expect(nominal).toBeLessThan(high);
    }
  });

  it('are near sixty others', () => {
    const wanted = simulated(stiff, 60);
    for (const [one, other] of [
      [found.toughness!.specimen, wanted.toughness],
      [found.peakForce, wanted.peakForce],
    ] as const) {
      // Ends of sixty samples scatter by that much themselves.
      for (const [end, most] of [
        ['median', 0.15],
        ['low', 0.35],
        ['high', 0.35],
      ] as const) {
        expect(Math.abs(one[end] / other[end] - 1), end).toBeLessThan(most);
      }
    }
    expect(Math.abs(found.shares.bond - wanted.share('bond'))).toBeLessThan(0.2);
  });

  it('is not said of coupons that it does follow', () => {
    for (const coupon of [couponOf('peel', light, 2), couponOf('enf', light, 8), bent]) {
      const { notes } = predictCoupon(coupon, { advice: false });
      expect(notes.some(({ text }) => text.includes('simulated in full'))).toBe(false);
    }
  });
});
