/** Density of the standard normal distribution. */
export const normalDensity = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** Where the continued fraction takes over from the series, with as many terms as it needs there. */
const far = 3;
const terms = 100;

/**
 * Share of the standard normal distribution below z.
 *
 * Near the middle 1/2 + φ(z) (z + z³/3 + z⁵/(3·5) + ...), of which all terms have one sign; in the tails Laplace's continued fraction
 * φ(z)/(z + 1/(z + 2/(z + ...))), which keeps the digits of small shares. Our own since no library in use has it, and short.
 *
 * @source series and fraction: Abramowitz & Stegun 1964, 26.2.11 and 26.2.14, abramowitz-stegun-1964
 */
export function normalBelow(z: number): number {
  if (z > far) return 1 - tail(z);
  if (z < -far) return tail(-z);
  let term = z;
  let sum = z;
  for (let n = 3; Math.abs(term) > 1e-17 * Math.abs(sum); n += 2) {
    term *= (z * z) / n;
    sum += term;
  }
  return 0.5 + normalDensity(z) * sum;
}

/** Share above z for z > 3. */
function tail(z: number): number {
  let fraction = z;
  for (let k = terms; k >= 1; k--) fraction = z + k / fraction;
  return normalDensity(z) / fraction;
}

/** Quotient of two polynomials, coefficients from the highest power down. */
const quotient = (above: readonly number[], below: readonly number[], x: number): number =>
  above.reduce((sum, c) => sum * x + c, 0) / below.reduce((sum, c) => sum * x + c, 0);

const middle = [
  2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946, 1971.5909503065513,
  133.14166789178438, 3.3871328727963665,
];
const middleBelow = [
  5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751, 687.1870074920579,
  42.31333070160091, 1,
];
const outer = [
  0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
  5.769497221460691, 4.630337846156546, 1.4234371107496835,
];
const outerBelow = [
  1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
  1.6763848301838038, 2.053191626637759, 1,
];
const extreme = [
  2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124, 0.29656057182850487,
  1.7848265399172913, 5.463784911164114, 6.657904643501103,
];
const extremeBelow = [
  2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133, 0.014875361290850615,
  0.1369298809227358, 0.599832206555888, 1,
];

/**
 * The z below which a share of the standard normal distribution lies, to about 1e-15.
 *
 * @param share above 0, below 1
 * @source Wichura 1988, algorithm AS 241, PPND16, wichura-1988
 */
export function normalQuantile(share: number): number {
  const q = share - 0.5;
  if (Math.abs(q) <= 0.425) return q * quotient(middle, middleBelow, 0.180625 - q * q);
  const r = Math.sqrt(-Math.log(q < 0 ? share : 1 - share));
  const z = r <= 5 ? quotient(outer, outerBelow, r - 1.6) : quotient(extreme, extremeBelow, r - 5);
  return q < 0 ? -z : z;
}
