import { fail } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import { requirePositive, specimenPriors } from '../../stitch/index.js';
import type { Coupon, CouponStitching, CouponTest } from './types.js';
import { weightedInterval } from './weighted.js';

/** A test with the peak force that each sample foretells for its coupon, N. */
export interface ForetoldTest {
  readonly test: CouponTest;
  readonly peakForces: readonly number[];
}

const usualVariation = 0.1;

/** Effective samples below which tests and priors are at odds; of few samples a tenth. */
export const fewestSamples = (samples: number): number => Math.min(30, samples / 10);

/** Stops unless a test is one. @throws out-of-range peak force not above 0; variation not in 0 to 1 */
export function checkTest({ peakForce, variation = usualVariation }: CouponTest): void {
  requirePositive('peakForce of a test', peakForce, (force) => `${force} N`);
  if (variation >= 0 && variation <= 1) return;
  fail({
    code: 'out-of-range',
    message: `variation = ${variation} of a test, must lie in 0 to 1`,
    allowed: '0 to 1: standard deviation of the mean over the mean',
  });
}

/**
 * Weight of each sample by the tests: Π exp(-(ln P_i/P_test)²/(2 s²)), s² = variation² + modelError²; the greatest is 1.
 */
export function testWeights(tests: readonly ForetoldTest[], samples: number): readonly number[] {
  const logs = new Array<number>(samples).fill(0);
  for (const { test, peakForces } of tests) {
    const { peakForce, variation = usualVariation } = test;
    const square = variation ** 2 + specimenPriors.modelError.value ** 2;
    peakForces.forEach((force, i) => {
      logs[i] = (logs[i] as number) - Math.log(force / peakForce) ** 2 / (2 * square);
    });
  }
  const most = Math.max(...logs);
  return logs.map((log) => Math.exp(log - most));
}

/** What the reader must know of a calibration. */
export function calibrationNote(tests: number): Note {
  const many = tests === 1 ? 'one test' : `${tests} tests`;
  return {
    level: 'assumption',
    text: `Ranges narrowed and middle values moved by ${many}: samples weigh by how near they come to the peak force, with a model error of ${100 * specimenPriors.modelError.value} % besides the scatter of the tests.`,
    source: 'common-practice',
  };
}

/** What the reader must know where tests and priors are at odds: by how much each test is off what was foretold. */
export function contradictionNote(tests: readonly ForetoldTest[]): Note {
  const off = tests.map(({ test, peakForces }) => {
    const { low, median, high } = weightedInterval(
      peakForces,
      peakForces.map(() => 1),
    );
    const [times, least, most] = [median, low, high].map((force) => Number((test.peakForce / force).toPrecision(2)));
    return `${times} times the median foretold for the tested coupon (nine in ten samples: ${most} to ${least} times)`;
  });
  return {
    level: 'warning',
    text: `Tests contradict the assumed ranges and were left out: a tested peak force is ${off.join('; another ')}. Look at thread, lay-up and test before trusting either.`,
  };
}

/** Whether a peak force of one coupon says something of another: the same stitch, or unstitched and the same bond. An edge that a wedge opens has none. */
export function bearsOn(tested: Coupon, coupon: Coupon): boolean {
  if (tested.specimen.kind === 'wedge') return false;
  if (tested.stitching === undefined) return isSameBond(tested, coupon);
  return coupon.stitching !== undefined && sameStitch(tested.stitching, coupon.stitching);
}

/** Whether two coupons have arms of the same laminates, which then scatter as one. */
export function isSameArms(a: Coupon, b: Coupon): boolean {
  const essence = ({ specimen: { arms } }: Coupon): readonly string[] => arms.map((arm) => JSON.stringify(arm)).sort();
  const [one, other] = [essence(a), essence(b)];
  return one.every((arm, i) => arm === other[i]);
}

/** Whether two coupons have the same bond, opened in the same way. */
export function isSameBond(a: Coupon, b: Coupon): boolean {
  const essence = ({ specimen: { kind, bondToughness }, bondToughnessRange: range }: Coupon): string =>
    JSON.stringify([kind === 'enf', bondToughness, range?.low, range?.high]);
  return essence(a) === essence(b);
}

function sameStitch(a: CouponStitching, b: CouponStitching): boolean {
  const essence = ({ penetration, measured, legAngle = 0 }: CouponStitching): string => {
    const { type, needleThread, underThread, anchors, bends, parameters } = penetration;
    const thread = needleThread;
    const law = measured && [measured.opening, measured.force];
    return JSON.stringify([type, thread, underThread ?? thread, anchors, bends, parameters, law, legAngle]);
  };
  return essence(a) === essence(b);
}
