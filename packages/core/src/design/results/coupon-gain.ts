import type { Coupon, CouponPrediction, CouponSpecimen } from '../../fracture/index.js';
import type { CouponModel } from '../model.js';

/** A coupon and what is foretold of it. */
interface Foretold {
  readonly model: CouponModel;
  readonly prediction: CouponPrediction;
}

/** Sizes written in different units are the same within this share. */
const rounding = 1e-9;

/** Whether two values, numbers within rounding, say the same. */
function same(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number')
    return Math.abs(a - b) <= rounding * Math.max(Math.abs(a), Math.abs(b));
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].every((key) => same((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]));
}

/** What a specimen without stitches is known by; its width and how far it goes on do not change what its bond shows. */
function decisive(specimen: CouponSpecimen): Record<string, unknown> {
  const { kind, arms, bondToughness, crackLength } = specimen;
  const own =
    specimen.kind === 'wedge'
      ? { opening: specimen.opening, depth: specimen.depth }
      : specimen.kind === 'enf'
        ? { span: specimen.span, loadSpan: specimen.loadSpan ?? 0, friction: specimen.friction ?? 0 }
        : {};
  return { kind, arms, bondToughness, crackLength, ...own };
}

/** Whether one coupon is the other without its stitches. */
export const isUnstitchedTwin = (plain: Coupon, stitched: Coupon): boolean =>
  plain.stitching === undefined &&
  stitched.stitching !== undefined &&
  same(plain.bondToughnessRange, stitched.bondToughnessRange) &&
  same(decisive(plain.specimen), decisive(stitched.specimen));

/**
 * What the stitches of a coupon gain over the same coupon without them, by the medians: its toughness over that one's; of a wedged edge the split of that
 * one over its own.
 * @returns undefined where the design has no such coupon, or a split has no end to compare
 */
export function couponGain(one: Foretold, all: readonly Foretold[]): number | undefined {
  const plain = all.find(({ model }) => isUnstitchedTwin(model.coupon, one.model.coupon))?.prediction;
  const { toughness, splitLength: split } = one.prediction;
  if (toughness !== undefined && plain?.toughness !== undefined)
    return toughness.specimen.median / plain.toughness.specimen.median;
  const plainSplit = plain?.splitLength;
  if (split === undefined || plainSplit === undefined || !ends(split.median, one) || !ends(plainSplit.median, one))
    return undefined;
  return plainSplit.median / split.median;
}

/** A split that goes through the whole depth would be longer in a deeper bond. */
const ends = (split: number, { model: { coupon } }: Foretold): boolean =>
  split > 0 && coupon.specimen.kind === 'wedge' && split < coupon.specimen.depth * (1 - rounding);
