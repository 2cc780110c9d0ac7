import type { BridgingLaw } from '../../stitch/index.js';
import type { Working } from '../../working/index.js';
import type { BridgingRow, SpecimenResult } from '../types.js';
import { type AnchoredValue, anchoredModel, isFollowed } from './anchored-model.js';
import { type PulledCoupon, simulateDraw, simulateStrata } from './anchors.js';
import { couponWarnings } from './coupon-notes.js';
import { couponLaw, couponRows } from './coupon-rows.js';
import { pullCoupon } from './pull-coupon.js';
import { type Reading, readingNote, readToughness } from './reading.js';
import { type FastSample, fastSamples, sampledCoupon } from './sample-coupon.js';
import { type Draw, middleOfPriors } from './samples.js';

/** The samples of a pulled coupon. */
export interface Foretold {
  readonly samples: readonly FastSample[];
  /** Of each sample, by the fast model corrected by the strata. */
  readonly values: readonly AnchoredValue[];
  readonly model: (sample: FastSample) => AnchoredValue;
  /** Whether the fast model follows the simulations of the strata. */
  readonly followed: boolean;
}

/** Samples a coupon. @throws as the simulation of its kind where no stratum finds an equilibrium */
export function foretell(coupon: PulledCoupon, draws: readonly Draw[]): Foretold {
  const rows = rowsOf(coupon);
  const samples = fastSamples(coupon, rows, draws);
  const strata = simulateStrata(coupon, samples, draws);
  const anchors = strata.length > 0 ? strata : [simulateDraw(coupon, middleOfPriors())];
  const model = anchoredModel(anchors);
  return { samples, values: samples.map(model), model, followed: isFollowed(anchors) };
}

/** A coupon at the middle of what is known of it, simulated. */
export interface Middle {
  /** With bond, arms and stitch of the middle. */
  readonly coupon: PulledCoupon;
  readonly law?: BridgingLaw;
  readonly rows: readonly BridgingRow[];
  readonly result: SpecimenResult;
  readonly reading: Reading;
  /** As the fast model sees it. */
  readonly sample: FastSample;
}

/** Simulates a coupon at a middle. @throws as the simulation of its kind */
export function simulateMiddle(coupon: PulledCoupon, middle: Draw, working?: Working): Middle {
  const drawn = sampledCoupon(coupon, middle);
  const { specimen, stitching } = drawn;
  const law = stitching && couponLaw(specimen.kind, stitching, undefined, working?.part('stitch'));
  const rows = couponRows(drawn, law);
  const result = pullCoupon(specimen, rows, working);
  const [sample] = fastSamples(coupon, rows, [middle]) as [FastSample];
  const reading = readToughness(result, rows.length > 0, working?.part('reading'));
  working?.notes([...couponWarnings(coupon, rows.length), readingNote(reading)]);
  return { coupon: drawn, ...(law && { law }), rows, result, reading, sample };
}

function rowsOf(coupon: PulledCoupon): readonly BridgingRow[] {
  const { specimen, stitching } = coupon;
  return couponRows(coupon, stitching && couponLaw(specimen.kind, stitching));
}
