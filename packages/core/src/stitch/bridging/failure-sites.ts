import type { BridgingFailure } from '../bridging-types.js';
import type { BridgingModel, BridgingSide } from './bridging-sides.js';

/** What happens when a penetration gives way. */
export interface GivingWay {
  /** Force in the crack plane at which the weakest site gives way, N. */
  readonly force: number;
  readonly failure: BridgingFailure;
  /** Of either side. */
  readonly pullOut: readonly [PullOut, PullOut];
  /** Of the stitches that break in the plane of the crack. */
  readonly crackShare: number;
  /** Weibull exponent of the strength of a site; infinite without scatter. */
  readonly exponent: number;
}

/** Stitches that pull out of one side. */
export interface PullOut {
  /** Of all stitches. */
  readonly share: number;
  /** Friction per length still in the laminate, N/m: q, but no more than F/h, since these stitches gave way at F or below. */
  readonly resistance: number;
}

/** Force in the crack plane at which the anchor gives way, or the leg without one slips: anchor strength + q h. */
export function anchorLimit({ anchorStrength, slipResistance, depth }: BridgingSide): number {
  return anchorStrength + slipResistance * depth;
}

/**
 * Which site gives way, and how often each.
 *
 * Sites: the crack plane and both anchors, each with its force in the crack plane F_k. Strengths scatter from stitch to stitch with one
 * coefficient of variation s; taken as Weibull of exponent m = s^-1.086 (within 1 % for s of 0.1 to 0.5), the weakest site is k with the share
 * F_k^-m/sum F_j^-m. The force is the least F_k.
 */
export function givingWay({ sides, crackStrength, siteScatter }: BridgingModel): GivingWay {
  const limits = [anchorLimit(sides[0]), anchorLimit(sides[1])] as const;
  const force = Math.min(crackStrength, ...limits);
  const exponent = siteScatter > 0 ? siteScatter ** -1.086 : Number.POSITIVE_INFINITY;
  // 1 for the weakest whatever the exponent; 0 for the others without scatter.
  const weight = (limit: number) => (limit === force ? 1 : (force / limit) ** exponent);
  const [crack, first, second] = [weight(crackStrength), weight(limits[0]), weight(limits[1])];
  const sum = crack + first + second;
  const weaker = sides[limits[0] <= limits[1] ? 0 : 1];
  const atAnchor = weaker.anchorStrength > 0 ? 'threadAtAnchor' : 'threadPullOut';
  return {
    force,
    failure: crackStrength <= Math.min(...limits) ? 'threadAtCrack' : atAnchor,
    pullOut: [pulled(sides[0], first / sum, force), pulled(sides[1], second / sum, force)],
    crackShare: crack / sum,
    exponent,
  };
}

function pulled({ slipResistance, depth }: BridgingSide, share: number, force: number): PullOut {
  return { share, resistance: Math.min(slipResistance, force / depth) };
}

/** Force with which the legs that pull out hold after slipping by a length, a mean over the stitches, N. */
export function pullOutForce({ sides }: BridgingModel, { pullOut }: GivingWay, slip: number): number {
  const [first, second] = pullOut;
  return (
    first.share * first.resistance * Math.max(0, sides[0].depth - slip) +
    second.share * second.resistance * Math.max(0, sides[1].depth - slip)
  );
}
