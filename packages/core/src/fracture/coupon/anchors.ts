import { SelvageError } from '../../problem/index.js';
import type { Arm, SpecimenResult } from '../types.js';
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
  /** How full the fast model has the zone in sliding, and whether a row gives way in the simulation while the arms hold. */
  readonly fill?: number;
  readonly full: boolean;
}

/** Arms so many times as strong do not break. */
const farOff = 100;

/**
 * Compares a simulation with the fast model of the same coupon.
 * @param strong the simulation again with arms that do not break; the same one where they did not
 */
function anchorOf(
  coupon: FastCoupon,
  result: SpecimenResult,
  strong: SpecimenResult | undefined,
  bridged: boolean,
): Anchor {
  const fast = fastValue(coupon);
  const { toughness } = readToughness(result, bridged);
  const { events, verdict, peakForce, armShare = 0 } = result;
  const whole = strong && readToughness(strong, bridged).toughness;
  const stitch =
    whole ?? (verdict.first === 'arm' ? toughnessAtLoad(coupon, toughness, verdict.margin ?? farOff) : toughness);
  const grown = events.some(({ kind }) => kind === 'bond');
  const share = farOff * (strong?.armShare ?? 0);
  const arm =
    verdict.first === 'arm'
      ? // Broken before the bond grew: by what the arms would bear among the stitches.
        grown || whole === undefined || !(share > 0)
        ? toughness
        : whole / share ** 2
      : armShare > 0
        ? toughness / armShare ** 2
        : Number.POSITIVE_INFINITY;
  return {
    reading: fast.reading,
    stitch: stitch / fast.reading,
    arm: Number.isFinite(fast.ceiling) ? arm / fast.ceiling : arm / fast.reading,
    force: peakForce / fastPeak(coupon, toughness),
    ...(fast.fill !== undefined && { fill: fast.fill }),
    full: (strong ?? result).events.some(({ kind }) => kind !== 'bond' && kind !== 'arm'),
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
    return heldUp(() => simulateDraw(coupon, middle)) ?? [];
  });
}

/** Simulates one draw of a coupon, once more with arms that hold where they do not. @throws as the simulation of its kind */
export function simulateDraw(coupon: PulledCoupon, draw: Draw): Anchor {
  const drawn = sampledCoupon(coupon, draw);
  const { specimen, stitching } = drawn;
  const law = stitching && couponLaw(specimen.kind, stitching);
  const rows = couponRows(drawn, law);
  const [sample] = fastSamples(coupon, rows, [draw]);
  const result = pullCoupon(specimen, rows);
  const strong = result.verdict.first === 'arm' ? heldUp(() => pullCoupon(strengthened(specimen), rows)) : undefined;
  return anchorOf((sample as FastSample).coupon, result, strong, rows.length > 0);
}

function strengthened(specimen: PulledSpecimen): PulledSpecimen {
  const [upper, lower] = specimen.arms.map((arm): Arm => {
    const { failureStrain: strain } = arm;
    const more = strain && { tension: farOff * strain.tension, compression: farOff * strain.compression };
    return { ...arm, ...(more && { failureStrain: more }) };
  }) as [Arm, Arm];
  return { ...specimen, arms: [upper, lower] };
}

/** What a simulation gives, undefined where it finds no equilibrium. */
function heldUp<T>(simulate: () => T): T | undefined {
  try {
    return simulate();
  } catch (error) {
    if (error instanceof SelvageError) return undefined;
    throw error;
  }
}
