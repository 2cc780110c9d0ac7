/** The product of two vectors of one length. */
export function dot(p: Float64Array, q: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < p.length; k++) sum += p[k]! * q[k]!;
  return sum;
}

/** The products of all pairs of vectors, a symmetric table. */
export function gram(vectors: readonly Float64Array[]): Float64Array[] {
  const n = vectors.length;
  const table = vectors.map(() => new Float64Array(n));
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      const value = dot(vectors[i]!, vectors[j]!);
      table[i]![j] = value;
      table[j]![i] = value;
    }
  }
  return table;
}

/** The product of a table of rows with a vector. */
export function apply(rows: readonly ArrayLike<number>[], x: Float64Array): Float64Array {
  const product = new Float64Array(rows.length);
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i]!;
    let sum = 0;
    for (let j = 0; j < x.length; j++) sum += row[j]! * x[j]!;
    product[i] = sum;
  }
  return product;
}

/**
 * A table times the derivative of all products of two of n numbers: column i of row m has the sum of Q[m][ij] c_j over the pairs with i.
 *
 * @param first the two numbers of each pair, by their place in c
 */
export function timesPairDerivative(
  Q: readonly Float64Array[],
  first: Int32Array,
  second: Int32Array,
  c: Float64Array,
): Float64Array[] {
  return Q.map((row) => {
    const sums = new Float64Array(c.length);
    for (let n = 0; n < row.length; n++) {
      const i = first[n]!;
      const j = second[n]!;
      sums[i]! += row[n]! * c[j]!;
      sums[j]! += row[n]! * c[i]!;
    }
    return sums;
  });
}
