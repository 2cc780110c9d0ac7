import type { BridgingModel, BridgingSide } from './bridging-sides.js';
import { bendWork, letGo } from './yielding-bend.js';

/**
 * How far a side lets the thread out of the crack plane under a force there, m:
 * F^2/(2 EA q) while F <= q h, slip not having reached the anchor; then (F h - q h^2/2)/EA and what the anchor gives, C (F - q h) or, where
 * its bend yields, what that lets go.
 * @param force N, 0 or above
 */
export function drawnOut(side: BridgingSide, force: number): number {
  const { axialStiffness: EA, slipResistance: q, depth: h } = side;
  const held = q * h;
  if (force <= held) return force === 0 ? 0 : (force * force) / (2 * EA * q);
  const out = (force - held / 2) * (h / EA) + side.anchorCompliance * (force - held);
  return side.bend === undefined ? out : out + letGo(side.bend, force - held);
}

/** Work done by the force on what a side lets out, J: F^3/(3 EA q); then q^2 h^3/(3 EA) + (F^2 - q^2 h^2)(h/EA + C)/2, and at a bend. */
export function stretchWork(side: BridgingSide, force: number): number {
  const { axialStiffness: EA, slipResistance: q, depth: h } = side;
  const held = q * h;
  if (force <= held) return force === 0 ? 0 : force ** 3 / (3 * EA * q);
  const work = (held * held * h) / (3 * EA) + ((force - held) * (force + held) * (h / EA + side.anchorCompliance)) / 2;
  if (side.bend === undefined) return work;
  return work + held * letGo(side.bend, force - held) + bendWork(side.bend, force - held);
}

/** Opening of the crack under a force, both sides, m. */
export function openingAt(model: BridgingModel, force: number): number {
  return drawnOut(model.sides[0], force) + drawnOut(model.sides[1], force);
}
