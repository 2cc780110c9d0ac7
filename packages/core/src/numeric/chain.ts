/**
 * Solves the linear system of a chain: points with `size` unknowns each, conditions on the first and the last point, and
 * between neighbours as many equations as unknowns.
 *
 * What boundary-value problems in one dimension lead to. Elimination goes from the first point to the last with row
 * pivoting inside each link, so that growing and decaying solutions are kept apart: work and memory grow with the number of points only. Zeros are
 * passed over, for links have many.
 * Our own because no library in use has a solver for banded or block systems.
 *
 * All tables row-major; the last number of each row is its right-hand side.
 *
 * @param size unknowns per point
 * @param left number of conditions on the first point; the last point has size - left
 * @param first left rows of size + 1
 * @param links per link size rows of 2 size + 1: of the nearer point, of the farther, right-hand side; overwritten by the elimination
 * @param last size - left rows of size + 1
 * @returns the unknowns, point by point, or undefined when a pivot is zero or not a number
 */
export function solveChain(
  size: number,
  left: number,
  first: ArrayLike<number>,
  links: Float64Array,
  last: ArrayLike<number>,
): Float64Array | undefined {
  const m = size;
  const width = 2 * m + 1;
  const rows = left + m;
  const block = m * width;
  const count = links.length / block;
  const w = new Float64Array(rows * width);
  const filled = new Int32Array(width);
  spread(first, w, 0, left, m);

  for (let link = 0; link < count; link++) {
    const from = link * block;
    for (let i = 0; i < block; i++) w[left * width + i] = links[from + i]!;
    if (!eliminate(w, rows, m, width, filled)) return undefined;
    for (let i = 0; i < block; i++) links[from + i] = w[i]!;
    // What is left has zeros at the nearer point: it conditions the farther one.
    for (let i = 0; i < left; i++) {
      const to = i * width;
      const row = (m + i) * width;
      for (let j = 0; j < m; j++) {
        w[to + j] = w[row + m + j]!;
        w[to + m + j] = 0;
      }
      w[to + 2 * m] = w[row + 2 * m]!;
    }
  }
  spread(last, w, left, m - left, m);
  if (!eliminate(w, m, m, width, filled)) return undefined;

  const x = new Float64Array((count + 1) * m);
  const at = count * m;
  for (let i = m - 1; i >= 0; i--) {
    const row = i * width;
    let rest = w[row + 2 * m]!;
    for (let j = i + 1; j < m; j++) rest -= w[row + j]! * x[at + j]!;
    x[at + i] = rest / w[row + i]!;
  }
  for (let link = count - 1; link >= 0; link--) {
    const near = link * m;
    for (let i = m - 1; i >= 0; i--) {
      const row = link * block + i * width;
      let rest = links[row + 2 * m]!;
      for (let j = i + 1; j < 2 * m; j++) rest -= links[row + j]! * x[near + j]!;
      x[near + i] = rest / links[row + i]!;
    }
  }
  return x;
}

/** Rows of m + 1 numbers into rows of 2 m + 1 from `start` on, the last number to the end, zeros between. */
function spread(from: ArrayLike<number>, to: Float64Array, start: number, rows: number, m: number): void {
  for (let i = 0; i < rows; i++) {
    const row = (start + i) * (2 * m + 1);
    for (let j = 0; j < m; j++) {
      to[row + j] = from[i * (m + 1) + j]!;
      to[row + m + j] = 0;
    }
    to[row + 2 * m] = from[i * (m + 1) + m]!;
  }
}

/** Makes the first m columns of the rows upper triangular; `filled` is room for the columns in which a pivot's row is not 0. */
function eliminate(w: Float64Array, rows: number, m: number, width: number, filled: Int32Array): boolean {
  for (let k = 0; k < m; k++) {
    let best = k;
    let most = Math.abs(w[k * width + k]!);
    for (let i = k + 1; i < rows; i++) {
      const here = Math.abs(w[i * width + k]!);
      if (here > most) {
        best = i;
        most = here;
      }
    }
    if (!(most > 0 && most < Number.POSITIVE_INFINITY)) return false;
    const pivotRow = k * width;
    if (best !== k) {
      const other = best * width;
      for (let j = k; j < width; j++) {
        const swap = w[pivotRow + j]!;
        w[pivotRow + j] = w[other + j]!;
        w[other + j] = swap;
      }
    }
    const pivot = w[pivotRow + k]!;
    let count = 0;
    for (let j = k + 1; j < width; j++) if (w[pivotRow + j] !== 0) filled[count++] = j;
    for (let i = k + 1; i < rows; i++) {
      const row = i * width;
      const entry = w[row + k]!;
      if (entry === 0) continue;
      const factor = entry / pivot;
      for (let c = 0; c < count; c++) {
        const j = filled[c]!;
        w[row + j] = w[row + j]! - factor * w[pivotRow + j]!;
      }
    }
  }
  return true;
}
