/**
 * A root of a continuous function between two places where it has different signs, by Chandrupatla's choice between halving and inverse
 * quadratic interpolation: never slower than halving, for smooth functions about as fast as Brent's method and shorter.
 * @param f finite between the places
 * @param tolerance width of the bracket at which to stop, as a share of the larger end; 1e-13 by default
 * @returns the place; an end where f is 0, or, should the signs be equal, the end with the smaller |f|
 * @source Chandrupatla, T. R., 1997, chandrupatla-1997
 */
export function rootBetween(f: (x: number) => number, low: number, high: number, tolerance = 1e-13): number {
  let [a, b] = [high, low];
  let [fa, fb] = [f(a), f(b)];
  if (fa * fb >= 0) return Math.abs(fa) < Math.abs(fb) ? a : b;
  let t = 0.5;
  for (let round = 0; round < 200; round++) {
    const x = a + t * (b - a);
    const fx = f(x);
    const sameSide = fx > 0 === fa > 0;
    const [c, fc] = sameSide ? [a, fa] : [b, fb];
    if (!sameSide) [b, fb] = [a, fa];
    [a, fa] = [x, fx];
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const share = (tolerance * Math.max(Math.abs(a), Math.abs(b))) / Math.abs(b - a);
    if (fx === 0 || !(share < 0.5)) return fx === 0 ? x : best;
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    const smooth = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
    t = smooth ? (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb)) : 0.5;
    t = Math.min(1 - share, Math.max(share, t));
  }
  return a;
}
