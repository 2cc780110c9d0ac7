import { SelvageError } from '../../problem/index.js';
import type { Verdict } from '../types.js';
import type { PulledCoupon } from './anchors.js';
import { couponLaw, couponRows } from './coupon-rows.js';
import { pullCoupon } from './pull-coupon.js';
import { readToughness } from './reading.js';
import { sampledCoupon } from './sample-coupon.js';
import type { Draw } from './samples.js';

/** A sample simulated in full. */
export interface SimulatedSample {
  /** J/m² */
  readonly toughness: number;
  /** N */
  readonly peakForce: number;
  readonly first: Verdict;
}

/** Simulations where the fast model does not do: each takes some hundredths of a second. */
export const fullSimulations = 60;

/** Samples of a coupon, each simulated. One without equilibrium is left out. */
export function simulatedSamples(coupon: PulledCoupon, draws: readonly Draw[]): readonly SimulatedSample[] {
  return draws.flatMap((draw) => {
    const drawn = sampledCoupon(coupon, draw);
    const { specimen, stitching } = drawn;
    try {
      const rows = couponRows(drawn, stitching && couponLaw(specimen.kind, stitching));
      const result = pullCoupon(specimen, rows);
      const { toughness } = readToughness(result, rows.length > 0);
      return [{ toughness, peakForce: result.peakForce, first: result.verdict.first }];
    } catch (error) {
      if (error instanceof SelvageError) return [];
      throw error;
    }
  });
}
