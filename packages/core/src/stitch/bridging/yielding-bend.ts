import type { BridgingParameters } from './bridging-parameters.js';
import type { Bundle } from './bundle.js';

/** Thread along the face from a hole to the middle between two holes, all legs of the hole together. SI units. */
export interface Float {
  /** m; its far end does not move, since the next hole draws there as well. */
  readonly length: number;
  /** N */
  readonly axialStiffness: number;
  /** Friction per length, N/m. */
  readonly slipResistance: number;
}

/** A bend over a face that gives way: the face yields under it and the thread on the face follows. Forces are those at the bend. */
export interface YieldingBend {
  /** Force from which the thread cuts into the face, N. */
  readonly from: number;
  /** Force from which the arc finds no more room, N, not below `from`. */
  readonly to: number;
  /** Force per length of the bends at which the face yields, N/m. */
  readonly resistance?: number;
  /** Length of thread set free per force between the two, m/N. */
  readonly compliance: number;
  /** Share of the force that friction around the bend passes on to the thread on the face, 0 to 1. */
  readonly passed: number;
  readonly float?: Float;
}

/** Length of thread that a quarter turn of radius 1 cuts off its corner. */
const cutCorner = 2 - Math.PI / 2;

/**
 * The bend of a penetration's legs over a face that yields at q_b = p0 kappa b per length of each leg.
 *
 * Under tension S each leg lies in an arc of radius R = S/q_b, once that is more than the radius R0 with which it was cured; the corner
 * cut sets (2 - pi/2) (R - R0) free. R finds room up to the depth of the side and half the pitch. What friction around the quarter turn lets
 * through, S e^(-mu pi/2), draws thread from the face.
 * @param room the most that R can be, m
 * @param halfPitch from the hole to the middle of the thread on the face, m; without it that thread does not give way
 */
export function yieldingBend(
  bundle: Bundle,
  parameters: BridgingParameters,
  room: number,
  halfPitch?: number,
): YieldingBend {
  const { legs, legDiameter: d, axialStiffness } = bundle;
  const resistance = parameters.bearingPressure * parameters.faceConfinement * parameters.bearingWidth * legs * d;
  const from = resistance * parameters.bendRadius * d;
  const bend = {
    resistance,
    from,
    to: Math.max(from, resistance * Math.min(room, halfPitch ?? room)),
    compliance: cutCorner / resistance,
    passed: Math.exp((-parameters.bendFriction * Math.PI) / 2),
  };
  if (halfPitch === undefined) return bend;
  const slipResistance = parameters.frictionStress * parameters.floatGrip * Math.PI * legs * d;
  return { ...bend, float: { length: halfPitch, axialStiffness, slipResistance } };
}

/** Force at the bend at which slip along the face has reached the middle between two holes, N. */
export function floatLimit({ passed, float }: YieldingBend): number {
  return float === undefined ? 0 : (float.slipResistance * float.length) / passed;
}

/** Length of thread that a bend lets go under a force S at it, m: that of the corner cut, and what the float gives. */
export function letGo(bend: YieldingBend, force: number): number {
  return bendFree(bend, force) + floatGives(bend, force);
}

/** Length of the corner that a bend cuts under a force S at it, m: C (S - S_0) while the face yields. */
export function bendFree({ from, to, compliance }: YieldingBend, force: number): number {
  return compliance * (Math.min(Math.max(force, from), to) - from);
}

/** Length that the thread on the face gives, m: e(S_f) with S_f = S x passed. */
export function floatGives({ passed, float }: YieldingBend, force: number): number {
  if (float === undefined) return 0;
  const { length: L, axialStiffness: EA, slipResistance: q } = float;
  const S = passed * force;
  const held = q * L;
  if (S > held) return ((S - held / 2) * L) / EA;
  return S > 0 ? (S * S) / (2 * EA * q) : 0;
}

/** Work of a force at the bend on what the bend lets go, J: integral of S d(letGo). */
export function bendWork(bend: YieldingBend, force: number): number {
  return cornerWork(bend, force) + floatWork(bend, force);
}

/** The part of `bendWork` on the corner that the bend cuts, J. */
export function cornerWork({ from, to, compliance }: YieldingBend, force: number): number {
  const S = Math.min(Math.max(force, from), to);
  return (compliance * (S - from) * (S + from)) / 2;
}

/** The part of `bendWork` on the thread of the face, J: its work there, over the share of the force that reaches it; friction around the bend takes the rest. */
export function floatWork({ passed, float }: YieldingBend, force: number): number {
  if (float === undefined) return 0;
  const { length: L, axialStiffness: EA, slipResistance: q } = float;
  const [drawn, held] = [passed * force, q * L];
  if (drawn > held) return ((held * held * L) / (3 * EA) + ((drawn - held) * (drawn + held) * L) / (2 * EA)) / passed;
  return drawn > 0 ? drawn ** 3 / (3 * EA * q) / passed : 0;
}
