import { CholeskyDecomposition, type Matrix } from 'ml-matrix';

/** The Cholesky factors of a symmetric matrix, or undefined when it is not positive definite or holds a number that is not finite. */
export function choleskyOf(m: Matrix): CholeskyDecomposition | undefined {
  if (!m.to2DArray().every((row) => row.every(Number.isFinite))) return undefined;
  const factors = new CholeskyDecomposition(m);
  return factors.isPositiveDefinite() ? factors : undefined;
}
