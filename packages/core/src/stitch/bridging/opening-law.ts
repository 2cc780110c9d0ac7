import type { BridgingCurve } from '../bridging-types.js';
import type { BridgingModel } from './bridging-model.js';
import { type GivingWay, givingWay, pullOutForce } from './failure-sites.js';
import { openingAt, stretchWork } from './slip.js';

/**
 * Chords per stretch of curve that is not straight. With equal steps of force a chord polygon of w = F^2/k loses 1/(4 n^2) of its area: 1e-4 at 50.
 */
const chords = 52;

/**
 * Force against opening of one penetration whose crack opens straight: slip from the crack plane outward, then full-length stretch, then
 * rupture (a drop to what still pulls out) and pull-out, F = q (h - slip), slip counted from the opening at rupture.
 */
export function openingCurve(model: BridgingModel, way: GivingWay = givingWay(model)): BridgingCurve {
  const curve: Growing = { opening: [0], force: [0] };
  const [first, second] = model.sides;
  const [held, otherHeld] = [first.slipResistance * first.depth, second.slipResistance * second.depth];
  const one = Math.min(held, otherHeld, way.force);
  const both = Math.min(Math.max(held, otherHeld), way.force);
  if (one > 0) rise(curve, model, 0, one, chords);
  if (both > one) rise(curve, model, one, both, chords);
  if (way.force > both) rise(curve, model, both, way.force, 1);
  const broken = openingAt(model, way.force);
  for (const slip of slipsOf(model, way)) {
    curve.opening.push(broken + slip);
    curve.force.push(pullOutForce(model, way, slip));
  }
  return curve;
}

interface Growing {
  readonly opening: number[];
  readonly force: number[];
}

/** Adds points at equal steps of force. */
function rise(curve: Growing, model: BridgingModel, from: number, to: number, steps: number): void {
  for (let i = 1; i <= steps; i++) {
    const level = i === steps ? to : from + ((to - from) * i) / steps;
    curve.opening.push(openingAt(model, level));
    curve.force.push(level);
  }
}

/** Slips between which the pull-out force is straight: from 0 to the depth of each side that pulls out at all. */
function slipsOf({ sides }: BridgingModel, { pullOut }: GivingWay): readonly number[] {
  const first = pullOut[0].share > 0 ? sides[0].depth : 0;
  const second = pullOut[1].share > 0 ? sides[1].depth : 0;
  const [near, far] = [Math.min(first, second), Math.max(first, second)];
  if (far === 0) return [0];
  return near === 0 || near === far ? [0, far] : [0, near, far];
}

/**
 * Work of one penetration whose crack opens straight, in closed form, J: stretch of both sides up to rupture and the pull-out work
 * q h^2/2 of the share of stitches that pull out.
 */
export function openingWork(model: BridgingModel, way: GivingWay = givingWay(model)): number {
  let work = 0;
  for (const i of [0, 1] as const) {
    const side = model.sides[i];
    work += stretchWork(side, way.force) + (way.pullOut[i].share * way.pullOut[i].resistance * side.depth ** 2) / 2;
  }
  return work;
}
