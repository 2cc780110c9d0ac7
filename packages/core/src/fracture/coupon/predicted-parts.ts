import type { Note } from '../../provenance/index.js';
import {
  type BridgingFailure,
  type BridgingInterval,
  type BridgingLaw,
  type Discreteness,
  discreteness,
  type Toughness,
  toughness,
  zonePriors,
} from '../../stitch/index.js';
import type { Working } from '../../working/index.js';
import type { SpecimenResult, Verdict } from '../types.js';
import type { AnchoredValue } from './anchored-model.js';
import type { PulledCoupon } from './anchors.js';
import { patternMet, stitchedGrowth } from './coupon-rows.js';
import type { StitchNumbers } from './fast-model.js';
import type { Reading } from './reading.js';
import type { CouponPrediction, CouponStitching, Estimated } from './types.js';
import { weightedInterval } from './weighted.js';
import { fitsIn } from './zone-room.js';

/** Steady toughness of a stitched coupon with its rule of room; in sliding without one, which only the simulation can tell. What rows apart do to a test is left to the coupon's own simulation. */
export function couponToughness(
  { specimen }: PulledCoupon,
  stitching: CouponStitching,
  law: BridgingLaw,
  working?: Working,
): Toughness {
  const { density } = patternMet(stitching);
  const base = { law, penetrationDensity: density, bondToughness: specimen.bondToughness };
  if (specimen.kind === 'enf') return { ...toughness(base, working), notes: law.notes };
  const [arm, otherArm] = specimen.arms;
  const length = stitchedGrowth(specimen, stitching);
  return toughness({ ...base, arm, otherArm, ...(length > 0 && { length }) }, working);
}

/** Row distance over bridging length; in sliding, and for a single row, none. */
export function couponDiscreteness(
  { bridgingLength: length }: Toughness,
  stitching: CouponStitching,
): Discreteness | undefined {
  const { spacing } = patternMet(stitching);
  return length === undefined || spacing === undefined ? undefined : discreteness(spacing, length);
}

/** Length of the bridged zone, m: in opening by its scale, in sliding that of the simulation once it is full. */
export function couponZone(
  { zone }: Toughness,
  { zoneLength }: SpecimenResult,
  { of }: Reading,
  measured: boolean,
): CouponPrediction['zone'] {
  if (zone !== undefined) return { computed: zoneLength, ...zone };
  if (of !== 'fullZone' || !(zoneLength > 0)) return undefined;
  const needed = (measured ? 1 : zonePriors.zoneShortfall.high) * zoneLength;
  return { computed: zoneLength, low: zoneLength, high: zoneLength, needed };
}

/** A steady value with its range, or why there is none. */
export interface Steady {
  readonly value?: Estimated;
  readonly notes: readonly Note[];
}

/** Steady toughness with its range where nominal case and nineteen samples of twenty have room for their zone; of an unstitched coupon that of its bond. */
export function steadyValue(
  { specimen, stitching }: PulledCoupon,
  values: readonly AnchoredValue[],
  weights: readonly number[],
  plain: Toughness | undefined,
  zone: CouponPrediction['zone'],
): Steady {
  const fast = values.map((value) => value.fast);
  const range = () =>
    weightedInterval(
      fast.map(({ steady }) => steady),
      weights,
    );
  if (stitching === undefined || plain === undefined) {
    return { value: { nominal: specimen.bondToughness, ...range() }, notes: [] };
  }
  const length = stitchedGrowth(specimen, stitching);
  const measured = stitching.measured !== undefined;
  if (specimen.kind === 'enf') {
    return zone !== undefined && zone.needed <= length && plain.steady !== undefined
      ? { value: { nominal: plain.steady, ...range() }, notes: [] }
      : { notes: [noRoomInSliding] };
  }
  if (plain.steady === undefined) return { notes: [] };
  const fits = fitsIn(
    fast.map((one) => one.length),
    { length, measured },
  );
  return fits ? { value: { nominal: plain.steady, ...range() }, notes: [] } : { notes: [tooFewFit] };
}

const noRoomInSliding: Note = {
  level: 'warning',
  text: 'no steady toughness in sliding: the bridged zone may not fit between the starting crack and the load',
};
const tooFewFit: Note = {
  level: 'warning',
  text: 'no steady toughness: in more than one sample of twenty the bridged zone may not fit',
};

/** One penetration of a sample: N, m, J. */
interface StitchSample extends StitchNumbers {
  readonly failure: BridgingFailure;
}

/** Law of a penetration with the range of the samples. */
export function bridgingRange(
  law: BridgingLaw,
  samples: readonly StitchSample[],
  weights: readonly number[],
): BridgingInterval {
  const range = (of: (one: StitchSample) => number) => weightedInterval(samples.map(of), weights);
  const {
    bond: _,
    arm: __,
    ...failures
  } = verdictShares(
    samples.map(({ failure }) => failure),
    weights,
  );
  return {
    peak: range(({ force }) => force),
    opening: range(({ opening }) => opening),
    work: range(({ work }) => work),
    failures,
    notes: law.notes,
    sources: law.sources,
  };
}

/** Weighted share of the samples that each thing limits. */
export function verdictShares(
  firsts: readonly Verdict[],
  weights: readonly number[],
): Readonly<Record<Verdict, number>> {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const share = (kind: Verdict) =>
    firsts.reduce((sum, first, i) => (first === kind ? sum + (weights[i] as number) : sum), 0) / total;
  return {
    bond: share('bond'),
    threadAtCrack: share('threadAtCrack'),
    threadAtAnchor: share('threadAtAnchor'),
    threadPullOut: share('threadPullOut'),
    arm: share('arm'),
  };
}
