import { rootBetween } from '../../numeric/index.js';
import type { Arm } from '../types.js';
import { type Bending, momentAt } from './bending.js';
import { bedStiffness, rootLength } from './opening-pair.js';
import type { SlidingPair } from './sliding-pair.js';

/** Release of energy of a double cantilever without rows, J/m²: G = P² (a + χ)²/(2 b² D), for two like arms 12 P² (a + χ)²/(b² E h³). */
export function openingRelease(pair: Arm, width: number, load: number, crackLength: number): number {
  return (load * (crackLength + rootLength(pair))) ** 2 / (2 * width * width * pair.bendingStiffness);
}

/** Opening at the load line per load and width, without rows, m²/N: ((a + χ)³ - χ³)/(3 D) + χ/√(k D), for a long bond exact. */
function openingCompliance(pair: Arm, crackLength: number): number {
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
  const step = 1e-6 / pair.decay;
  const here = momentAt(bending, crackLength);
  const slope = (here - momentAt(bending, crackLength - step)) / step;
  const moment = (load * (here + slope / pair.decay)) / width;
  return (moment * moment * (1 / pair.D - 1 / pair.bonded)) / 2;
}
