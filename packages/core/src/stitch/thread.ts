import { fail } from '../problem/index.js';
import { requireNotNegative, requirePositive } from './check.js';
import type { Thread } from './types.js';

/** Fibre share inside the outline of a cured strand when none is given; usual range 0.55 to 0.75 (recalled, not re-read). */
const defaultPacking = 0.65;

/** Fibre share inside the outline of a strand: as given, else the usual one. */
export const packingOf = ({ packing }: Thread): number => packing ?? defaultPacking;

/** Share of a circle's area that equal parallel round fibres can fill at most: pi/(2 sqrt 3), hexagonal packing. */
const closestPacking = Math.PI / (2 * Math.sqrt(3));

/**
 * Checks a thread's physical sense.
 * @throws out-of-range linear density, density, tenacity or modulus not above 0; packing outside 0 to 0.907
 */
export function checkThread(thread: Thread): void {
  const of = (what: string) => `${what} of thread ${thread.name}`;
  requirePositive(of('linearDensity'), thread.linearDensity, (t) => `${t * 1e6} tex`);
  requirePositive(of('density'), thread.density, (rho) => `${rho} kg/m^3`);
  if (thread.tenacity !== undefined) requirePositive(of('tenacity'), thread.tenacity, (s) => `${s / 1e6} N/tex`);
  if (thread.modulus !== undefined) requirePositive(of('modulus'), thread.modulus, (m) => `${m / 1e6} N/tex`);
  const packing = packingOf(thread);
  if (!(packing > 0 && packing <= closestPacking)) {
    fail({
      code: 'out-of-range',
      message: `${of('packing')} = ${packing}, must be above 0 and at most ${closestPacking.toFixed(3)}`,
      allowed: 'above 0, at most 0.907 (hexagonal packing of round fibres); 0.55 to 0.75 is usual',
    });
  }
}

/**
 * Fibre cross-section of one strand, A = t/rho, m^2.
 * @throws out-of-range see `checkThread`
 */
export function fibreArea(thread: Thread): number {
  checkThread(thread);
  return thread.linearDensity / thread.density;
}

/**
 * Cross-section of one strand with the gaps between its fibres, A/phi = t/(rho phi), m^2.
 * @throws out-of-range see `checkThread`
 */
export function bundleArea(thread: Thread): number {
  return fibreArea(thread) / packingOf(thread);
}

/**
 * Diameter of the round bundle that `legs` strands form, d = sqrt(4 n t/(pi rho phi)), m.
 * @param legs strands lying together in one hole, above 0; 1 by default
 * @throws out-of-range see `checkThread`; legs not above 0
 */
export function threadDiameter(thread: Thread, legs = 1): number {
  requirePositive('legs', legs);
  return Math.sqrt((4 * legs * bundleArea(thread)) / Math.PI);
}

/**
 * Perimeter of `legs` round strands lying side by side, as a tight cord around them sees it:
 * pi d for one, (pi + 2) d for two, (pi + 2 (n - 1)) d for n in a line; m.
 * @param legs whole number of strands, 1 or more
 * @throws out-of-range see `checkThread`; legs below 1
 */
export function bundlePerimeter(thread: Thread, legs: number): number {
  requireNotNegative('legs - 1', legs - 1);
  return (Math.PI + 2 * (legs - 1)) * threadDiameter(thread);
}
