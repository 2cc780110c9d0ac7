/** Points of the unit disk with the weights of an integral over it. */
export interface DiskPoints {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly weight: Float64Array;
}

/**
 * Points on half of the unit disk that integrate polynomials over all of it, exactly, when these are alike at opposite points.
 *
 * Gauss points along the radius, even steps around; each weight counts the opposite point too.
 *
 * @param power highest power of the polynomials, even
 */
export function diskPoints(power: number): DiskPoints {
  const radial = gaussPoints(power / 2 + 1);
  const around = power / 2 + 1;
  const all = radial.flatMap(({ at, weight }) => {
    const r = (1 + at) / 2;
    return Array.from({ length: around }, (_, j) => {
      const angle = (Math.PI * (j + 0.5)) / around;
      return { x: r * Math.cos(angle), y: r * Math.sin(angle), weight: (weight * r * Math.PI) / around };
    });
  });
  return {
    x: Float64Array.from(all, ({ x }) => x),
    y: Float64Array.from(all, ({ y }) => y),
    weight: Float64Array.from(all, ({ weight }) => weight),
  };
}

/** Points and weights of Gauss and Legendre on -1 to 1, by Newton's method on the polynomial. */
function gaussPoints(n: number): { readonly at: number; readonly weight: number }[] {
  return Array.from({ length: n }, (_, i) => {
    let at = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 8; step++) {
      let [last, value] = [1, at];
      for (let k = 2; k <= n; k++) [last, value] = [value, ((2 * k - 1) * at * value - (k - 1) * last) / k];
      slope = (n * (at * value - last)) / (at * at - 1);
      at -= value / slope;
    }
    return { at, weight: 2 / ((1 - at * at) * slope * slope) };
  });
}
