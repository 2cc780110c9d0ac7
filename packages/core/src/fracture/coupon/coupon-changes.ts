import { SelvageError } from '../../problem/index.js';
import { bridgingParameters } from '../../stitch/index.js';
import type { AnchoredValue } from './anchored-model.js';
import type { PulledCoupon } from './anchors.js';
import { couponLaw, couponRows } from './coupon-rows.js';
import { pullCoupon } from './pull-coupon.js';
import { readToughness } from './reading.js';
import { type FastSample, fastSamples } from './sample-coupon.js';
import type { Draw } from './samples.js';
import { changedCoupon } from './scale-coupon.js';
import type { CouponChange } from './types.js';

interface Change {
  readonly name: CouponChange['name'];
  readonly factor: number;
}

/** Step of the differences, in the logarithm of the input. */
const step = 0.02;

/**
 * What a change of one input would do: elasticities by central differences of the fast model, values by one simulation each. Changes that a coupon does not allow, or whose simulation
 * finds no equilibrium, are left out.
 */
export function couponChanges(
  coupon: PulledCoupon,
  draw: Draw,
  model: (sample: FastSample) => AnchoredValue,
): readonly CouponChange[] {
  const { stitching } = coupon;
  const { anchorEfficiency, sewnEfficiency } = bridgingParameters(stitching?.penetration.parameters);
  const better =
    anchorEfficiency < sewnEfficiency ? sewnEfficiency / anchorEfficiency : Math.min(1.2, 1 / anchorEfficiency);
  const { needleFace = 'surface', underFace = 'surface' } = stitching?.penetration.anchors ?? {};
  const computed = stitching !== undefined && stitching.measured === undefined;
  const changes: Change[] = [
    ...(stitching === undefined
      ? []
      : ([
          { name: 'pitch', factor: 0.8 },
          { name: 'rowSpacing', factor: 0.8 },
        ] as const)),
    ...(computed ? [{ name: 'threadLinearDensity', factor: 1.5 } as const] : []),
    ...(computed && better > 1 && (needleFace === 'surface' || underFace === 'surface')
      ? [{ name: 'anchorEfficiency', factor: better } as const]
      : []),
    { name: 'armThickness', factor: 1.25 },
    { name: 'bondToughness', factor: 1.25 },
  ];
  const with_ = ({ name, factor }: Change): PulledCoupon =>
    changedCoupon(coupon, name, factor, anchorEfficiency) as PulledCoupon;
  return changes.flatMap((change) => {
    try {
      const near = [-1, 1].map((side) =>
        fastOf(with_({ name: change.name, factor: Math.exp(side * step) }), draw, model),
      );
      const slope = (of: (value: AnchoredValue) => number): number =>
        Math.log(of(near[1] as AnchoredValue) / of(near[0] as AnchoredValue)) / (2 * step);
      const { result, rows } = pulled(with_(change));
      return [
        {
          ...change,
          elasticity: { peakForce: slope((one) => one.peakForce), toughness: slope((one) => one.toughness) },
          peakForce: result.peakForce,
          toughness: readToughness(result, rows > 0).toughness,
          first: result.verdict.first,
        },
      ];
    } catch (error) {
      if (error instanceof SelvageError) return [];
      throw error;
    }
  });
}

function fastOf(coupon: PulledCoupon, draw: Draw, model: (sample: FastSample) => AnchoredValue): AnchoredValue {
  const rows = rowsOf(coupon);
  const [sample] = fastSamples(coupon, rows, [draw]);
  return model(sample as FastSample);
}

function rowsOf(coupon: PulledCoupon) {
  const { specimen, stitching } = coupon;
  return couponRows(coupon, stitching && couponLaw(specimen.kind, stitching));
}

function pulled(coupon: PulledCoupon) {
  const rows = rowsOf(coupon);
  return { result: pullCoupon(coupon.specimen, rows), rows: rows.length };
}
