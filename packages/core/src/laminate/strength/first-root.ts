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
 * The first R from lo to hi at which a R² + b R + c reaches 0 from below; lo when it is not below 0 there; Infinity when there is none.
 */
export function firstRoot(lo: number, hi: number, a: number, b: number, c: number): number {
  if (!(lo < Number.POSITIVE_INFINITY && lo <= hi)) return Number.POSITIVE_INFINITY;
  // Shifted to lo, the value at the start decides and one root remains.
  return lo + firstRootFromZero(hi - lo, a, b + 2 * a * lo, c + (b + a * lo) * lo);
}

/**
 * The same from R = 0.
 *
 * Where a quadratic that curves upward is below 0 at both ends it is so between them: no root is taken then, which is what makes a
 * search for the weakest of many points fast. Small, so that it is compiled into its callers.
 */
export function firstRootFromZero(hi: number, a: number, b: number, c: number): number {
  if (c >= 0) return 0;
  if (a >= 0 && (a * hi + b) * hi + c < 0) return Number.POSITIVE_INFINITY;
  return root(hi, a, b, c);
}

/** The root for c below 0, in the form without cancellation. */
function root(hi: number, a: number, b: number, c: number): number {
  const square = b * b - 4 * a * c;
  if (square < 0) return Number.POSITIVE_INFINITY;
  const length = Math.sqrt(square);
  let R = Number.POSITIVE_INFINITY;
  if (b >= 0 && b + length > 0) R = (-2 * c) / (b + length);
  else if (b < 0 && a > 0) R = (length - b) / (2 * a);
  return R <= hi ? R : Number.POSITIVE_INFINITY;
}
