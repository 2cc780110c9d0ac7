import { SelvageError } from '../../problem/index.js';
import type { SpecimenResult } from '../types.js';
import { couponLaw, couponRows } from './coupon-rows.js';
import { type FastCoupon, fastPeak, fastValue, toughnessAtLoad } from './fast-model.js';
import { type PulledSpecimen, pullCoupon } from './pull-coupon.js';
import { readToughness } from './reading.js';
import { type FastSample, fastSamples, sampledCoupon } from './sample-coupon.js';
import { type Draw, middleOf } from './samples.js';
import type { Coupon } from './types.js';

/** A coupon that a machine pulls. */
export type PulledCoupon = Coupon & { readonly specimen: PulledSpecimen };

/** What a simulation says beside the fast model: values of the simulation over those of the fast model. */
export interface Anchor {
  /** Reading of the fast model, J/m². */
  readonly reading: number;
  /** Of the reading while the arms hold, and of the reading at which they break. */
  readonly stitch: number;
  readonly arm: number;
  /** Of the peak force. */
  readonly force: number;
  /** No row gave way and no arm: nothing but the bond limits. */
  readonly bondOnly: boolean;
}

/** Where nothing else could give way, it is taken to be this many times as strong. */
const farOff = 100;

/** Compares one simulation with the fast model of the same coupon. */
export function anchorOf(coupon: FastCoupon, result: SpecimenResult, bridged: boolean): Anchor {
  const fast = fastValue(coupon);
  const { toughness, of } = readToughness(result, bridged);
  const { verdict, peakForce, armShare = 0 } = result;
  const armLimits = verdict.first === 'arm';
  const margin = verdict.margin ?? farOff;
  const stitch = armLimits ? toughnessAtLoad(coupon, toughness, margin) : toughness;
  const arm = armLimits ? toughness : armShare > 0 ? toughness / armShare ** 2 : Number.POSITIVE_INFINITY;
  return {
    reading: fast.reading,
    stitch: stitch / fast.reading,
    arm: Number.isFinite(fast.ceiling) ? arm / fast.ceiling : arm / fast.reading,
    force: peakForce / fastPeak(coupon, toughness),
    bondOnly: of === 'greatest' || (!bridged && !armLimits),
  };
}

/** Strata of the samples by the reading of the fast model: share at the middle and half width. */
const strata = [
  { at: 0.05, half: 0.05 },
  { at: 0.5, half: 0.05 },
  { at: 0.95, half: 0.05 },
];

/** Simulates the middle of each stratum of the samples; strata that find no equilibrium are left out. */
export function simulateStrata(
  coupon: PulledCoupon,
  samples: readonly FastSample[],
  draws: readonly Draw[],
): readonly Anchor[] {
  const readings = samples.map((sample) => fastValue(sample.coupon).reading);
  const order = readings.map((_, i) => i).sort((a, b) => (readings[a] as number) - (readings[b] as number));
  return strata.flatMap(({ at, half }) => {
    const from = Math.floor((at - half) * order.length);
    const members = order.slice(from, Math.max(from + 1, Math.ceil((at + half) * order.length)));
    const middle = middleOf(members.map((i) => draws[i] as Draw));
    try {
      return [simulateDraw(coupon, middle)];
    } catch (error) {
      if (error instanceof SelvageError) return [];
      throw error;
    }
  });
}

function simulateDraw(coupon: PulledCoupon, draw: Draw): Anchor {
  const drawn = sampledCoupon(coupon, draw);
  const specimen = drawn.specimen as PulledSpecimen;
  const law = drawn.stitching && couponLaw(specimen.kind, drawn.stitching);
  const rows = couponRows(drawn, law);
  const [sample] = fastSamples(coupon, rows, [draw]);
  const result = pullCoupon(specimen, rows);
  return anchorOf((sample as FastSample).coupon, result, rows.length > 0);
}
