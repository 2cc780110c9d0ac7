import { type RandomState, randomGenerator } from '../../numeric/index.js';
import { fail } from '../../problem/index.js';
import { demandBetween, demandSeed, demandWhole } from './check.js';
import { demandCounts } from './enumeration.js';

export interface Nsga2Options {
  /** Members kept from one generation to the next, whole, 2 to 10 000; 100 when not given. */
  readonly population?: number;
  /** Whole; 1 when not given. */
  readonly seed?: number;
  /** Chance that two parents exchange genes, 0 to 1; 0.9 when not given. */
  readonly crossover?: number;
  /** Chance that a gene changes, 0 to 1; one gene per genome on average when not given. */
  readonly mutation?: number;
  /** Genomes that the first population starts with, flat, at most as many as it has members. */
  readonly initial?: ArrayLike<number>;
}

/** What the search was started with. */
export interface Nsga2Settings {
  /** Choices of each gene. */
  readonly counts: readonly number[];
  /** Objectives of each genome. */
  readonly width: number;
  readonly population: number;
  readonly crossover: number;
  readonly mutation: number;
  readonly initial: readonly number[];
}

/** A search between two generations: plain data, which can be written as JSON and gone on from with the same bits. */
export interface Nsga2State {
  readonly settings: Nsga2Settings;
  /** Generations evaluated. */
  readonly generation: number;
  /** Genomes evaluated. */
  readonly evaluations: number;
  readonly random: RandomState;
  /** The members, flat, the best fronts first. */
  readonly genomes: readonly number[];
  /** Flat, `width` per member. */
  readonly objectives: readonly number[];
  readonly violations: readonly number[];
}

/**
 * A search before its first generation; nothing is evaluated yet.
 *
 * @param counts choices of each gene, 1 or more; gene g is a whole number from 0 to counts[g] - 1
 * @param width number of objectives, whole, 1 to 20
 * @throws out-of-range
 */
export function startNsga2(counts: readonly number[], width: number, options: Nsga2Options = {}): Nsga2State {
  demandCounts(counts);
  const { population = 100, seed = 1, crossover = 0.9, mutation = 1 / counts.length } = options;
  demandSeed(seed);
  const initial = Array.from(options.initial ?? []);
  const settings: Nsga2Settings = { counts: [...counts], width, population, crossover, mutation, initial };
  const state: Nsga2State = {
    settings,
    generation: 0,
    evaluations: 0,
    random: randomGenerator(seed).state(),
    genomes: [],
    objectives: [],
    violations: [],
  };
  demandState(state);
  return state;
}

/** Refuses a state that no search leaves behind, for one read from a file may be anything. @throws out-of-range, contradiction */
export function demandState({ settings, genomes, objectives, violations, random }: Nsga2State): void {
  const { counts, width, population, crossover, mutation, initial } = settings;
  demandCounts(counts);
  demandWhole('the number of objectives', width, 1, 20);
  demandWhole('population', population, 2, 10_000);
  demandBetween('crossover', crossover, 0, 1);
  demandBetween('mutation', mutation, 0, 1);
  demandGenomes('an initial genome', counts, initial);
  demandGenomes('a genome', counts, genomes);
  demandWhole('the number of initial genomes', initial.length / counts.length, 0, population);
  const members = genomes.length / counts.length;
  demandWhole('the number of members', members, 0, population);
  const words = new Set(random.map((word) => word | 0));
  if (
    violations.length !== members ||
    objectives.length !== members * width ||
    random.length !== 4 ||
    (words.size === 1 && words.has(0))
  ) {
    fail({
      code: 'contradiction',
      message: `a state of ${members} genomes with ${objectives.length} objectives, ${violations.length} violations and the random state ${random.join(', ')}`,
      allowed: `${width} objectives and 1 violation per genome; a random state of four words, not all 0`,
    });
  }
}

function demandGenomes(what: string, counts: readonly number[], genomes: readonly number[]): void {
  const genes = counts.length;
  if (genomes.length % genes !== 0) {
    fail({
      code: 'contradiction',
      message: `${what} is not complete: ${genomes.length} genes in all`,
      allowed: `a multiple of ${genes}`,
    });
  }
  genomes.forEach((value, i) => {
    demandWhole(`gene ${(i % genes) + 1} of ${what}`, value, 0, (counts[i % genes] ?? 1) - 1);
  });
}
