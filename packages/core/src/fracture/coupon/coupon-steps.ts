import type { Working } from '../../working/index.js';
import type { PulledCoupon } from './anchors.js';
import { bearsOn } from './calibrate.js';
import { patternMet, stitchedGrowth } from './coupon-rows.js';
import { type Middle, simulateMiddle } from './foretell.js';
import { type CouponTests, knownOf } from './known.js';
import { couponDiscreteness, couponToughness, couponZone } from './predicted-parts.js';
import { sampledCoupon } from './sample-coupon.js';
import { type Draw, drawSamples, middleOfPriors } from './samples.js';
import type { Coupon } from './types.js';
import { splitCoupon, type WedgeCoupon } from './wedge-samples.js';

/**
 * Takes down the prediction of a coupon at the middle of what is known of it, as `predictCoupon` simulates it: arms, stitch, start of growth, record
 * row by row, what is read and what limits. Ranges and shares of samples are left out; only tests that bear on the coupon need samples, to find their middle.
 * @throws as `predictCoupon`
 */
export function showCoupon(coupon: Coupon, working: Working, tests: CouponTests = []): void {
  const bearing = tests.filter((one) => bearsOn(one.coupon, coupon));
  const known = bearing.length > 0 ? knownOf(coupon, bearing, drawSamples({})) : undefined;
  const middle = known?.calibrated === true ? known.middle : middleOfPriors();
  if (known?.calibrated === true) showMiddle(coupon, middle, working.part('middle'));
  if (coupon.specimen.kind === 'wedge') splitCoupon(sampledCoupon(coupon as WedgeCoupon, middle), working);
  else showSteady(simulateMiddle(coupon as PulledCoupon, middle, working), working.part('steady'));
}

/** Takes down arms and bond at the middle of the samples that tests weigh. */
function showMiddle(coupon: Coupon, middle: Draw, working: Working): void {
  const { bondToughnessFactor: f_G, armStiffnessFactor: f_D, bondPlace } = middle;
  const { specimen, bondToughnessRange: range } = coupon;
  const drawn = sampledCoupon(coupon, middle).specimen;
  const [upper, lower] = specimen.arms;
  const [one, two] = drawn.arms;
  working.step('middleOfTests', { f_D, f_G, ...(bondPlace === undefined ? {} : { x_G: bondPlace }) });
  working.step('armsAtMiddle', {
    f_D,
    D_a1: upper.bendingStiffness,
    D_a2: lower.bendingStiffness,
    A_a1: upper.axialStiffness,
    A_a2: lower.axialStiffness,
    S_a1: upper.shearStiffness,
    S_a2: lower.shearStiffness,
    D_1: one.bendingStiffness,
    D_2: two.bendingStiffness,
    A_1: one.axialStiffness,
    A_2: two.axialStiffness,
    S_1: one.shearStiffness,
    S_2: two.shearStiffness,
  });
  const bond = { G_g: specimen.bondToughness, G_0: drawn.bondToughness };
  if (range === undefined) working.step('bondAtMiddle', { f_G, ...bond });
  else working.step('bondInRange', { x_G: bondPlace ?? 0, G_l: range.low, G_h: range.high, ...bond });
}

/** Takes down what the stitches add, and the steady toughness where the bridged zone fits. */
function showSteady({ coupon, law, rows, result, reading }: Middle, working: Working): void {
  const { specimen, stitching } = coupon;
  if (stitching === undefined || law === undefined || rows.length === 0) return;
  if (specimen.kind === 'enf') {
    const plain = couponToughness(coupon, stitching, law);
    const zone = couponZone(plain, result, reading, stitching.measured !== undefined);
    const fits = zone !== undefined && zone.needed <= stitchedGrowth(specimen, stitching);
    if (fits) couponToughness(coupon, stitching, law, working);
    else working.step('toughnessAdded', { N: patternMet(stitching).density, W: law.work, G_st: plain.increment });
    return;
  }
  const found = couponToughness(coupon, stitching, law, working);
  const apart = couponDiscreteness(found, stitching);
  const { spacing: s_r } = patternMet(stitching);
  if (apart === undefined || s_r === undefined || found.bridgingLength === undefined) return;
  working.step('rowsApart', { s_r, l_b: found.bridgingLength, r_s: apart.ratio });
}
