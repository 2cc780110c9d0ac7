/** A polynomial in ξ and η: the sum of c ξ^i η^j. */
export type Polynomial = readonly { readonly c: number; readonly i: number; readonly j: number }[];

/** The product, like terms put together. */
export function multiply(p: Polynomial, q: Polynomial): Polynomial {
  const terms = new Map<string, { c: number; readonly i: number; readonly j: number }>();
  for (const s of p) {
    for (const t of q) {
      const [i, j] = [s.i + t.i, s.j + t.j];
      const term = terms.get(`${i} ${j}`);
      if (term === undefined) terms.set(`${i} ${j}`, { c: s.c * t.c, i, j });
      else term.c += s.c * t.c;
    }
  }
  return [...terms.values()];
}

/** A multiple. */
export const times = (p: Polynomial, factor: number): Polynomial => p.map(({ c, i, j }) => ({ c: c * factor, i, j }));

/** Derivative by ξ. */
export const xDerivative = (p: Polynomial): Polynomial =>
  p.filter(({ i }) => i > 0).map(({ c, i, j }) => ({ c: c * i, i: i - 1, j }));

/** Derivative by η. */
export const yDerivative = (p: Polynomial): Polynomial =>
  p.filter(({ j }) => j > 0).map(({ c, i, j }) => ({ c: c * j, i, j: j - 1 }));

/**
 * A function that gives the values of a polynomial, times a factor, at points.
 *
 * @param highest highest power of ξ and of η in any polynomial it is given
 */
export function valuesAt(
  { x, y }: { readonly x: Float64Array; readonly y: Float64Array },
  highest: number,
): (p: Polynomial, factor: number) => Float64Array {
  const powers = (of: Float64Array) => Array.from({ length: highest + 1 }, (_, n) => of.map((value) => value ** n));
  const [xs, ys] = [powers(x), powers(y)];
  return (p, factor) => {
    const sum = new Float64Array(x.length);
    for (const { c, i, j } of p) {
      const [xi, yj] = [xs[i] ?? [], ys[j] ?? []];
      for (let k = 0; k < sum.length; k++) sum[k] = (sum[k] ?? 0) + factor * c * (xi[k] ?? 0) * (yj[k] ?? 0);
    }
    return sum;
  };
}

/**
 * Integral of a product over the disk ξ² + η² ≤ 1.
 *
 * ∫ ξ^2p η^2q = π (2p - 1)!! (2q - 1)!! / (2^(p+q) (p + q + 1)!); odd powers give 0.
 */
export function diskIntegral(p: Polynomial, q: Polynomial): number {
  let sum = 0;
  for (const s of p) {
    for (const t of q) {
      const [i, j] = [s.i + t.i, s.j + t.j];
      if (i % 2 === 0 && j % 2 === 0) sum += s.c * t.c * even(i / 2, j / 2);
    }
  }
  return sum;
}

function even(p: number, q: number): number {
  let value = Math.PI;
  for (let k = 1; k <= p; k++) value *= (2 * k - 1) / 2;
  for (let k = 1; k <= q; k++) value *= (2 * k - 1) / 2;
  for (let k = 2; k <= p + q + 1; k++) value /= k;
  return value;
}
