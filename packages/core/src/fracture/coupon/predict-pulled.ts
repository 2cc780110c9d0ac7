import { type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { AnchoredValue } from './anchored-model.js';
import type { PulledCoupon } from './anchors.js';
import { calibrationNotes } from './calibrate.js';
import { couponChanges } from './coupon-changes.js';
import { couponDensities, noReturn } from './coupon-densities.js';
import { couponNotes } from './coupon-notes.js';
import { patternMet, stitchedGrowth } from './coupon-rows.js';
import { fastValue } from './fast-model.js';
import { type CouponTests, foretell, singleDraw, weightsBy } from './foretell.js';
import { bridgingRange, couponToughness, couponZone, steadyValue, verdictShares } from './predicted-parts.js';
import { readingNote } from './reading.js';
import type { FastSample } from './sample-coupon.js';
import type { Draw } from './samples.js';
import type { CouponPrediction, Estimated } from './types.js';
import { weightedInterval } from './weighted.js';

/** Prediction of a coupon that a machine pulls or bends. @throws as the simulation of its kind */
export function predictPulled(
  coupon: PulledCoupon,
  draws: readonly Draw[],
  tests: CouponTests,
  advice: boolean,
): CouponPrediction {
  const { specimen, stitching } = coupon;
  const all = foretell(coupon, draws);
  const { law, rows, result, reading, values, nominal } = all;
  const weights = weightsBy(tests, draws, { coupon, values });
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
    ...(law && bridged && { bridging: bridgingRange(law, stitchSamples(all.samples), weights) }),
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

/** Of every prediction. */
export const ownSources: readonly SourceKey[] = ['common-practice', 'selvage-2026-derivation'];
