import { EigenvalueDecomposition, inverse, type Matrix } from 'ml-matrix';
import { choleskyOf } from '../../numeric/index.js';

/**
 * The largest eigenvalue μ of S c = μ K c for symmetric S and symmetric positive definite K, and its column c, of c·K c = 1.
 *
 * With K = L Lᵀ it is that of the symmetric L⁻¹ S L⁻ᵀ, whose eigenvector is Lᵀ c.
 *
 * @returns undefined when K is not positive definite or S not finite
 */
export function largestEigenvalue(
  S: Matrix,
  K: Matrix,
): { readonly value: number; readonly vector: Matrix } | undefined {
  const L = choleskyOf(K)?.lowerTriangularMatrix;
  if (L === undefined || !S.to2DArray().every((row) => row.every(Number.isFinite))) return undefined;
  const unrooted = inverse(L);
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(
    unrooted.mmul(S).mmul(unrooted.transpose()),
    { assumeSymmetric: true },
  );
  const value = Math.max(...realEigenvalues);
  const vector = unrooted.transposeMultiply(eigenvectorMatrix.getColumnVector(realEigenvalues.indexOf(value)));
  return { value, vector };
}
