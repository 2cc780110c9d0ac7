import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { PulledCoupon } from './anchors.js';
import { couponChanges } from './coupon-changes.js';
import { couponDensities } from './coupon-densities.js';
import { couponNotes, distantRowsNote } from './coupon-notes.js';
import { patternMet, stitchedGrowth } from './coupon-rows.js';
import { fastValue } from './fast-model.js';
import { type Foretold, foretell, type Middle, simulateMiddle } from './foretell.js';
import { type CouponTests, knownOf } from './known.js';
import { pointOfNoReturn } from './no-return.js';
import {
  bridgingRange,
  couponDiscreteness,
  couponToughness,
  couponZone,
  steadyValue,
  verdictShares,
} from './predicted-parts.js';
import { readingNote } from './reading.js';
import type { FastSample } from './sample-coupon.js';
import type { Draw } from './samples.js';
import { spreadOf } from './spread.js';
import type { CouponPrediction } from './types.js';

/** Prediction of a coupon that a machine pulls or bends. @throws as the simulation of its kind */
export function predictPulled(
  coupon: PulledCoupon,
  draws: readonly Draw[],
  tests: CouponTests,
  advice: boolean,
): CouponPrediction {
  const all = foretell(coupon, draws);
  const known = knownOf(coupon, tests, draws, all.values);
  const { weights } = known;
  const middle = simulateMiddle(coupon, known.middle);
  const { law, rows, result, reading } = middle;
  const { specimen } = middle.coupon;
  const bridged = rows.length > 0 ? middle.coupon.stitching : undefined;
  const measured = bridged?.measured !== undefined;
  const plain = bridged && law && couponToughness(middle.coupon, bridged, law);
  const zone = plain && couponZone(plain, result, reading, measured);
  const discreteness = plain && bridged && couponDiscreteness(plain, bridged);
  const steady = steadyValue(middle.coupon, all.values, weights, plain, zone);
  const spread = spreadOf(coupon, draws, all, known, middle);
  const bond = result.events.find(({ kind }) => kind === 'bond');
  const met = bridged && patternMet(bridged);
  const { ceiling } = fastValue(middle.sample.coupon);
  const advised = advice ? adviceOf(middle, all, weights) : { changes: [], densities: [], notes: [] };
  const { notes: furtherNotes, ...further } = advised;
  return {
    coupon,
    rows,
    ...(law && { law }),
    ...(law && bridged && { bridging: bridgingRange(law, stitchSamples(all.samples), weights) }),
    ...(met && { penetrationDensity: met.density }),
    result,
    ...(bond && { onset: { load: bond.load, displacement: bond.displacement } }),
    verdict: result.verdict,
    shares: verdictShares(spread.firsts, spread.weights),
    peakForce: { nominal: result.peakForce, ...spread.peakForce },
    toughness: {
      ...(steady.value && { steady: steady.value }),
      specimen: { nominal: reading.toughness, ...spread.toughness },
      ...(specimen.kind !== 'enf' && Number.isFinite(ceiling) && { ceiling }),
    },
    ...(zone && { zone }),
    ...(discreteness && { discreteness: discreteness.ratio }),
    ...further,
    ...(known.calibrated && { calibrated: true as const }),
    notes: uniqueNotes([
      ...(law?.notes ?? []),
      ...result.notes,
      ...(plain?.notes ?? []),
      ...steady.notes,
      ...(plain && discreteness ? distantRowsNote(discreteness, reading, plain) : []),
      readingNote(reading),
      ...couponNotes(coupon, spread.firsts.length, rows.length),
      ...spread.notes,
      ...known.notes,
      ...furtherNotes,
    ]),
    sources: uniqueSources(law?.sources ?? [], result.sources, plain?.sources ?? [], ownSources),
  };
}

/** Changes, densities and the point of no return at the middle of what is known. */
function adviceOf(
  middle: Middle,
  { samples, model }: Foretold,
  weights: readonly number[],
): Pick<CouponPrediction, 'changes' | 'densities' | 'pointOfNoReturn'> & { readonly notes: readonly Note[] } {
  const changes = couponChanges(middle);
  const { coupon, rows } = middle;
  const { specimen, stitching } = coupon;
  if (stitching === undefined || rows.length === 0) return { changes, densities: [], notes: [] };
  const { density } = patternMet(stitching);
  const measured = stitching.measured !== undefined;
  const room = specimen.kind === 'enf' ? undefined : { length: stitchedGrowth(specimen, stitching), measured };
  const densities = couponDensities(density, samples, weights, model, room);
  return { changes, densities, ...pointOfNoReturn(middle, density, model) };
}

function stitchSamples(samples: readonly FastSample[]) {
  return samples.flatMap(({ coupon: { stitches }, failure }) =>
    stitches && failure ? [{ ...stitches, failure }] : [],
  );
}

/** Of every prediction. */
export const ownSources: readonly SourceKey[] = ['common-practice', 'selvage-2026-derivation'];
