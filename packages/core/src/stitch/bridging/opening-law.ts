import type { BridgingCurve } from '../bridging-types.js';
import type { BridgingModel } from './bridging-sides.js';
import { type GivingWay, givingWay, pullOutForce } from './failure-sites.js';
import { openingAt, stretchWork } from './slip.js';
import { floatLimit } from './yielding-bend.js';

/**
 * Chords per stretch of curve that is not straight. With equal steps of force a chord polygon of w = F^2/k loses 1/(4 n^2) of its area: 1e-4 at 50.
 */
const chords = 52;

/** Where only the thread on the face still slips: its part of the opening is small, and so is what chords lose of it. */
const floatChords = 20;

/**
 * Force against opening of one penetration whose crack opens straight: slip from the crack plane outward, then full-length stretch, then
 * rupture (a drop to what still pulls out) and pull-out, F = q (h - slip), slip counted from the opening at rupture.
 */
export function openingCurve(model: BridgingModel, way: GivingWay = givingWay(model)): BridgingCurve {
  const curve: Growing = { opening: [0], force: [0] };
  const { kinks, gripped, straightFrom } = kinksOf(model, way.force);
  let from = 0;
  for (const to of kinks) {
    if (to <= from) continue;
    rise(curve, model, from, to, to > straightFrom ? 1 : to > gripped ? floatChords : chords);
    from = to;
  }
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

interface Kinks {
  /** Forces between which the curve is smooth, rising, the peak last. */
  readonly kinks: readonly number[];
  /** Force at which slip has reached both anchors. */
  readonly gripped: number;
  /** Force from which the curve is made of straight lines. */
  readonly straightFrom: number;
}

function kinksOf({ sides }: BridgingModel, peak: number): Kinks {
  const kinks = [peak];
  let [gripped, straightFrom] = [0, 0];
  for (const { slipResistance, depth, bend } of sides) {
    const held = slipResistance * depth;
    let last = held;
    if (bend !== undefined) {
      last += floatLimit(bend);
      kinks.push(held + bend.from, held + bend.to, last);
    }
    kinks.push(held);
    gripped = Math.max(gripped, held);
    straightFrom = Math.max(straightFrom, last);
  }
  return { kinks: kinks.filter((force) => force <= peak).sort((a, b) => a - b), gripped, straightFrom };
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
  return sideWork(model.sides[0], way, 0) + sideWork(model.sides[1], way, 1);
}

/** The part of `openingWork` that a side takes, J. */
export function sideWork(side: BridgingModel['sides'][0], way: GivingWay, i: 0 | 1): number {
  return stretchWork(side, way.force) + (way.pullOut[i].share * way.pullOut[i].resistance * side.depth ** 2) / 2;
}
