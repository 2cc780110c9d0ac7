/** What the operators of variation share: choices of each gene, chances, and numbers from 0 to 1. */
export interface Operators {
  readonly counts: readonly number[];
  /** Chance that two parents exchange genes. */
  readonly crossover: number;
  /** Chance that a gene changes. */
  readonly mutation: number;
  readonly random: () => number;
}

/** A whole number from 0 to n - 1, all equally likely to n/2^32. */
export const wholeBelow = (n: number, random: () => number): number => Math.floor(random() * n);

/**
 * The better of two members drawn at random: that of the earlier front, in one front that with more room around it.
 * @source Deb, Pratap, Agarwal & Meyarivan 2002, section III B (crowded comparison)
 */
export function tournament(rank: Int32Array, crowding: Float64Array, random: () => number): number {
  const a = wholeBelow(rank.length, random);
  const b = wholeBelow(rank.length, random);
  const [ra, rb] = [rank[a] ?? 0, rank[b] ?? 0];
  if (ra !== rb) return ra < rb ? a : b;
  return (crowding[b] ?? 0) > (crowding[a] ?? 0) ? b : a;
}

/** Exchanges the genes between two cuts, which leaves runs of genes together, with the chance of crossover. */
export function exchange({ crossover, random }: Operators, first: Int32Array, second: Int32Array): void {
  if (random() >= crossover) return;
  const cuts = first.length + 1;
  const [a, b] = [wholeBelow(cuts, random), wholeBelow(cuts, random)];
  for (let g = Math.min(a, b); g < Math.max(a, b); g++) {
    const gene = first[g] ?? 0;
    first[g] = second[g] ?? 0;
    second[g] = gene;
  }
}

/** Gives each gene, with the chance of mutation, another of its choices. */
export function mutate(operators: Operators, genome: Int32Array): void {
  for (let g = 0; g < genome.length; g++) {
    if (operators.random() < operators.mutation) change(operators, genome, g);
  }
}

/** Gives one gene another of its choices; nothing happens where there is only one. */
export function change({ counts, random }: Operators, genome: Int32Array, g: number): void {
  const choices = counts[g] ?? 1;
  if (choices < 2) return;
  const other = wholeBelow(choices - 1, random);
  genome[g] = other < (genome[g] ?? 0) ? other : other + 1;
}
