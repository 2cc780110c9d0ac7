import type { Note } from '../../provenance/index.js';
import type { AnchoredValue } from './anchored-model.js';
import type { PulledCoupon } from './anchors.js';
import {
  calibrationNote,
  contradictionNote,
  type ForetoldTest,
  fewestSamples,
  isSameArms,
  isSameBond,
  testWeights,
} from './calibrate.js';
import { foretell } from './foretell.js';
import { type Draw, middleOf, middleOfPriors, withOther } from './samples.js';
import type { Coupon, CouponTest } from './types.js';
import { effectiveSamples } from './weighted.js';

/** Test results with the coupons that were tested. */
export type CouponTests = readonly { readonly coupon: Coupon; readonly test: CouponTest }[];

/** What is known of a coupon after its tests. */
export interface Known {
  /** Of the samples. */
  readonly weights: readonly number[];
  readonly middle: Draw;
  /** Whether tests narrowed the ranges. */
  readonly calibrated: boolean;
  readonly notes: readonly Note[];
}

/**
 * Weights of the samples by the tests that bear on a coupon, and the middle of what is known then. Tests say nothing of arms or a bond that are others: those scatter apart from the coupon's.
 * Where next to no sample comes near the tests, the priors stay.
 * @param own what is already foretold of the coupon itself
 */
export function knownOf(
  coupon: Coupon,
  tests: CouponTests,
  draws: readonly Draw[],
  own?: readonly AnchoredValue[],
): Known {
  const even = { weights: draws.map(() => 1), middle: middleOfPriors(), calibrated: false };
  if (tests.length === 0) return { ...even, notes: [] };
  const foretold = tests.map(({ coupon: tested, test }): ForetoldTest => {
    const apart = { arms: !isSameArms(tested, coupon), bond: !isSameBond(tested, coupon) };
    const values =
      own !== undefined && tested === coupon ? own : foretell(tested as PulledCoupon, withOther(draws, apart)).values;
    return { test, peakForces: values.map(({ peakForce }) => peakForce) };
  });
  const weights = testWeights(foretold, draws.length);
  if (effectiveSamples(weights) < fewestSamples(draws.length)) return { ...even, notes: [contradictionNote(foretold)] };
  return { weights, middle: middleOf(draws, weights), calibrated: true, notes: [calibrationNote(tests.length)] };
}
