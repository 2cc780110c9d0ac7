import { uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { calibrationNotes } from './calibrate.js';
import { couponNotes } from './coupon-notes.js';
import { couponLaw, patternMet } from './coupon-rows.js';
import { type CouponTests, weightsBy } from './foretell.js';
import { ownSources } from './predict-pulled.js';
import { bridgingRange, verdictShares } from './predicted-parts.js';
import { stitchNumbers } from './sample-coupon.js';
import type { Draw } from './samples.js';
import type { CouponPrediction, Estimated } from './types.js';
import {
  splitCoupon,
  type WedgeCoupon,
  type WedgeSplit,
  wedgeSamples,
  wedgeSplits,
  wedgeVerdict,
} from './wedge-samples.js';
import { weightedInterval } from './weighted.js';

/** Prediction of an edge that a wedge opens: splits of the first samples, each simulated. @throws as `simulateWedge` */
export function predictWedge(coupon: WedgeCoupon, draws: readonly Draw[], tests: CouponTests): CouponPrediction {
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
    ...(law && stitching && { bridging: bridgingRange(law, stitchNumbers('wedge', stitching, few), all) }),
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
