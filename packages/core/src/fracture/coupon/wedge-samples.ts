import { SelvageError } from '../../problem/index.js';
import type { Working } from '../../working/index.js';
import { simulateWedge, type WedgeResult } from '../specimen/wedge.js';
import type { Verdict } from '../types.js';
import { couponLaw, couponRows } from './coupon-rows.js';
import { sampledCoupon } from './sample-coupon.js';
import type { Draw } from './samples.js';
import type { Coupon, CouponSpecimen } from './types.js';

/** A coupon that a wedge opens. */
export type WedgeCoupon = Coupon & { readonly specimen: Extract<CouponSpecimen, { readonly kind: 'wedge' }> };

/** Splits simulated: each takes some milliseconds. */
export const wedgeSplits = 60;

/** What limits a split: the arm that breaks, else the rows that broke, else the bond that stops it. */
function wedgeVerdict({ broken, armStrain, rows }: WedgeResult, { specimen }: WedgeCoupon): Verdict {
  const limit = Math.min(
    ...specimen.arms.map(({ failureStrain: strain }) =>
      strain ? Math.min(strain.tension, strain.compression) : Number.POSITIVE_INFINITY,
    ),
  );
  if (armStrain > limit) return 'arm';
  return rows.length > 0 ? (broken.at(-1)?.kind ?? 'bond') : 'bond';
}

/** One split of a sample; one that runs through the whole depth counts as that deep. */
export interface WedgeSplit {
  readonly splitLength: number;
  readonly arrested: boolean;
  readonly load: number;
  readonly first: Verdict;
}

/** What counts of a simulated split. */
export function wedgeSplit(split: WedgeResult, coupon: WedgeCoupon): WedgeSplit {
  const { arrested, load } = split;
  const splitLength = arrested ? split.splitLength : coupon.specimen.depth;
  return { splitLength, arrested, load, first: wedgeVerdict(split, coupon) };
}

/** Simulates a wedge with its rows. @throws as `simulateWedge` */
export function splitCoupon(
  coupon: WedgeCoupon,
  working?: Working,
): {
  readonly split: WedgeResult;
  readonly rows: ReturnType<typeof couponRows>;
} {
  const { specimen, stitching } = coupon;
  const rows = couponRows(coupon, stitching && couponLaw('wedge', stitching, undefined, working?.part('stitch')));
  return { split: simulateWedge({ ...specimen, rows }, working), rows };
}

/** Splits of samples, each simulated. One without equilibrium is left out. */
export function wedgeSamples(coupon: WedgeCoupon, draws: readonly Draw[]): readonly WedgeSplit[] {
  return draws.flatMap((draw) => {
    const drawn = sampledCoupon(coupon, draw);
    try {
      return [wedgeSplit(splitCoupon(drawn).split, drawn)];
    } catch (error) {
      if (error instanceof SelvageError) return [];
      throw error;
    }
  });
}
