import { fail } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import { requirePositive, specimenPriors } from '../../stitch/index.js';
import type { Coupon, CouponStitching, CouponTest } from './types.js';
import { effectiveSamples } from './weighted.js';

/** A test with the peak force that each sample foretells for its coupon, N. */
export interface ForetoldTest {
  readonly test: CouponTest;
  readonly peakForces: readonly number[];
}

const usualVariation = 0.1;

/** Below this share of the samples as effective ones, tests and priors are at odds. */
const fewest = 0.03;

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
export function calibrationNotes(tests: number, weights: readonly number[]): readonly Note[] {
  const effective = effectiveSamples(weights);
  const many = tests === 1 ? 'one test' : `${tests} tests`;
  const notes: Note[] = [
    {
      level: 'assumption',
      text: `Ranges narrowed by ${many}: samples weigh by how near they come to the peak force, with a model error of ${100 * specimenPriors.modelError.value} % besides the scatter of the tests.`,
      source: 'common-practice',
    },
  ];
  if (effective < fewest * weights.length) {
    notes.push({
      level: 'warning',
      text: `Only ${Math.max(1, Math.round(effective))} of ${weights.length} samples come near the tests: tests and assumed ranges contradict each other; look at thread, lay-up and test before trusting either.`,
    });
  }
  return notes;
}

/** Whether a peak force of one coupon says something of another: the same stitch, or no stitches and the same bond. An edge that a wedge opens has none. */
export function bearsOn(tested: Coupon, coupon: Coupon): boolean {
  if (tested.specimen.kind === 'wedge') return false;
  const { stitching } = tested;
  if (stitching === undefined || coupon.stitching === undefined) {
    return stitching === undefined && tested.specimen.bondToughness === coupon.specimen.bondToughness;
  }
  return sameStitch(stitching, coupon.stitching);
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
