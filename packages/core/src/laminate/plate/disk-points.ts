import { EigenvalueDecomposition, Matrix } from 'ml-matrix';

/** Points of the unit disk with the weights of an integral over it. */
export interface DiskPoints {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly weight: Float64Array;
}

/**
 * Points on half of the unit disk that integrate polynomials over all of it, exactly, when these are alike at opposite points.
 *
 * Even steps around, which leave even powers of the radius, and Gauss points along its square; each weight counts the opposite point too.
 *
 * @param power highest power of the polynomials, a multiple of 4
 */
export function diskPoints(power: number): DiskPoints {
  const around = power / 2 + 1;
  const all = gaussPoints(power / 4 + 1).flatMap(({ at, weight }) => {
    const r = Math.sqrt((1 + at) / 2);
    return Array.from({ length: around }, (_, j) => {
      const angle = (Math.PI * (j + 0.5)) / around;
      return { x: r * Math.cos(angle), y: r * Math.sin(angle), weight: (weight * Math.PI) / (2 * around) };
    });
  });
  return {
    x: Float64Array.from(all, ({ x }) => x),
    y: Float64Array.from(all, ({ y }) => y),
    weight: Float64Array.from(all, ({ weight }) => weight),
  };
}

/**
 * Points and weights of Gauss and Legendre on -1 to 1: eigenvalues of the matrix of the recursion of Legendre's polynomials.
 *
 * @source Golub & Welsch 1969 (recalled, not re-read)
 */
function gaussPoints(n: number): { readonly at: number; readonly weight: number }[] {
  const recursion = new Matrix(n, n);
  for (let k = 1; k < n; k++) {
    const beside = k / Math.sqrt(4 * k * k - 1);
    recursion.set(k - 1, k, beside).set(k, k - 1, beside);
  }
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(recursion, { assumeSymmetric: true });
  return realEigenvalues.map((at, i) => ({ at, weight: 2 * eigenvectorMatrix.get(0, i) ** 2 }));
}
