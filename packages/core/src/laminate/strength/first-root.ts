/**
 * How far a stress r + R m can be raised before a limit is met: the pieces that all criteria are made of.
 *
 * R runs from 0. Infinity means never; it stays inside this folder. Nothing here allocates.
 */

/** The least R ≥ 0 from which r + R m is 0 or more. */
export function enter(r: number, m: number): number {
  if (r > 0 || (r === 0 && m >= 0)) return 0;
  return m > 0 ? -r / m : Number.POSITIVE_INFINITY;
}

/** The largest R up to which r + R m is 0 or more, for an r + R m that is so somewhere. */
export function leave(r: number, m: number): number {
  return m < 0 ? -r / m : Number.POSITIVE_INFINITY;
}

/** The R at which r + R m leaves the range from -below to above; 0 when it starts outside. */
export function linearLimit(r: number, m: number, above: number, below: number): number {
  if (r >= above || r <= -below) return 0;
  if (m > 0) return (above - r) / m;
  return m < 0 ? (below + r) / -m : Number.POSITIVE_INFINITY;
}

/**
 * The first R from lo to hi at which a R² + b R + c reaches 0 from below; lo when it is not below 0 there.
 *
 * Shifted to lo first, so that the value at the start decides and one root remains; taken in the form without cancellation.
 */
export function firstRoot(lo: number, hi: number, a: number, b: number, c: number): number {
  if (!(lo < Number.POSITIVE_INFINITY && lo <= hi)) return Number.POSITIVE_INFINITY;
  const start = (a * lo + b) * lo + c;
  if (start >= 0) return lo;
  const slope = 2 * a * lo + b;
  const square = slope * slope - 4 * a * start;
  if (square < 0) return Number.POSITIVE_INFINITY;
  const root = Math.sqrt(square);
  let step = Number.POSITIVE_INFINITY;
  if (slope + root > 0 && slope >= 0) step = (-2 * start) / (slope + root);
  else if (slope < 0 && a > 0) step = (root - slope) / (2 * a);
  return lo + step <= hi ? lo + step : Number.POSITIVE_INFINITY;
}
