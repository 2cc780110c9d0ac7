/** A fraction in lowest terms, denominator above 0. */
export interface Ratio {
  readonly numerator: number;
  readonly denominator: number;
}

/**
 * The fraction with the smallest denominator, at most `largest`, that equals `value` within 1e-9 relative to the larger of 1 and |value|;
 * undefined when there is none. By continued fractions.
 */
export function asRatio(value: number, largest: number): Ratio | undefined {
  const tolerance = 1e-9 * Math.max(1, Math.abs(value));
  let [h0, k0, h1, k1] = [0, 1, 1, 0];
  let rest = value;
  while (Number.isFinite(rest)) {
    const whole = Math.round(rest);
    [h0, h1] = [h1, whole * h1 + h0];
    [k0, k1] = [k1, whole * k1 + k0];
    const k = Math.abs(k1);
    if (k > largest) return undefined;
    const h = k1 < 0 ? -h1 : h1;
    if (Math.abs(value - h / k) <= tolerance) return { numerator: h, denominator: k };
    rest = 1 / (rest - whole);
  }
  return undefined;
}

/** Greatest common divisor of two whole numbers, 0 only for two zeros. */
function commonDivisor(a: number, b: number): number {
  let [x, y] = [Math.abs(a), Math.abs(b)];
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}

/** Least common multiple of two whole numbers above 0. */
export function commonMultiple(a: number, b: number): number {
  return (a / commonDivisor(a, b)) * b;
}
