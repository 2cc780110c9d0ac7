/** Flat results of candidates: a row of `width` objectives each, to be made small, and one violation of constraints each. */
export interface Candidates {
  readonly objectives: ArrayLike<number>;
  /** Objectives of each candidate. */
  readonly width: number;
  /** 0 where all constraints are met, else above 0: by how much they are missed together. */
  readonly violations: ArrayLike<number>;
}

/**
 * Constrained domination of two candidates.
 *
 * The one with the smaller violation dominates; at equal violations the one that is nowhere worse and somewhere better.
 *
 * @returns -1 when i dominates j, 1 when j dominates i, 0 when neither does
 * @source Deb, Pratap, Agarwal & Meyarivan 2002, definition 1
 */
export function constrainedDomination({ objectives, width, violations }: Candidates, i: number, j: number): -1 | 0 | 1 {
  const [vi, vj] = [violations[i] ?? 0, violations[j] ?? 0];
  if (vi !== vj) return vi < vj ? -1 : 1;
  let order: -1 | 0 | 1 = 0;
  for (let p = i * width, q = j * width, end = p + width; p < end; p++, q++) {
    const [a, b] = [objectives[p] ?? 0, objectives[q] ?? 0];
    if (a === b) continue;
    const here = a < b ? -1 : 1;
    if (order !== 0 && order !== here) return 0;
    order = here;
  }
  return order;
}
