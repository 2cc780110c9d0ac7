import { genomeAt } from '../method/enumeration.js';
import type { SearchProblem } from './problem.js';
import { nextStack, repairedStack, stackBuilder } from './stack-rules.js';

/** Number of candidates of a space that is gone through. */
export const candidatesOf = ({ size }: Pick<SearchProblem, 'size'>): number => Number(size.candidates ?? 0n);

/**
 * Gives the candidates from a number on, one after the other, in the order of their first unequal gene.
 * @returns a function that fills the first `count` rows of a table of genomes with the next ones
 */
export function candidatesFrom(
  { varied, space, layout }: SearchProblem,
  from: number,
): (into: Int32Array, count: number) => void {
  const { genes, inputs, length: lengthGene, plies: firstPly } = layout;
  const counts = varied.map(({ values }) => values.length);
  const inputsAt = (index: number): Int32Array => (counts.length === 0 ? new Int32Array(0) : genomeAt(counts, index));
  if (space === undefined) {
    let index = from;
    return (into, count) => {
      for (let k = 0; k < count; k++) into.set(inputsAt(index++), k * genes);
    };
  }
  const { rules, counter } = space;
  const stacks = Number(counter?.all.stacks ?? 0n);
  const each = counter?.each.map((one) => Number(one.stacks)) ?? [];
  const builders = rules.lengths.map((length) => stackBuilder(rules, length));

  let combination = Math.floor(from / stacks);
  let values = inputsAt(combination);
  let length = 0;
  let rest = from % stacks;
  while (rest >= (each[length] ?? Number.POSITIVE_INFINITY)) {
    rest -= each[length] ?? 0;
    length++;
  }
  let builder = builders[length]!;
  counter?.goTo(builder, rest);
  let ready = true;

  const advance = (): void => {
    while (!nextStack(rules, builder)) {
      length++;
      if (length === builders.length) {
        length = 0;
        combination++;
        values = inputsAt(combination);
      }
      builder = builders[length]!;
    }
  };
  return (into, count) => {
    for (let k = 0; k < count; k++) {
      if (ready) ready = false;
      else advance();
      const at = k * genes;
      for (let i = 0; i < inputs; i++) into[at + i] = values[i]!;
      if (lengthGene >= 0) into[at + lengthGene] = length;
      const { stack } = builder;
      const ply = at + firstPly;
      for (let i = 0; i < stack.length; i++) into[ply + i] = stack[i]!;
      into.fill(0, ply + stack.length, at + genes);
    }
  };
}

/**
 * The genomes that a breeding proposes, made candidates: stacks that break a rule become the nearest that keep to all, plies beyond the stack 0; what then
 * is known already is left out.
 * @param known genomes that are evaluated already, flat
 */
export function repairedGenomes(
  { space, layout }: SearchProblem,
  proposed: Int32Array,
  known: ArrayLike<number>,
): Int32Array {
  const { genes, length: lengthGene, plies: firstPly } = layout;
  const builders = space?.rules.lengths.map((length) => stackBuilder(space.rules, length)) ?? [];
  const seen = new Set<string>();
  for (let at = 0; at < known.length; at += genes) {
    seen.add(Array.from({ length: genes }, (_, i) => known[at + i]).join());
  }
  const kept: number[] = [];
  for (let at = 0; at < proposed.length; at += genes) {
    const genome = proposed.slice(at, at + genes);
    if (space !== undefined) {
      const builder = builders[lengthGene < 0 ? 0 : (genome[lengthGene] ?? 0)]!;
      if (!repairedStack(space.rules, builder, genome.subarray(firstPly))) continue;
      genome.fill(0, firstPly);
      genome.set(builder.stack, firstPly);
    }
    const key = genome.join();
    if (seen.has(key)) continue;
    seen.add(key);
    kept.push(...genome);
  }
  return Int32Array.from(kept);
}
