import {
  type BridgingLaw,
  type BridgingPath,
  bridgingLaw,
  type PenetrationInput,
  penetrationDensity,
  rowsMetAcross,
  rowsMetAlong,
  showMeasured,
} from '../../stitch/index.js';
import type { Working } from '../../working/index.js';
import { rowsAcross } from '../specimen/rows-across.js';
import type { BridgingRow } from '../types.js';
import type { Coupon, CouponSpecimen, CouponStitching } from './types.js';

/** How the crack moves at the stitches: sliding in a bent specimen, else straight open or at the lean of the legs; undefined is straight open. */
export function pathOf(kind: CouponSpecimen['kind'], { legAngle = 0 }: CouponStitching): BridgingPath | undefined {
  if (kind === 'enf') return { angle: 90 };
  return legAngle > 0 ? { angle: legAngle } : undefined;
}

/** Law of one penetration of a coupon: the measured one, or that computed from the thread, with other parameters where given. */
export function couponLaw(
  kind: CouponSpecimen['kind'],
  stitching: CouponStitching,
  parameters: PenetrationInput['parameters'] = stitching.penetration.parameters,
  working?: Working,
): BridgingLaw {
  const { measured } = stitching;
  if (measured !== undefined) {
    if (working !== undefined) showMeasured(measured, working);
    return measured;
  }
  const path = pathOf(kind, stitching);
  return bridgingLaw({ ...stitching.penetration, ...(parameters && { parameters }), ...(path && { path }) }, working);
}

/** Rows of a coupon with a law for each penetration. @throws out-of-range see `rowsAcross` */
export function couponRows({ specimen, stitching }: Coupon, law: BridgingLaw | undefined): readonly BridgingRow[] {
  if (stitching === undefined || law === undefined) return [];
  const { pattern, growth, from, to, origin } = stitching;
  const curve = { opening: law.opening, force: law.force };
  return rowsAcross({ pattern, growth, width: specimen.width, from, to, origin, curve, failure: law.failure });
}

/** What a front meets in a pattern: passes of the needle per area, distance of rows (undefined for a single one), passes per length of front in a row. */
export interface PatternMet {
  /** 1/m² */
  readonly density: number;
  /** m */
  readonly spacing?: number;
  /** 1/m */
  readonly perFront: number;
}

/** @throws out-of-range see `checkPattern` */
export function patternMet({ pattern, growth }: CouponStitching): PatternMet {
  const met = growth === 'across' ? rowsMetAcross(pattern) : rowsMetAlong(pattern);
  const density = penetrationDensity(pattern);
  if (met !== undefined) return { density, spacing: met.spacing, perFront: met.perFrontLength };
  const pitch = pattern.kind === 'rows' ? (pattern.rows[0]?.pitch ?? 1) : pattern.pitch;
  return { density, perFront: 1 / pitch };
}

/** Where the crack of a coupon begins and can grow to, m. */
export function growthRange(specimen: CouponSpecimen): { readonly from: number; readonly to: number } {
  if (specimen.kind === 'wedge') return { from: 0, to: specimen.depth };
  const end = specimen.kind === 'enf' ? (specimen.span + (specimen.loadSpan ?? 0)) / 2 : specimen.length;
  return { from: specimen.crackLength, to: Math.min(end, specimen.until?.crackLength ?? end) };
}

/** Length among the stitches through which the crack can grow, m; 0 where it meets none. */
export function stitchedGrowth(specimen: CouponSpecimen, { from, to }: CouponStitching): number {
  const range = growthRange(specimen);
  return Math.max(0, Math.min(to, range.to) - Math.max(from, range.from));
}
