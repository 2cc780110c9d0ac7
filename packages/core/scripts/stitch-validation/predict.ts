import { type PulledSpecimen, pullCoupon } from '../../src/fracture/coupon/pull-coupon.js';
import { readToughness } from '../../src/fracture/coupon/reading.js';
import { predictCoupon, rowsAcross, type SpecimenResult, type Verdict } from '../../src/fracture/index.js';
import {
  armCeiling,
  type BridgingFailure,
  type BridgingLaw,
  bridgingLaw,
  bridgingLength,
  type Interval,
} from '../../src/stitch/index.js';
import {
  armOfCase,
  type Bends,
  couponOf,
  densityOf,
  rodFrictions,
  rodOf,
  rowDistance,
  rowsOf,
  specimenOf,
} from './coupons.js';
import { type Case, inputOf } from './inputs.js';

/** Enough for ends of ranges to two digits or so; seeded, so that the page is the same each time. */
const options = { samples: 400, seed: 1, advice: false } as const;

/** A nominal value and its range of nine in ten. */
export interface Column extends Interval {
  /** At the middle values of the parameters. */
  readonly nominal: number;
}

/** What is foretold of a case by one of the laws; J/m², m. */
export interface Prediction {
  readonly bond: number;
  readonly law: BridgingLaw;
  /** Bond and stitches with a full zone. */
  readonly steady: Column;
  /** What a tester reads off a specimen with aligned rows. */
  readonly specimen: Column;
  /** Share of the samples in which each gives way. */
  readonly failures: Readonly<Partial<Record<BridgingFailure, number>>>;
  /** Load at which the bond first gives way, N. */
  readonly onset?: number;
  /** Some row gave way before the specimen came to its end, so that the bridged zone was full. */
  readonly full: boolean;
  /** Only in opening. */
  readonly opening?: {
    readonly bridgingLength: number;
    /** Row distance over bridging length. */
    readonly rows: number;
    /** Longest bridged stretch of the simulation. */
    readonly zone: number;
    /** Growth after which the toughness by load first comes to nine tenths of what the specimen reads. */
    readonly rise: number;
    /** Toughness at which the arms break. */
    readonly ceiling?: number;
    /** Largest displacement over crack length at which a row gives way; at the end of the test where none does. */
    readonly bend: number;
  };
}

function openingOf(
  one: Case,
  law: BridgingLaw,
  result: SpecimenResult,
  reading: number,
): NonNullable<Prediction['opening']> {
  const { zoneLength: zone, resistance } = result;
  const arm = armOfCase(one);
  const length = bridgingLength(arm.bendingStiffness, densityOf(one), law);
  const ceiling = armCeiling(arm, arm);
  const rise = resistance.find(({ byLoad }) => byLoad >= 0.9 * reading)?.growth ?? Number.POSITIVE_INFINITY;
  const rows = rowDistance(one) / length;
  const bend = bendOf(result);
  return { bridgingLength: length, rows, zone, rise, bend, ...(ceiling !== undefined && { ceiling }) };
}

/** Largest displacement over crack length at which a row gives way, or over the whole test where none does. */
function bendOf({ events, states }: SpecimenResult): number {
  const onsets = events.filter(({ kind }) => kind !== 'bond' && kind !== 'arm');
  return Math.max(...(onsets.length > 0 ? onsets : states).map((at) => at.displacement / at.crackLength));
}

const isFull = ({ events }: SpecimenResult): boolean => events.some(({ kind }) => kind !== 'bond' && kind !== 'arm');

/** A case held by threads, as `predictCoupon` foretells its specimen. The steady value is given whether its zone has room or not. */
function threads(one: Case, bends: Bends): Prediction {
  const { law, bridging, toughness, result, onset } = predictCoupon(couponOf(one, bends), options);
  if (law === undefined || bridging === undefined || toughness === undefined || result === undefined) {
    throw new Error(`${one.label}: no stitches`);
  }
  const bond = inputOf(one, 'bondToughness').value;
  const steady = (work: number) => bond + densityOf(one) * work;
  const { median, low, high } = bridging.work;
  return {
    bond,
    law,
    steady: { nominal: steady(law.work), median: steady(median), low: steady(low), high: steady(high) },
    specimen: toughness.specimen,
    failures: bridging.failures,
    ...(onset && { onset: onset.load }),
    full: isFull(result),
    ...(one.mode === 'I' && { opening: openingOf(one, law, result, toughness.specimen.nominal) }),
  };
}

/** A case held by rods: only friction counts, and everything rises with it, so that its ends are those of the range. */
function rods(one: Case, bends: Bends): Prediction {
  const specimen = specimenOf(one) as PulledSpecimen;
  const at = (friction: number) => {
    const law = bridgingLaw(rodOf(one, friction));
    const rows = rowsAcross({
      ...rowsOf(one, specimen),
      width: specimen.width,
      curve: { opening: law.opening, force: law.force },
      failure: law.failure,
    });
    const result = pullCoupon(specimen, rows);
    const reading = readToughness(result, true).toughness;
    return { law, steady: specimen.bondToughness + densityOf(one) * law.work, result, reading };
  };
  const { median, low, high } = rodFrictions(bends);
  const [middle, least, most] = [at(median), at(low), at(high)];
  const column = (of: (one: typeof middle) => number): Column => ({
    nominal: of(middle),
    median: of(middle),
    low: of(least),
    high: of(most),
  });
  return {
    bond: specimen.bondToughness,
    law: middle.law,
    steady: column((one) => one.steady),
    specimen: column((one) => one.reading),
    failures: { [middle.law.failure]: 1 },
    full: isFull(middle.result),
    opening: openingOf(one, middle.law, middle.result, middle.reading),
  };
}

/** Everything foretold of a case by one of the laws. */
export const predict = (one: Case, bends: Bends): Prediction =>
  one.rod === undefined ? threads(one, bends) : rods(one, bends);

/** What plain arms come to. */
export interface ArmsFound {
  /** What limits the specimen at the middle values. */
  readonly first: Verdict;
  /** Share of the samples in which an arm breaks. */
  readonly share: number;
}

/** A case whose arms may break. */
export function armsOf(one: Case, bends: Bends): ArmsFound {
  const { verdict, shares } = predictCoupon(couponOf(one, bends, true), options);
  return { first: verdict.first, share: shares.arm };
}

/** Load at which the crack of a case without stitches begins to grow, N. */
export function bareOnset(one: Case): number {
  const { events } = pullCoupon(specimenOf(one) as PulledSpecimen, []);
  return events.find(({ kind }) => kind === 'bond')?.load ?? Number.NaN;
}
