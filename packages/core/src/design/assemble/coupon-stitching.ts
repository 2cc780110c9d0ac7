import type { CouponStitching } from '../../fracture/index.js';
import { fail } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import { hasUnderThread, stitchType } from '../../stitch/index.js';
import type { StitchingModel } from '../model.js';
import type { Design } from '../read.js';
import { defined } from './constituents.js';
import { own } from './context.js';
import { type CouponRows, rowsInCoupon } from './coupon-rows.js';
import type { Show } from './coupon-specimen.js';
import { penetrationOf } from './penetration.js';

/** Thicknesses of the arms, m, and of the laminate that the stitch plan names. */
export interface Stack {
  readonly arms: readonly [number, number];
  readonly planned?: { readonly name: string; readonly thickness: number };
}

/** A coupon and the plan of its stitches. */
export interface Stitched extends CouponRows {
  readonly stack: Stack;
}

/** The stitches of a coupon with what was assumed of them; the coupon has the keys of its type and the crack lies in it. @throws see {@link rowsInCoupon} */
export function couponStitching({ entry, path, plan, stack, show }: Stitched): {
  readonly stitching: CouponStitching;
  readonly notes: readonly Note[];
} {
  const [upper, lower] = stack.arms;
  const penetration = penetrationOf(plan, upper + lower, upper);
  const { legAngle, measured, measuredVariation } = plan.bridging;
  const { notes, ...places } = rowsInCoupon({ entry, path, plan, show });
  return {
    stitching: defined({ ...places, penetration, legAngle, measured, measuredVariation }),
    notes: [...notes, ...thicknessNotes(plan, stack, show)],
  };
}

/**
 * A computed law needs to know when the threads break and how they stretch.
 * @throws missing-key
 */
export function demandStrength(design: Design, { name, plan, bridging }: StitchingModel): void {
  if (bridging.measured !== undefined) return;
  const { needleThread, underThread = needleThread } = plan;
  const threads = hasUnderThread(stitchType(plan.type)) ? [needleThread, underThread] : [needleThread];
  for (const thread of threads) {
    const missing = (['tenacity', 'modulus'] as const).filter((key) => thread[key] === undefined);
    if (missing.length === 0) continue;
    const keys = missing.map((key) => `\`${key}\``).join(' and ');
    const declared = own(design.threads, thread.name) !== undefined;
    fail({
      code: 'missing-key',
      message: `thread \`${thread.name}\` of \`stitching.${name}\` has no ${keys}: what its stitches hold cannot be computed`,
      allowed: 'a thread with `tenacity` and `modulus`, or a measured curve under `bridging` of the stitch plan',
      ...(declared ? { also: [{ label: `thread ${thread.name}`, path: ['threads', thread.name] }] } : {}),
    });
  }
}

function thicknessNotes({ name }: StitchingModel, { arms: [upper, lower], planned }: Stack, show: Show): Note[] {
  const whole = upper + lower;
  if (planned === undefined || Math.abs(planned.thickness - whole) <= 1e-6 * whole) return [];
  const text = `the stitch goes through both arms, ${show(whole)}, and the crack ${show(upper)} below its needle side; laminate ${planned.name} of stitch plan ${name} is ${show(planned.thickness)} thick`;
  return [{ level: 'assumption', text }];
}
