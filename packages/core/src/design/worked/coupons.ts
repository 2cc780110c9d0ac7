import { armOf, showCoupon } from '../../fracture/index.js';
import type { Working } from '../../working/index.js';
import type { CouponModel, Model } from '../model.js';

/** Takes down the arms and the prediction of a coupon, at the middle of what is known of it. */
export function couponSteps(
  { coupon, arms, armOptions }: CouponModel,
  { laminates, coupons }: Model,
  working: Working,
): void {
  for (const i of [0, 1] as const) {
    const found = laminates.find(({ name }) => name === arms[i]);
    if (found !== undefined) armOf(found.laminate, armOptions[i], working.part('arms', i + 1));
  }
  const tests = coupons.flatMap((one) => (one.test === undefined ? [] : [{ coupon: one.coupon, test: one.test }]));
  showCoupon(coupon, working, tests);
}
