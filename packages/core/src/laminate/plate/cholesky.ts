type Table = readonly ArrayLike<number>[];

const at = (m: Table, i: number, j: number): number => m[i]?.[j] ?? 0;

/** The lower triangle L of K = L Lᵀ, or undefined when K is not positive definite. */
export function cholesky(K: Table): Float64Array[] | undefined {
  const L = K.map((row) => new Float64Array(row.length));
  for (const [i, row] of L.entries()) {
    for (let j = 0; j <= i; j++) {
      let rest = at(K, i, j);
      for (let k = 0; k < j; k++) rest -= at(L, i, k) * at(L, j, k);
      if (i === j && !(rest > 0)) return undefined;
      row[j] = i === j ? Math.sqrt(rest) : rest / at(L, j, j);
    }
  }
  return L;
}

/** L⁻¹ M by forward substitution. */
export function forward(L: Table, M: Table): Float64Array[] {
  const X: Float64Array[] = [];
  for (const [i, row] of M.entries()) {
    const found = Float64Array.from(row);
    for (let k = 0; k < i; k++) {
      const [factor, above] = [at(L, i, k), X[k]];
      for (let j = 0; j < found.length; j++) found[j] = (found[j] ?? 0) - factor * (above?.[j] ?? 0);
    }
    X.push(found.map((value) => value / at(L, i, i)));
  }
  return X;
}

/** The x of L Lᵀ x = f. */
export function solveWith(L: Table, f: Float64Array): Float64Array {
  const x = Float64Array.from(f);
  for (let i = 0; i < x.length; i++) {
    let rest = x[i] ?? 0;
    for (let k = 0; k < i; k++) rest -= at(L, i, k) * (x[k] ?? 0);
    x[i] = rest / at(L, i, i);
  }
  for (let i = x.length - 1; i >= 0; i--) {
    let rest = x[i] ?? 0;
    for (let k = i + 1; k < x.length; k++) rest -= at(L, k, i) * (x[k] ?? 0);
    x[i] = rest / at(L, i, i);
  }
  return x;
}
