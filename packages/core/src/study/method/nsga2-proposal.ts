import { type RandomState, randomGenerator } from '../../numeric/index.js';
import { crowdingDistance } from './crowding.js';
import { countUp, spaceSize } from './enumeration.js';
import { change, exchange, mutate, type Operators, tournament, wholeBelow } from './genetic-operators.js';
import { nonDominatedSort } from './non-dominated-sort.js';
import { demandState, type Nsga2State } from './nsga2-state.js';

/** Genomes to be evaluated next, and the generator's state after they were drawn. */
export interface Nsga2Proposal {
  /** Flat, all different from one another and from the members. */
  readonly genomes: Int32Array;
  readonly count: number;
  readonly random: RandomState;
}

/** Changes of one gene after which a child that is still no new genome is left out. */
const mostChanges = 10;

/**
 * The genomes that the next generation has to evaluate: a first population, or the children of the members.
 *
 * Children come from two parents, each the better of two drawn at random, by exchange of the genes between two cuts and by mutation. A child
 * that is among the members or the children already is changed gene by gene until it is new; after ten changes it is left out, so that a
 * space that is nearly used up gives fewer children than members.
 *
 * @throws out-of-range or contradiction for a state that no search leaves behind
 * @source Deb, Pratap, Agarwal & Meyarivan 2002, section III C
 */
export function proposeNsga2(state: Nsga2State): Nsga2Proposal {
  demandState(state);
  const { random, state: randomState } = randomGenerator(state.random);
  const genomes = state.violations.length === 0 ? firstGenomes(state, random) : children(state, random);
  const count = genomes.length / state.settings.counts.length;
  return { genomes, count, random: randomState() };
}

/** The initial genomes, then random ones; where a random one is there already the next in the order of counting that is not. */
function firstGenomes({ settings }: Nsga2State, random: () => number): Int32Array {
  const { counts, population, initial } = settings;
  const size = spaceSize(counts);
  const book = collection(counts.length, size < BigInt(population) ? Number(size) : population);
  for (let at = 0; at < initial.length; at += counts.length)
    book.add(Int32Array.from(initial.slice(at, at + counts.length)));
  while (!book.full()) {
    const genome = Int32Array.from(counts, (choices) => wholeBelow(choices, random));
    while (!book.add(genome)) countUp(counts, genome, 0);
  }
  return book.genomes();
}

function children({ settings, genomes, ...results }: Nsga2State, random: () => number): Int32Array {
  const { counts, width, population, crossover, mutation } = settings;
  const genes = counts.length;
  const operators: Operators = { counts, crossover, mutation, random };
  const { rank, crowding } = standing(results.objectives, width, results.violations);
  const book = collection(genes, population);
  const member = (i: number): Int32Array => Int32Array.from(genomes.slice(i * genes, (i + 1) * genes));
  for (let i = 0; i < rank.length; i++) book.know(member(i));

  for (let failures = 0; !book.full() && failures < population; ) {
    const first = member(tournament(rank, crowding, random));
    const second = member(tournament(rank, crowding, random));
    exchange(operators, first, second);
    for (const child of [first, second]) {
      mutate(operators, child);
      let changes = 0;
      while (!book.add(child) && changes < mostChanges) {
        change(operators, child, wholeBelow(genes, random));
        changes++;
      }
      if (changes === mostChanges) failures++;
    }
  }
  return book.genomes();
}

/** Front and crowding of each member. */
function standing(objectives: readonly number[], width: number, violations: readonly number[]) {
  const rank = new Int32Array(violations.length);
  const crowding = new Float64Array(violations.length);
  nonDominatedSort({ objectives, width, violations }, violations.length).forEach((front, number) => {
    const distances = crowdingDistance(objectives, width, front);
    front.forEach((i, place) => {
      rank[i] = number;
      crowding[i] = distances[place] ?? 0;
    });
  });
  return { rank, crowding };
}

/** Genomes gathered up to a number, none twice and none that is known. */
function collection(genes: number, most: number) {
  const seen = new Set<string>();
  const out = new Int32Array(most * genes);
  let count = 0;
  return {
    full: () => count === most,
    know: (genome: Int32Array) => seen.add(genome.join()),
    /** True when the genome was new; nothing is added to a full collection. */
    add(genome: Int32Array): boolean {
      if (count === most) return true;
      const key = genome.join();
      if (seen.has(key)) return false;
      seen.add(key);
      out.set(genome, count * genes);
      count++;
      return true;
    },
    genomes: () => out.slice(0, count * genes),
  };
}
