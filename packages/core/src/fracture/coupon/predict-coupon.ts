import type { PulledCoupon } from './anchors.js';
import { bearsOn, checkTest } from './calibrate.js';
import type { CouponTests } from './known.js';
import { predictPulled } from './predict-pulled.js';
import { predictWedge } from './predict-wedge.js';
import { checkBondRange } from './sample-coupon.js';
import { drawSamples } from './samples.js';
import type { Coupon, CouponPrediction } from './types.js';
import type { WedgeCoupon } from './wedge-samples.js';

/** How a prediction is made. */
export interface PredictOptions {
  /** Whole, 10 to 100 000; 1000 when not given. */
  readonly samples?: number;
  /** Whole; 1 when not given. */
  readonly seed?: number;
  /** Test results that narrow the ranges, each with the coupon that was tested. */
  readonly tests?: CouponTests;
  /** False leaves out changes, densities and the point of no return. */
  readonly advice?: boolean;
}

/**
 * What a test of a coupon will show, with its uncertainty, what limits it, and what would change it.
 *
 * Samples of stitch, bond and arms through the fast model, corrected by simulations of its strata; what tests of coupons with the same stitch or bond say, as weights of the samples; one simulation at the
 * middle of what is known then, to which everything belongs that is not a range or a share.
 *
 * @param coupon specimen and stitching; SI
 * @returns see {@link CouponPrediction}
 * @throws out-of-range samples, seed, a test or a bond range that is none; and as the simulation of its kind, `rowsAcross` and `bridgingLaw`
 * @throws not-computable a test that ends before the crack grows, or no equilibrium
 * @throws missing-key thread without tenacity or modulus
 * @source derived in docs/theory/coupon-prediction.md
 */
export function predictCoupon(coupon: Coupon, options: PredictOptions = {}): CouponPrediction {
  const { samples = 1000, seed = 1, tests = [] } = options;
  for (const one of tests) {
    checkTest(one.test);
    checkBondRange(one.coupon);
  }
  checkBondRange(coupon);
  const draws = drawSamples({ samples, seed });
  const bearing = tests.filter((one) => bearsOn(one.coupon, coupon));
  return isWedge(coupon)
    ? predictWedge(coupon, draws, bearing)
    : predictPulled(coupon as PulledCoupon, draws, bearing, options.advice ?? true);
}

const isWedge = (coupon: Coupon): coupon is WedgeCoupon => coupon.specimen.kind === 'wedge';
