import type { CouponPrediction, Estimated, SpecimenResult } from '../../fracture/index.js';
import type { Interval } from '../../stitch/index.js';
import { type CouponResult, couponNotes, couponSources } from './coupons.js';

/** Whether the path of a number leads into what is foretold of changes and densities. */
export const asksForAdvice = (quantity: string): boolean =>
  /^coupons\.[^.]+\.simulated\.(changes|densities|pointOfNoReturn)(\.|$)/.test(quantity);

/** The coupon's part of the JSON document: SI numbers under the names of the contract, null for what cannot be told. */
export function couponData(result: CouponResult): Record<string, unknown> {
  const { model, prediction, gain = null } = result;
  const { title, coupon, arms, stitching = null, test } = model;
  return {
    ...(title === undefined ? {} : { title }),
    type: coupon.specimen.kind,
    arms,
    stitching,
    ...(test === undefined ? {} : { test }),
    simulated: { ...simulatedData(prediction), gain },
    notes: couponNotes(result),
    sources: couponSources(result),
  };
}

/** Without the middle value, which stands beside it. */
const interval = ({ median, low, high }: Interval): Interval => ({ median, low, high });

function simulatedData(prediction: CouponPrediction): Record<string, unknown> {
  const { peakForce, onset, verdict, shares, zone, discreteness, pointOfNoReturn, splitLength, wedge, runsThrough } =
    prediction;
  const { result, changes, densities, rows, penetrationDensity, calibrated = false } = prediction;
  return {
    peakForce: peakForce.nominal,
    peakForceInterval: interval(peakForce),
    onset: onset ?? null,
    toughness: toughnessData(prediction),
    ...(splitLength === undefined ? {} : splitData(splitLength)),
    ...(wedge === undefined ? {} : wedgeData(wedge)),
    ...(runsThrough === undefined ? {} : { runsThrough }),
    verdict: {
      first: verdict.first,
      load: verdict.load,
      next: verdict.next ?? null,
      margin: verdict.margin ?? null,
    },
    shares,
    zone: zone ?? null,
    discreteness: discreteness ?? null,
    pointOfNoReturn: pointOfNoReturn ?? null,
    penetrationDensity: penetrationDensity ?? null,
    calibrated,
    law: lawData(prediction),
    rows: rows.map(({ position, penetrations }) => ({ position, penetrations })),
    changes,
    densities: densities.map((point) => ({ ...point, steady: point.steady ?? null })),
    ...(result === undefined ? {} : courseData(result)),
  };
}

function toughnessData({ toughness }: CouponPrediction): Record<string, unknown> | null {
  if (toughness === undefined) return null;
  const { steady, specimen, ceiling = null } = toughness;
  return {
    steady: steady?.nominal ?? null,
    specimen: specimen.nominal,
    ceiling,
    interval: interval(specimen),
    steadyInterval: steady === undefined ? null : interval(steady),
  };
}

const splitData = (splitLength: Estimated) => ({
  splitLength: splitLength.nominal,
  splitLengthInterval: interval(splitLength),
});

/** A wedged edge at the middle values. */
const wedgeData = ({ arrested, naturalLength, armStrain }: NonNullable<CouponPrediction['wedge']>) => ({
  arrested,
  naturalLength,
  armStrain,
});

/** Force in one stitch against the opening of the crack at it. */
function lawData({ law }: CouponPrediction): Record<string, unknown> | null {
  if (law === undefined) return null;
  const { opening, force, peak, failure, measured = false } = law;
  return { opening, force, peak, failure, measured };
}

/** The test from its start to its end, at the middle values. */
const courseData = ({ states, events, resistance, energyError }: SpecimenResult) => ({
  states: states.map(({ displacement, load, crackLength, released = 0 }) => ({
    displacement,
    load,
    crackLength,
    released,
  })),
  events,
  resistance,
  energyError,
});
