import { slidingPair } from '../specimen/sliding-pair.js';
import type { Arm } from '../types.js';

type Pair = readonly [Arm, Arm];

/** What of a bent coupon the closed forms need; see `FastCoupon`. */
interface SlidingGrowth {
  readonly arms: Pair;
  readonly bond: number;
  readonly growth: number;
  readonly crack: number;
  readonly span: number;
}

/**
 * Reading in sliding while no row gives way: G0 cosh²(L/ℓ), rows smeared to springs of β = N F/u along the whole growth L among them, ℓ = √(B/β). B as in `slidingPair`.
 */
export function slidingReading(
  { arms, bond, growth }: SlidingGrowth,
  { density, force, opening }: { readonly density: number; readonly force: number; readonly opening: number },
): number {
  const length = Math.sqrt((slidingPair(arms).B * opening) / (density * force));
  return bond * Math.cosh(Math.min(growth / length, 50)) ** 2;
}

/** Toughness by load at which a moment at the tip breaks an arm in sliding, the arms slender: M²/2 (1/D - 1/D_bonded) with M = min 2 D ε/h, J/m². */
export function slidingCeiling(arms: Pair): number {
  const { D } = slidingPair(arms);
  return releaseAt(
    arms,
    leastMoment(arms, D, (i) => (arms[i] as Arm).thickness / 2),
  );
}

/**
 * Toughness by load at which an arm breaks in sliding before the bond grows, J/m²: at the tip, or under the first load where both bend as one, the surface
 * H A_other/(A1 + A2) + h/2 from their neutral plane; the tester counts the root of the crack too.
 */
export function onsetCeiling({ arms, crack, span }: Omit<SlidingGrowth, 'bond' | 'growth'>, ceiling: number): number {
  const { bonded, H, decay } = slidingPair(arms);
  const axial = arms[0].axialStiffness + arms[1].axialStiffness;
  const under = leastMoment(
    arms,
    bonded,
    (i) => (H * (arms[1 - i] as Arm).axialStiffness) / axial + (arms[i] as Arm).thickness / 2,
  );
  const release = Math.min(ceiling, releaseAt(arms, (under * crack) / span));
  return crack < span ? release * (1 + 1 / (decay * crack)) ** 2 : release;
}

/** Least moment per width at which an arm's surface, so far from the neutral plane, reaches its failure strain at a bending stiffness. */
function leastMoment(arms: Pair, stiffness: number, distance: (arm: number) => number): number {
  return Math.min(
    ...arms.map(({ failureStrain: strain }, i) =>
      strain ? (stiffness * Math.min(strain.tension, strain.compression)) / distance(i) : Number.POSITIVE_INFINITY,
    ),
  );
}

function releaseAt(arms: Pair, moment: number): number {
  const { D, bonded } = slidingPair(arms);
  return (moment ** 2 * (1 / D - 1 / bonded)) / 2;
}
