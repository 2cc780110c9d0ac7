import type { BridgingLaw } from '../../stitch/index.js';
import type { BridgingRow, SpecimenResult } from '../types.js';
import { type AnchoredValue, anchoredModel } from './anchored-model.js';
import { anchorOf, type PulledCoupon, simulateStrata } from './anchors.js';
import { type ForetoldTest, testWeights } from './calibrate.js';
import { couponLaw, couponRows } from './coupon-rows.js';
import { pullCoupon } from './pull-coupon.js';
import { type Reading, readToughness } from './reading.js';
import { type FastSample, fastSamples } from './sample-coupon.js';
import { type Draw, singleValues } from './samples.js';
import type { Coupon, CouponTest } from './types.js';

/** A pulled coupon simulated with its single values and sampled. */
export interface Foretold {
  readonly law?: BridgingLaw;
  readonly rows: readonly BridgingRow[];
  readonly result: SpecimenResult;
  readonly reading: Reading;
  readonly nominal: FastSample;
  readonly samples: readonly FastSample[];
  /** Of each sample, by the fast model corrected by the strata. */
  readonly values: readonly AnchoredValue[];
  readonly model: (sample: FastSample) => AnchoredValue;
  /** The fast model corrected by the simulation with the single values: for small changes of it. */
  readonly nearby: (sample: FastSample) => AnchoredValue;
}

/** The draw of the single values of a coupon. */
export function singleDraw({ specimen: { bondToughness }, bondToughnessRange: range }: Coupon): Draw {
  return singleValues(range ?? { low: bondToughness, high: bondToughness }, bondToughness);
}

/** Simulates a coupon with its single values and samples it. @throws as the simulation of its kind */
export function foretell(coupon: PulledCoupon, draws: readonly Draw[]): Foretold {
  const { specimen, stitching } = coupon;
  const law = stitching && couponLaw(specimen.kind, stitching);
  const rows = couponRows(coupon, law);
  const result = pullCoupon(specimen, rows);
  const [nominal] = fastSamples(coupon, rows, [singleDraw(coupon)]) as [FastSample];
  const samples = fastSamples(coupon, rows, draws);
  const bridged = rows.length > 0;
  const own = anchorOf(nominal.coupon, result, bridged);
  const anchors = simulateStrata(coupon, samples, draws);
  const model = anchoredModel(anchors.length > 0 ? anchors : [own]);
  return {
    ...(law && { law }),
    rows,
    result,
    reading: readToughness(result, bridged),
    nominal,
    samples,
    values: samples.map(model),
    model,
    nearby: anchoredModel([own]),
  };
}

/** Test results with the coupons that were tested. */
export type CouponTests = readonly { readonly coupon: Coupon; readonly test: CouponTest }[];

/** Weights of the samples by the tests; of a coupon itself with what is already foretold of it. */
export function weightsBy(
  tests: CouponTests,
  draws: readonly Draw[],
  own?: { readonly coupon: Coupon; readonly values: readonly AnchoredValue[] },
): readonly number[] {
  const foretold = tests.map(({ coupon, test }): ForetoldTest => {
    const { values } = own?.coupon === coupon ? own : foretell(coupon as PulledCoupon, draws);
    return { test, peakForces: values.map(({ peakForce }) => peakForce) };
  });
  return testWeights(foretold, draws.length);
}
