import { rootBetween } from '../../numeric/index.js';
import type { Arm } from '../types.js';
import { type Bending, momentAt } from './bending.js';
import { bedStiffness, rootLength } from './opening-pair.js';
import type { SlidingPair } from './sliding-pair.js';

/** Release of energy of a double cantilever without rows, J/m²: G = P² (a + χ)²/(2 b² D), for two like arms 12 P² (a + χ)²/(b² E h³). */
export function openingRelease(pair: Arm, width: number, load: number, crackLength: number): number {
  return (load * (crackLength + rootLength(pair))) ** 2 / (2 * width * width * pair.bendingStiffness);
}

/** Load at which a double cantilever without rows releases an energy, N: P = b √(2 G D)/(a + χ). */
export function openingLoad(pair: Arm, width: number, release: number, crackLength: number): number {
  return (width * Math.sqrt(2 * release * pair.bendingStiffness)) / (crackLength + rootLength(pair));
}

/** Opening at the load line per load and width, without rows, m²/N: ((a + χ)³ - χ³)/(3 D) + χ/√(k D), for a long bond exact. */
export function openingCompliance(pair: Arm, crackLength: number): number {
  const chi = rootLength(pair);
  const D = pair.bendingStiffness;
  return ((crackLength + chi) ** 3 - chi ** 3) / (3 * D) + chi / Math.sqrt(bedStiffness(pair) * D);
}

/**
 * Crack length at which an opening held at the mouth releases just the toughness, without rows, m: C √(2 D G) = Δ (a + χ), for slender arms
 * a⁴ = 9 D Δ²/(2 G). 0 where the opening is too small to grow a crack at all, at most `longest`.
 */
export function naturalSplit(pair: Arm, opening: number, toughness: number, longest: number): number {
  const scale = Math.sqrt(2 * pair.bendingStiffness * toughness);
  const short = (a: number) => openingCompliance(pair, a) * scale - opening * (a + rootLength(pair));
  if (short(0) >= 0) return 0;
  return short(longest) <= 0 ? longest : rootBetween(short, 0, longest);
}

/**
 * Release of energy of a bent specimen without rows or friction, J/m²: G = (M + M'/ω)²/(2 b²) (1/D - 1/D_bonded); under one load with two like arms
 * 9 P² (a + 1/ω)²/(16 b² E h³). For tips several 1/ω from a load.
 */
export function slidingRelease(
  pair: SlidingPair,
  bending: Bending,
  width: number,
  load: number,
  crackLength: number,
): number {
  const { moment: here, slope } = tipMoment(pair, bending, crackLength);
  const moment = (load * (here + slope / pair.decay)) / width;
  return (moment * moment * (1 / pair.D - 1 / pair.bonded)) / 2;
}

/** Moment at a tip per load, m, and how it grows with the place of the tip. */
export function tipMoment(
  pair: SlidingPair,
  bending: Bending,
  crackLength: number,
): { readonly moment: number; readonly slope: number } {
  const step = 1e-6 / pair.decay;
  const moment = momentAt(bending, crackLength);
  return { moment, slope: (moment - momentAt(bending, crackLength - step)) / step };
}

/** Load at which a bent specimen without rows or friction releases an energy, N: that of `slidingRelease`. */
export function slidingLoad(
  pair: SlidingPair,
  bending: Bending,
  width: number,
  release: number,
  crackLength: number,
): number {
  const { moment, slope } = tipMoment(pair, bending, crackLength);
  return (width * Math.sqrt((2 * release) / (1 / pair.D - 1 / pair.bonded))) / (moment + slope / pair.decay);
}
