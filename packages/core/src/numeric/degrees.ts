/**
 * Sine and cosine of an angle in degrees.
 *
 * The angle is reduced to [-45, 45] while still in degrees, where that is exact: multiples of 90 give exactly 0 or ±1, and
 * odd multiples of 45 sines and cosines of one magnitude. A 0/90 stack then has shear coupling of exactly zero.
 *
 * @param degrees any finite angle
 * @returns both in [-1, 1], never -0
 */
export function sinCosDegrees(degrees: number): { readonly sin: number; readonly cos: number } {
  const quarters = Math.round(degrees / 90);
  const rest = degrees - 90 * quarters;
  const radians = rest * (Math.PI / 180);
  let sin = Math.sin(radians);
  let cos = Math.cos(radians);
  if (rest === 45 || rest === -45) {
    cos = Math.SQRT1_2;
    sin = rest > 0 ? cos : -cos;
  }
  // Sums with 0 turn -0 into 0.
  const turns = quarters - 4 * Math.floor(quarters / 4);
  if (turns === 0) return { sin: sin + 0, cos };
  if (turns === 1) return { sin: cos, cos: 0 - sin };
  if (turns === 2) return { sin: 0 - sin, cos: 0 - cos };
  return { sin: 0 - cos, cos: sin + 0 };
}

/** Sine of an angle in degrees, see {@link sinCosDegrees}. */
export function sinDegrees(degrees: number): number {
  return sinCosDegrees(degrees).sin;
}

/** Cosine of an angle in degrees, see {@link sinCosDegrees}. */
export function cosDegrees(degrees: number): number {
  return sinCosDegrees(degrees).cos;
}

/**
 * The same direction of a fibre, which has no head or tail, as an angle in (-90, 90].
 *
 * @param degrees any finite angle
 * @returns degrees, never -0
 */
export function fibreAngle(degrees: number): number {
  const rest = degrees % 180;
  if (rest > 90) return rest - 180;
  if (rest <= -90) return rest + 180;
  return rest + 0;
}
