import { type Note, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { couponNotes } from './coupon-notes.js';
import { couponLaw, patternMet } from './coupon-rows.js';
import { drawByWeight } from './draw-by-weight.js';
import { type CouponTests, knownOf } from './known.js';
import { ownSources } from './predict-pulled.js';
import { bridgingRange, verdictShares } from './predicted-parts.js';
import { sampledCoupon, stitchNumbers } from './sample-coupon.js';
import type { Draw } from './samples.js';
import type { CouponPrediction, Estimated } from './types.js';
import { splitCoupon, type WedgeCoupon, wedgeSamples, wedgeSplit, wedgeSplits } from './wedge-samples.js';
import { weightedInterval } from './weighted.js';

/** Prediction of an edge that a wedge opens: some samples, each simulated, that stand for all. @throws as `simulateWedge` */
export function predictWedge(coupon: WedgeCoupon, draws: readonly Draw[], tests: CouponTests): CouponPrediction {
  const known = knownOf(coupon, tests, draws);
  const middle = sampledCoupon(coupon, known.middle);
  const { split: wedge, rows } = splitCoupon(middle);
  const { stitching } = middle;
  const law = stitching && couponLaw('wedge', stitching);
  const few = drawByWeight(known.weights, wedgeSplits).map((i) => draws[i] as Draw);
  const own = wedgeSplit(wedge, middle);
  const found = wedgeSamples(coupon, few);
  const splits = found.length > 0 ? found : [own];
  const even = splits.map(() => 1);
  const met = stitching && rows.length > 0 ? patternMet(stitching) : undefined;
  const range = (values: readonly number[]) => weightedInterval(values, even);
  const runsThrough = splits.filter((one) => !one.arrested).length / splits.length;
  return {
    coupon,
    rows,
    ...(law && { law }),
    ...(law &&
      stitching && {
        bridging: bridgingRange(
          law,
          stitchNumbers('wedge', stitching, few),
          few.map(() => 1),
        ),
      }),
    ...(met && { penetrationDensity: met.density }),
    wedge,
    verdict: { first: own.first, load: own.load },
    shares: verdictShares(
      splits.map((one) => one.first),
      even,
    ),
    peakForce: { nominal: own.load, ...range(splits.map(({ load }) => load)) },
    splitLength: stopOf(own, range(splits.map(({ splitLength }) => splitLength))),
    runsThrough,
    changes: [],
    densities: [],
    ...(known.calibrated && { calibrated: true as const }),
    notes: uniqueNotes([
      ...(law?.notes ?? []),
      ...wedge.notes,
      ...couponNotes(coupon, few.length, rows.length),
      ...throughNotes(runsThrough),
      ...known.notes,
    ]),
    sources: uniqueSources(law?.sources ?? [], wedge.sources, ownSources),
  };
}

/** Where a split stops; where that of the middle values runs through so does the median. */
function stopOf(
  { splitLength, arrested }: { readonly splitLength: number; readonly arrested: boolean },
  range: Omit<Estimated, 'nominal'>,
): Estimated {
  const through = arrested ? {} : { median: splitLength, high: splitLength };
  return { nominal: splitLength, ...range, ...through };
}

function throughNotes(share: number): readonly Note[] {
  if (share === 0) return [];
  const percent = Math.max(1, Math.round(100 * share));
  const text = `In ${percent} % of the samples the edge splits through its whole depth: where the split stops counts as the depth there.`;
  return [{ level: 'warning', text }];
}
