import type { Note } from '../../provenance/index.js';
import { showArmBreaks } from '../../stitch/index.js';
import type { Working } from '../../working/index.js';
import type { PulledCoupon } from './anchors.js';
import { bearsOn } from './calibrate.js';
import { couponWarnings, distantRowsNote } from './coupon-notes.js';
import { patternMet, stitchedGrowth } from './coupon-rows.js';
import { type Middle, simulateMiddle } from './foretell.js';
import { type CouponTests, knownOf } from './known.js';
import { showMedians } from './median-steps.js';
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
  else if (coupon.stitching !== undefined && coupon.stitching.measured === undefined)
    showMedians(middle, coupon.stitching.penetration, working.part('stitch'));
  working.notes([known?.calibrated === true ? atMiddleOfTests : atMiddle, ...(known?.notes ?? [])]);
  if (coupon.specimen.kind === 'wedge') {
    const { rows } = splitCoupon(sampledCoupon(coupon as WedgeCoupon, middle), working);
    working.notes(couponWarnings(coupon, rows.length));
  } else showSteady(simulateMiddle(coupon as PulledCoupon, middle, working), working.part('steady'));
}

const atMiddle: Note = {
  level: 'assumption',
  text: 'Computed at the middle of what is known: each parameter of the stitch that is not given at its median, the bond and the arms as given. The working of a stitch plan takes the likeliest values instead, so that its stitch differs. A report leads with the median over all samples, which lies a little beside the numbers here.',
};
const atMiddleOfTests: Note = {
  level: 'assumption',
  text: 'Computed at the middle of the samples as the tests weigh them: parameters of the stitch, arms and bond. The working of a stitch plan takes the likeliest values instead, so that its stitch differs. A report leads with the median over all samples, which lies a little beside the numbers here.',
};

/** Takes down arms and bond at the middle of the samples that tests weigh. */
function showMiddle(coupon: Coupon, middle: Draw, working: Working): void {
  const { bondToughnessFactor: f_G, armStiffnessFactor: f_D, armStrengthFactor: f_B, bondPlace } = middle;
  const { specimen, bondToughnessRange: range } = coupon;
  const drawn = sampledCoupon(coupon, middle).specimen;
  const [upper, lower] = specimen.arms;
  const [one, two] = drawn.arms;
  if (range === undefined) working.step('middleOfTests', { f_D, f_B, f_G });
  else working.step('middleOfTestsInRange', { f_D, f_B, x_G: bondPlace ?? 0 });
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
  const strains = [upper, lower, one, two].map(({ failureStrain }) => failureStrain);
  const [a1, a2, m1, m2] = strains;
  if (a1 !== undefined && a2 !== undefined && m1 !== undefined && m2 !== undefined) {
    const asWorkedOut = { eps_ta1: a1.tension, eps_ca1: a1.compression, eps_ta2: a2.tension, eps_ca2: a2.compression };
    const atMiddle = { eps_t1: m1.tension, eps_c1: m1.compression, eps_t2: m2.tension, eps_c2: m2.compression };
    working.step('strengthAtMiddle', { f_B, ...asWorkedOut, ...atMiddle });
  }
  const [G_g, G_0] = [specimen.bondToughness, drawn.bondToughness];
  if (range === undefined) {
    working.step('bondAtMiddle', { f_G, G_g, G_0 });
    return;
  }
  const bond = { x_G: bondPlace ?? 0, G_l: range.low, G_g, G_h: range.high, G_0 };
  working.step(G_0 <= G_g ? 'bondBelowLikeliest' : 'bondAboveLikeliest', bond);
}

/** Takes down what the stitches add, and the steady toughness where the bridged zone fits; without stitches at what toughness the arms break. */
function showSteady({ coupon, law, rows, result, reading }: Middle, working: Working): void {
  const { specimen, stitching } = coupon;
  if (stitching === undefined || law === undefined || rows.length === 0) {
    if (specimen.kind !== 'enf') showArmBreaks(specimen.arms, working);
    return;
  }
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
  working.notes(distantRowsNote(apart, reading, found));
  working.step('rowsApart', { s_r, l_b: found.bridgingLength, r_s: apart.ratio });
}
