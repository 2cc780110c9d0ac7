import { fail } from '../../problem/index.js';
import { demandWhole } from './check.js';

/** Largest number of choices of a gene: what a 32-bit index holds. */
const mostChoices = 2 ** 31 - 1;

/** Refuses a space without genes, or with a gene that has no choice. @throws out-of-range */
export function demandCounts(counts: readonly number[]): void {
  demandWhole('the number of genes', counts.length, 1, 100_000);
  counts.forEach((count, gene) => {
    demandWhole(`the number of choices of gene ${gene + 1}`, count, 1, mostChoices);
  });
}

/**
 * The number of genomes of a space, exact at any size: the product of the choices.
 * @param counts choices of each gene, 1 or more; gene g is a whole number from 0 to counts[g] - 1
 * @throws out-of-range
 */
export function spaceSize(counts: readonly number[]): bigint {
  demandCounts(counts);
  return counts.reduce((product, count) => product * BigInt(count), 1n);
}

/**
 * The number of genomes of a space that can be gone through one by one.
 * @param most limit, up to 2^53 - 1, the default
 * @throws out-of-range for choices below 1; too-large for more genomes than the limit
 */
export function countableSize(counts: readonly number[], most: number = Number.MAX_SAFE_INTEGER): number {
  const size = spaceSize(counts);
  if (size > BigInt(most)) {
    fail({
      code: 'too-large',
      message: `there are ${size} combinations`,
      allowed: `at most ${most}`,
      hint: 'leave out choices, or search instead of going through all',
    });
  }
  return Number(size);
}

/**
 * The genome with a number, counted with the last gene fastest: rising numbers are genomes in the order of their first unequal gene.
 * @param index 0 to the size of the space less 1
 * @throws out-of-range; too-large for a space of more than 2^53 - 1
 */
export function genomeAt(counts: readonly number[], index: number): Int32Array {
  return genomesFrom(counts, index, 1);
}

/**
 * The number of a genome, the inverse of {@link genomeAt}.
 * @throws out-of-range; too-large for a space of more than 2^53 - 1
 */
export function genomeIndex(counts: readonly number[], genome: ArrayLike<number>): number {
  countableSize(counts);
  demandWhole('the number of genes', genome.length, counts.length, counts.length);
  return counts.reduce((index, count, gene) => {
    const value = genome[gene] ?? 0;
    demandWhole(`gene ${gene + 1}`, value, 0, count - 1);
    return index * count + value;
  }, 0);
}

/**
 * A run of genomes, flat, by counting on from the first.
 * @param from number of the first
 * @param count how many, 1 or more
 * @returns count rows of one number per gene
 * @throws out-of-range when the run leaves the space; too-large for a space of more than 2^53 - 1
 */
export function genomesFrom(counts: readonly number[], from: number, count: number): Int32Array {
  const size = countableSize(counts);
  demandWhole('the number of the genome', from, 0, size - 1);
  demandWhole('the number of genomes', count, 1, size - from);
  const genes = counts.length;
  const out = new Int32Array(count * genes);
  let rest = from;
  for (let g = genes - 1; g >= 0; g--) {
    const choices = counts[g] ?? 1;
    out[g] = rest % choices;
    rest = Math.floor(rest / choices);
  }
  for (let at = genes; at < out.length; at += genes) {
    out.copyWithin(at, at - genes, at);
    countUp(counts, out, at);
  }
  return out;
}

/** Turns the genome at a place into the next one; after the last comes the first. */
export function countUp(counts: readonly number[], genomes: Int32Array, at: number): void {
  for (let g = counts.length - 1; g >= 0; g--) {
    const next = (genomes[at + g] ?? 0) + 1;
    if (next < (counts[g] ?? 1)) {
      genomes[at + g] = next;
      return;
    }
    genomes[at + g] = 0;
  }
}

/** A stretch of numbers: from `from` up to, not including, `to`. */
export interface Share {
  readonly from: number;
  readonly to: number;
}

/**
 * Share k of n of the numbers 0 to size - 1: the n shares follow each other, leave nothing out, and differ by one in length at most.
 * @param size 0 to 2^53 - 1
 * @param k 1 to n
 * @param n 1 to 1 000 000
 * @throws out-of-range
 */
export function shareOf(size: number, k: number, n: number): Share {
  demandWhole('the number of combinations', size, 0, Number.MAX_SAFE_INTEGER);
  demandWhole('the number of shares', n, 1, 1_000_000);
  demandWhole('the share', k, 1, n);
  const rest = size % n;
  const each = (size - rest) / n;
  const start = (before: number): number => each * before + Math.min(before, rest);
  return { from: start(k - 1), to: start(k) };
}
