import { armCeiling, bridgingLength } from '../../stitch/index.js';
import { peelLoad, uprightLoad } from '../peel-load.js';
import { openingLoad } from '../specimen/beam-toughness.js';
import { openingPair } from '../specimen/opening-pair.js';
import type { Arm } from '../types.js';
import { growthRange, type PatternMet } from './coupon-rows.js';
import { slidingCeiling, slidingReading } from './fast-sliding.js';
import type { PulledSpecimen } from './pull-coupon.js';

/** One penetration in numbers: N, m, J. */
export interface StitchNumbers {
  readonly force: number;
  readonly opening: number;
  readonly work: number;
}

/** A coupon reduced to closed forms. */
export interface FastCoupon {
  readonly kind: PulledSpecimen['kind'];
  /** m */
  readonly width: number;
  readonly arms: readonly [Arm, Arm];
  /** J/m² */
  readonly bond: number;
  /** Lever of the load at the start, m: the crack length, in bending at most up to the first load. */
  readonly crack: number;
  /** Lever of the load when the first row gives way, m; in bending the place of the first load, beyond which the moment does not rise. */
  readonly span: number;
  /** Length among the stitches through which the crack can grow, m. */
  readonly growth: number;
  /** Absent without stitches. */
  readonly stitches?: StitchNumbers & PatternMet;
}

/** J/m² and m. */
export interface FastValue {
  /** Bond and stitches with a full zone. */
  readonly steady: number;
  /** What a test reads while the arms hold. */
  readonly reading: number;
  /** What the arms can show before one breaks; infinite where they do not. */
  readonly ceiling: number;
  /** In sliding, how full the bridged zone gets: 1 as its first row gives way. */
  readonly fill?: number;
  /** Bridging length scale; absent without stitches and in sliding. */
  readonly length?: number;
}

/** Lever of the load: to the first row ahead of the crack, or to the crack; in bending to the first load. */
export function leverOf(specimen: PulledSpecimen, rows: readonly { readonly position: number }[]): number {
  if (specimen.kind === 'enf') return firstLoad(specimen);
  const { from } = growthRange(specimen);
  return rows.find(({ position }) => position >= from)?.position ?? from;
}

/** Lever of the load at the start. */
export function crackLever(specimen: PulledSpecimen): number {
  return specimen.kind === 'enf' ? Math.min(specimen.crackLength, firstLoad(specimen)) : specimen.crackLength;
}

const firstLoad = ({ span, loadSpan = 0 }: Extract<PulledSpecimen, { readonly kind: 'enf' }>): number =>
  (span - loadSpan) / 2;

/**
 * Toughness of a coupon without simulation.
 *
 * Steady: G0 + N W. Reading: G0 + √((N W)² + (J1 - G0)²) with J1 the path integral around one row alone as it gives way, {@link rowStrength}: for rows far apart the
 * reading is the strength of a row, for close ones the steady value; between, the root of squares is within some 25 % of the simulation over distances
 * of 0.3 to 1.1 bridging lengths, and orders samples as that does. In sliding see {@link slidingReading}.
 */
export function fastValue(coupon: FastCoupon): FastValue {
  const { kind, arms, bond, stitches } = coupon;
  const ceiling = kind === 'enf' ? slidingCeiling(arms) : (armCeiling(arms[0], arms[1]) ?? Number.POSITIVE_INFINITY);
  if (stitches === undefined) return { steady: bond, reading: bond, ceiling };
  const { density, perFront, force, opening, work } = stitches;
  const increment = density * work;
  const steady = bond + increment;
  if (kind === 'enf') {
    const reading = slidingReading(coupon, stitches);
    return { steady, reading: Math.min(steady, reading), ceiling, fill: reading / steady };
  }
  const D = openingPair(arms).bendingStiffness;
  const single = rowStrength(D, bond, perFront * force, opening) - bond;
  return {
    steady,
    reading: bond + Math.hypot(increment, single),
    ceiling,
    length: bridgingLength(2 * D, density, { peak: { force, opening } }),
  };
}

/**
 * Path integral around a single row that gives way at a force f per width and an opening w, J/m²: (M0 + f c)²/(2 D).
 *
 * The tip, at its limit with M0 = √(2 G0 D), lies c ahead of the row, where the arms have opened by w = M0 c²/(2 D) + f c³/(6 D); 1/D = 1/D1 + 1/D2. Slender arms, the load far behind.
 */
export function rowStrength(D: number, bond: number, f: number, w: number): number {
  const M0 = Math.sqrt(2 * bond * D);
  // Newton from above: the cubic is convex and rises.
  let c = Math.cbrt((6 * D * w) / f);
  for (let round = 0; round < 50; round++) {
    const step = ((M0 * c * c) / 2 + (f * c ** 3) / 6 - D * w) / (M0 * c + (f * c * c) / 2);
    c -= step;
    if (!(Math.abs(step) > 1e-12 * c)) break;
  }
  return (M0 + f * c) ** 2 / (2 * D);
}

/**
 * Load at which a coupon shows a toughness J, N.
 *
 * Straight arms: b √(2 J D)/a. Arms of a peel that stand upright at the grips: b J/2. Between, for a cantilever that bends through large angles, the sum of the 2.7th powers. Bent
 * specimen: in proportion to √(J D)/a, its factor left to the simulation.
 */
export function fastForce({ kind, width, arms, span: a }: FastCoupon, J: number, span = a): number {
  if (kind === 'enf') return (width * Math.sqrt(J * (arms[0].bendingStiffness + arms[1].bendingStiffness))) / span;
  const straight = openingLoad(openingPair(arms), width, J, span);
  return kind === 'dcb' ? straight : peelLoad(straight, uprightLoad(width, J));
}

/** Peak force of a coupon that shows a toughness J, N: there, or before at the onset of growth in the bond alone. */
export function fastPeak(coupon: FastCoupon, J: number): number {
  return Math.max(fastForce(coupon, J), fastForce(coupon, Math.min(coupon.bond, J), coupon.crack));
}

/** Toughness that a coupon shows at a load `factor` times that at which it shows J. */
export function toughnessAtLoad(coupon: FastCoupon, J: number, factor: number): number {
  const wanted = factor * fastForce(coupon, J);
  // Between straight arms, J as the square of the load, and upright ones, in proportion.
  let [low, high] = [Math.min(factor, factor * factor) * J, Math.max(factor, factor * factor) * J];
  for (let round = 0; round < 60; round++) {
    const middle = Math.sqrt(low * high);
    if (fastForce(coupon, middle) < wanted) low = middle;
    else high = middle;
  }
  return Math.sqrt(low * high);
}
