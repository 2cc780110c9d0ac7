/**
 * Solves the small dense system M x = f by elimination with row pivoting.
 *
 * Meant for systems whose unknowns were scaled to like size beforehand; for at most a dozen unknowns.
 *
 * @param m n rows of n numbers
 * @param f n numbers
 * @returns the n unknowns, or undefined when a pivot is below 1e-14 of the largest entry: the matrix is singular in double precision
 */
export function solve(m: readonly (readonly number[])[], f: readonly number[]): number[] | undefined {
  const n = f.length;
  const rows = m.map((row, i) => [...row, f[i]!]);
  const smallest = 1e-14 * Math.max(0, ...m.flat().map(Math.abs));
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(rows[i]![k]!) > Math.abs(rows[best]![k]!)) best = i;
    [rows[k], rows[best]] = [rows[best]!, rows[k]!];
    const pivot = rows[k]!;
    if (!(Math.abs(pivot[k]!) > smallest)) return undefined;
    for (let i = k + 1; i < n; i++) {
      const row = rows[i]!;
      const factor = row[k]! / pivot[k]!;
      for (let j = k; j <= n; j++) row[j] = row[j]! - factor * pivot[j]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    const row = rows[i]!;
    let rest = row[n]!;
    for (let j = i + 1; j < n; j++) rest -= row[j]! * x[j]!;
    x[i] = rest / row[i]!;
  }
  return x;
}
