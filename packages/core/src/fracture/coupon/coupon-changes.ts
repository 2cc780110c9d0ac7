import { SelvageError } from '../../problem/index.js';
import { bridgingParameters } from '../../stitch/index.js';
import type { PulledCoupon } from './anchors.js';
import { couponLaw, couponRows } from './coupon-rows.js';
import type { Middle } from './foretell.js';
import { pullCoupon } from './pull-coupon.js';
import { readToughness } from './reading.js';
import { changedCoupon } from './scale-coupon.js';
import type { CouponChange } from './types.js';

interface Change {
  readonly name: CouponChange['name'];
  readonly factor: number;
}

/**
 * What a change of one input would do at the middle of what is known: one simulation each, beside the one without it; elasticity ln(changed/as it is)/ln(factor). Changes that a coupon does
 * not allow, or whose simulation finds no equilibrium, are left out.
 */
export function couponChanges({ coupon, result: asIs, reading }: Middle): readonly CouponChange[] {
  const { penetration } = coupon.stitching ?? {};
  const { anchorEfficiency } = bridgingParameters({ ...penetration?.assumed, ...penetration?.parameters });
  return changesOf(coupon).flatMap((change) => {
    const { name, factor } = change;
    try {
      const { specimen, stitching } = changedCoupon(coupon, name, factor, anchorEfficiency) as PulledCoupon;
      const rows = couponRows(
        { specimen, ...(stitching && { stitching }) },
        stitching && couponLaw(specimen.kind, stitching),
      );
      const changed = pullCoupon(specimen, rows);
      const { toughness } = readToughness(changed, rows.length > 0);
      // Plus nothing: no elasticity is -0.
      const slope = (after: number, before: number): number => Math.log(after / before) / Math.log(factor) + 0;
      return {
        ...change,
        elasticity: {
          peakForce: slope(changed.peakForce, asIs.peakForce),
          toughness: slope(toughness, reading.toughness),
        },
        peakForce: changed.peakForce,
        toughness,
        first: changed.verdict.first,
      };
    } catch (error) {
      if (error instanceof SelvageError) return [];
      throw error;
    }
  });
}

/** Changes worth asking for: the anchor no stronger than the thread in the plane, or a fifth better where it is that already. */
function changesOf({ stitching }: PulledCoupon): readonly Change[] {
  const arms: readonly Change[] = [
    { name: 'armThickness', factor: 1.25 },
    { name: 'bondToughness', factor: 1.25 },
  ];
  if (stitching === undefined) return arms;
  const pattern: readonly Change[] = [
    { name: 'pitch', factor: 0.8 },
    { name: 'rowSpacing', factor: 0.8 },
  ];
  if (stitching.measured !== undefined) return [...pattern, ...arms];
  const { assumed, parameters, anchors = {} } = stitching.penetration;
  const { anchorEfficiency, sewnEfficiency } = bridgingParameters({ ...assumed, ...parameters });
  const better =
    anchorEfficiency < sewnEfficiency ? sewnEfficiency / anchorEfficiency : Math.min(1.2, 1 / anchorEfficiency);
  const { needleFace = 'surface', underFace = 'surface' } = anchors;
  const anchored = better > 1 && (needleFace === 'surface' || underFace === 'surface');
  return [
    ...pattern,
    { name: 'threadLinearDensity', factor: 1.5 },
    ...(anchored ? [{ name: 'anchorEfficiency', factor: better } as const] : []),
    ...arms,
  ];
}
