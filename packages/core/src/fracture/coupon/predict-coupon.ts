import { type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { BridgingLaw } from '../../stitch/index.js';
import type { SpecimenResult } from '../types.js';
import { type AnchoredValue, anchoredModel } from './anchored-model.js';
import { anchorOf, type PulledCoupon, simulateStrata } from './anchors.js';
import { bearsOn, calibrationNotes, checkTest, type ForetoldTest, testWeights } from './calibrate.js';
import { couponChanges } from './coupon-changes.js';
import { couponDensities, noReturn } from './coupon-densities.js';
import { couponNotes } from './coupon-notes.js';
import { couponLaw, couponRows, patternMet, stitchedGrowth } from './coupon-rows.js';
import { fastValue } from './fast-model.js';
import { bridgingRange, couponToughness, couponZone, steadyValue, verdictShares } from './predicted-parts.js';
import { pullCoupon } from './pull-coupon.js';
import { type Reading, readingNote, readToughness } from './reading.js';
import { checkBondRange, type FastSample, fastSamples, stitchNumbers } from './sample-coupon.js';
import { type Draw, drawSamples, singleValues } from './samples.js';
import type { Coupon, CouponPrediction, CouponTest, Estimated } from './types.js';
import {
  splitCoupon,
  type WedgeCoupon,
  type WedgeSplit,
  wedgeSamples,
  wedgeSplits,
  wedgeVerdict,
} from './wedge-samples.js';
import { weightedInterval } from './weighted.js';

/** How a prediction is made. */
export interface PredictOptions {
  /** Whole, 10 to 100 000; 1000 when not given. */
  readonly samples?: number;
  /** Whole; 1 when not given. */
  readonly seed?: number;
  /** Test results that narrow the ranges, each with the coupon that was tested. */
  readonly tests?: readonly { readonly coupon: Coupon; readonly test: CouponTest }[];
  /** False leaves out changes, densities and the point of no return. */
  readonly advice?: boolean;
}

/** A pulled coupon simulated with its single values and sampled. */
interface Foretold {
  readonly law?: BridgingLaw;
  readonly rows: CouponPrediction['rows'];
  readonly result: SpecimenResult;
  readonly reading: Reading;
  readonly nominal: FastSample;
  readonly samples: readonly FastSample[];
  readonly values: readonly AnchoredValue[];
  readonly model: (sample: FastSample) => AnchoredValue;
  readonly nearby: (sample: FastSample) => AnchoredValue;
}

/**
 * What a test of a coupon will show, with its uncertainty, what limits it, and what would change it.
 *
 * One simulation with the single values; samples of stitch, bond and arms through the fast model, corrected by simulations of its strata; what tests of coupons with
 * the same stitch say, as weights of the samples.
 *
 * @param coupon specimen and stitching; SI
 * @returns see {@link CouponPrediction}
 * @throws out-of-range samples, seed, a test or a bond range that is none; and as the simulation of its kind, `rowsAcross` and `bridgingLaw`
 * @throws not-computable a test that ends before the crack grows, or no equilibrium
 * @throws missing-key thread without tenacity or modulus
 * @source derived in docs/theory/coupon-prediction.md
 */
export function predictCoupon(coupon: Coupon, options: PredictOptions = {}): CouponPrediction {
  const { samples = 1000, seed = 1, tests = [] } = options;
  for (const { test } of tests) checkTest(test);
  checkBondRange(coupon);
  const draws = drawSamples({ samples, seed });
  const bearing = tests.filter((one) => bearsOn(one.coupon, coupon));
  return isWedge(coupon)
    ? predictWedge(coupon, draws, bearing)
    : predictPulled(coupon as PulledCoupon, draws, bearing, options.advice ?? true);
}

const isWedge = (coupon: Coupon): coupon is WedgeCoupon => coupon.specimen.kind === 'wedge';

/** The draw of the single values of a coupon. */
function singleDraw({ specimen: { bondToughness }, bondToughnessRange: range }: Coupon): Draw {
  return singleValues(range ?? { low: bondToughness, high: bondToughness }, bondToughness);
}

function foretell(coupon: PulledCoupon, draws: readonly Draw[]): Foretold {
  const { specimen, stitching } = coupon;
  const law = stitching && couponLaw(specimen.kind, stitching);
  const rows = couponRows(coupon, law);
  const result = pullCoupon(specimen, rows);
  const [nominal] = fastSamples(coupon, rows, [singleDraw(coupon)]) as [FastSample];
  const samples = fastSamples(coupon, rows, draws);
  const bridged = rows.length > 0;
  const own = anchorOf(nominal.coupon, result, bridged);
  const anchors = simulateStrata(coupon, samples, draws);
  const model = anchoredModel(anchors.length > 0 ? anchors : [own]);
  return {
    ...(law && { law }),
    rows,
    result,
    reading: readToughness(result, bridged),
    nominal,
    samples,
    values: samples.map(model),
    model,
    nearby: anchoredModel([own]),
  };
}

type Tests = NonNullable<PredictOptions['tests']>;

/** Weights of the samples by the tests. */
function weightsBy(tests: Tests, draws: readonly Draw[]): readonly number[] {
  const foretold = tests.map(({ coupon, test }): ForetoldTest => {
    const { values } = foretell(coupon as PulledCoupon, draws);
    return { test, peakForces: values.map(({ peakForce }) => peakForce) };
  });
  return testWeights(foretold, draws.length);
}

function predictPulled(coupon: PulledCoupon, draws: readonly Draw[], tests: Tests, advice: boolean): CouponPrediction {
  const { specimen, stitching } = coupon;
  const all = foretell(coupon, draws);
  const { law, rows, result, reading, values, nominal } = all;
  const weights = weightsBy(tests, draws);
  const estimated = (value: number, of: (one: AnchoredValue) => number): Estimated => ({
    nominal: value,
    ...weightedInterval(values.map(of), weights),
  });
  const bridged = rows.length > 0 ? stitching : undefined;
  const measured = bridged?.measured !== undefined;
  const plain = bridged && law && couponToughness(coupon, bridged, law);
  const zone = plain && couponZone(plain, result, reading, measured);
  const steady = steadyValue(coupon, values, weights, plain, zone);
  const bond = result.events.find(({ kind }) => kind === 'bond');
  const met = bridged && patternMet(bridged);
  const room = bridged && specimen.kind !== 'enf' ? { length: stitchedGrowth(specimen, bridged), measured } : undefined;
  const beyond = advice && met ? noReturn(coupon, nominal, all.nearby) : undefined;
  const { ceiling } = fastValue(nominal.coupon);
  return {
    coupon,
    rows,
    ...(law && { law }),
    ...(law && bridged && !measured && { bridging: bridgingRange(law, stitchSamples(all.samples), weights) }),
    ...(met && { penetrationDensity: met.density }),
    result,
    ...(bond && { onset: { load: bond.load, displacement: bond.displacement } }),
    verdict: result.verdict,
    shares: verdictShares(
      values.map(({ first }) => first),
      weights,
    ),
    peakForce: estimated(result.peakForce, (one) => one.peakForce),
    toughness: {
      ...(steady.value && { steady: steady.value }),
      specimen: estimated(reading.toughness, (one) => one.toughness),
      ...(specimen.kind !== 'enf' && Number.isFinite(ceiling) && { ceiling }),
    },
    ...(zone && { zone }),
    ...(plain?.discreteness && { discreteness: plain.discreteness.ratio }),
    changes: advice ? couponChanges(coupon, singleDraw(coupon), all.nearby) : [],
    ...(beyond !== undefined && met && { pointOfNoReturn: beyond * met.density }),
    densities: advice && met ? couponDensities(met.density, all.samples, weights, all.model, room) : [],
    ...(tests.length > 0 && { calibrated: true as const }),
    notes: uniqueNotes([
      ...(law?.notes ?? []),
      ...result.notes,
      ...(plain?.notes ?? []),
      ...steady.notes,
      readingNote(reading),
      ...couponNotes(coupon, draws.length, rows.length),
      ...(tests.length > 0 ? calibrationNotes(tests.length, weights) : []),
    ]),
    sources: uniqueSources(law?.sources ?? [], result.sources, plain?.sources ?? [], ownSources),
  };
}

function stitchSamples(samples: readonly FastSample[]) {
  return samples.flatMap(({ coupon: { stitches }, failure }) =>
    stitches && failure ? [{ ...stitches, failure }] : [],
  );
}

const ownSources: readonly SourceKey[] = ['common-practice', 'selvage-2026-derivation'];

function predictWedge(coupon: WedgeCoupon, draws: readonly Draw[], tests: Tests): CouponPrediction {
  const { stitching } = coupon;
  const { split, rows } = splitCoupon(coupon);
  const law = stitching && couponLaw('wedge', stitching);
  const few = draws.slice(0, wedgeSplits);
  const foretold = wedgeSamples(coupon, few);
  const all = weightsBy(tests, few);
  const weights = all.filter((_, i) => foretold[i] !== undefined);
  const splits = foretold.filter((one) => one !== undefined);
  const met = stitching && rows.length > 0 ? patternMet(stitching) : undefined;
  const range = (nominal: number, of: (one: WedgeSplit) => number): Estimated => ({
    nominal,
    ...weightedInterval(splits.length > 0 ? splits.map(of) : [nominal], splits.length > 0 ? weights : [1]),
  });
  const first = wedgeVerdict(split, coupon);
  return {
    coupon,
    rows,
    ...(law && { law }),
    ...(law &&
      stitching &&
      !law.measured && { bridging: bridgingRange(law, stitchNumbers('wedge', stitching, few), all) }),
    ...(met && { penetrationDensity: met.density }),
    wedge: split,
    verdict: { first, load: split.load },
    shares: verdictShares(
      splits.length > 0 ? splits.map((one) => one.first) : [first],
      splits.length > 0 ? weights : [1],
    ),
    peakForce: range(split.load, ({ load }) => load),
    splitLength: range(split.splitLength, ({ splitLength }) => splitLength),
    changes: [],
    densities: [],
    ...(tests.length > 0 && { calibrated: true as const }),
    notes: uniqueNotes([
      ...(law?.notes ?? []),
      ...split.notes,
      ...couponNotes(coupon, few.length, rows.length),
      ...(tests.length > 0 ? calibrationNotes(tests.length, all) : []),
    ]),
    sources: uniqueSources(law?.sources ?? [], split.sources, ownSources),
  };
}
