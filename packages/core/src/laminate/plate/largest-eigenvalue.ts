import { cholesky, forward } from './cholesky.js';

/**
 * The largest eigenvalue μ of S c = μ K c for symmetric S and symmetric positive definite K.
 *
 * With K = L Lᵀ it is that of the symmetric L⁻¹ S L⁻ᵀ, found by Jacobi rotations.
 *
 * @param S n rows of n numbers; n at least 1
 * @param K the same
 */
export function largestEigenvalue(S: readonly (readonly number[])[], K: readonly (readonly number[])[]): number {
  const L = cholesky(K) ?? K.map((row) => Float64Array.from(row, () => Number.NaN));
  const half = forward(L, S);
  return largestOf(forward(L, transposed(half)));
}

const at = (m: readonly ArrayLike<number>[], i: number, j: number): number => m[i]?.[j] ?? 0;
const transposed = (m: readonly Float64Array[]): Float64Array[] =>
  m.map((_, i) => Float64Array.from(m, (row) => row[i] ?? 0));

/** Turns pairs of axes until nothing is left beside the diagonal. */
function largestOf(m: Float64Array[]): number {
  const n = m.length;
  for (let sweep = 0; sweep < 30; sweep++) {
    let beside = 0;
    let diagonal = 0;
    for (let p = 0; p < n; p++) {
      diagonal += at(m, p, p) ** 2;
      for (let q = p + 1; q < n; q++) {
        beside += at(m, p, q) ** 2;
        rotate(m, p, q);
      }
    }
    if (beside <= 1e-30 * diagonal) break;
  }
  return Math.max(...m.map((row, i) => row[i] ?? 0));
}

function rotate(m: Float64Array[], p: number, q: number): void {
  const beside = at(m, p, q);
  if (beside === 0) return;
  const theta = (at(m, q, q) - at(m, p, p)) / (2 * beside);
  const t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
  const c = 1 / Math.sqrt(t * t + 1);
  const s = t * c;
  m.forEach((row) => {
    const [x, y] = [row[p] ?? 0, row[q] ?? 0];
    row[p] = c * x - s * y;
    row[q] = s * x + c * y;
  });
  const [first = [], second = []] = [m[p], m[q]];
  m.forEach((_, k) => {
    const [x, y] = [first[k] ?? 0, second[k] ?? 0];
    first[k] = c * x - s * y;
    second[k] = s * x + c * y;
  });
}
