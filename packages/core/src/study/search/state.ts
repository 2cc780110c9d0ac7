import { fail } from '../../problem/index.js';
import { type Share, shareOf } from '../method/enumeration.js';
import { acceptNsga2 } from '../method/nsga2.js';
import { type Nsga2Proposal, proposeNsga2 } from '../method/nsga2-proposal.js';
import { type Nsga2State, startNsga2 } from '../method/nsga2-state.js';
import { emptyTally, type GenomeResults, tallied } from './blocks.js';
import { candidatesOf, repairedGenomes } from './genomes.js';
import { addTally, type Tally } from './leaders.js';
import type { SearchProblem } from './problem.js';

/** Share K of N of the candidates. */
export type ShardOf = readonly [k: number, n: number];

/** A search between two steps: plain data, which can be written as JSON, gone on from, and put together with that of other shares. */
export interface SearchState {
  readonly format: 1;
  /** Of the design file's values: a state goes with one design only. */
  readonly fingerprint: string;
  readonly method: SearchProblem['method'];
  readonly tally: Tally;
  /** Going through: the numbers that this run has to do, and the stretches done, in rising order, never touching. */
  readonly share?: Share;
  readonly done?: readonly Share[];
  /** Which share this run is, where it is not the whole. */
  readonly shard?: ShardOf;
  /** Of results put together that leave something out: the shares that they were. */
  readonly parts?: readonly ShardOf[];
  /** Breeding: the populations by their seeds; only a single one can be gone on with. */
  readonly seeds?: readonly number[];
  readonly population?: Nsga2State;
}

/** A short word for the values of a design file; other values have, almost surely, another. */
function fingerprint(data: unknown): string {
  const text = JSON.stringify(data);
  const words = [0x9e3779b9, 0x243f6a88, 0xb7e15162, 0x71374491].map((seed) => {
    let x = seed;
    for (let i = 0; i < text.length; i++) {
      x = Math.imul(x ^ text.charCodeAt(i), 0x85ebca6b);
      x ^= x >>> 13;
    }
    return (Math.imul(x, 0xc2b2ae35) >>> 0).toString(16).padStart(8, '0');
  });
  return words.join('');
}

/**
 * A search before its first step.
 * @param shard share K of N of the candidates, the whole when not given
 * @throws SelvageError `contradiction` a share of a search that does not go through its candidates; `out-of-range`
 */
export function startSearch(problem: SearchProblem, shard?: ShardOf): SearchState {
  const { method, inputs, counts, goals, population, seed } = problem;
  const common = { format: 1, fingerprint: fingerprint(inputs.data), method, tally: emptyTally(problem) } as const;
  if (method === 'exhaustive') {
    const [k, n] = shard ?? [1, 1];
    const share = shareOf(candidatesOf(problem), k, n);
    return { ...common, share, done: [], ...(n === 1 ? {} : { shard: [k, n] }) };
  }
  if (shard !== undefined) {
    fail({
      code: 'contradiction',
      message: 'this search breeds its candidates and has no shares',
      allowed: 'shares where all candidates are gone through (`method: exhaustive`)',
      hint: 'run it with several seeds and put the results together',
    });
  }
  return { ...common, seeds: [seed], population: startNsga2(counts, goals.aims.length, { population, seed }) };
}

/** Stretches that are left, in rising order. */
export function remainingCandidates({ share, done = [] }: SearchState): readonly Share[] {
  if (share === undefined) return [];
  const left: Share[] = [];
  let from = share.from;
  for (const stretch of done) {
    if (stretch.from > from) left.push({ from, to: Math.min(stretch.from, share.to) });
    from = Math.max(from, stretch.to);
  }
  if (from < share.to) left.push({ from, to: share.to });
  return left.filter(({ from, to }) => from < to);
}

/** Whether nothing is left to do. */
export function isSearchComplete({ generations }: SearchProblem, state: SearchState): boolean {
  if (state.share !== undefined) return remainingCandidates(state).length === 0;
  return state.population === undefined || state.population.generation >= generations;
}

/** Stretches joined where they touch. @throws contradiction where they overlap */
function joined(stretches: readonly Share[]): readonly Share[] {
  const out: Share[] = [];
  for (const stretch of [...stretches].sort((a, b) => a.from - b.from)) {
    if (stretch.from === stretch.to) continue;
    const last = out.at(-1);
    if (last !== undefined && stretch.from < last.to) {
      fail({
        code: 'contradiction',
        message: `candidates ${stretch.from + 1} to ${Math.min(stretch.to, last.to)} are in two of the results`,
        allowed: 'results of different shares',
      });
    }
    if (last !== undefined && stretch.from === last.to) out[out.length - 1] = { from: last.from, to: stretch.to };
    else out.push(stretch);
  }
  return out;
}

/** The state after a stretch was gone through. */
export const acceptRange = (state: SearchState, stretch: Share, tally: Tally): SearchState =>
  withParts({ ...state, tally: addTally(state.tally, tally), done: joined([...(state.done ?? []), stretch]) });

/** Shares that results were stay known for as long as something is missing. */
function withParts({ parts = [], ...state }: SearchState): SearchState {
  return parts.length === 0 || remainingCandidates(state).length === 0 ? state : { ...state, parts };
}

/** Genomes that the next generation has to evaluate, made candidates. */
export function proposeGeneration(problem: SearchProblem, { population }: SearchState): Nsga2Proposal | undefined {
  if (population === undefined) return undefined;
  const proposal = proposeNsga2(population);
  const genomes = repairedGenomes(problem, proposal.genomes, population.genomes);
  return { ...proposal, genomes, count: genomes.length / problem.layout.genes };
}

/** The state after a generation was evaluated. */
export function acceptGeneration(state: SearchState, proposal: Nsga2Proposal, results: GenomeResults): SearchState {
  if (state.population === undefined) return state;
  return {
    ...state,
    tally: tallied(state.tally, proposal.count, proposal.genomes, results),
    population: acceptNsga2(state.population, proposal, results.objectives, results.violations),
  };
}

/** Refuses a state of another design or another way to search. @throws contradiction */
export function demandSameSearch(problem: SearchProblem, state: SearchState): void {
  if (state.fingerprint === fingerprint(problem.inputs.data) && state.method === problem.method) return;
  fail({
    code: 'contradiction',
    message: 'the result is that of another design, or of this one before it was changed',
    allowed: 'results of the same design file',
  });
}

/**
 * The state of several runs together: of shares as if one run had gone through all of them, of breedings with different seeds the best of all.
 * @throws SelvageError `contradiction` states of another design, shares that overlap, one seed twice
 */
export function mergeSearches(problem: SearchProblem, states: readonly SearchState[]): SearchState {
  for (const state of states) demandSameSearch(problem, state);
  const tally = states.map((state) => state.tally).reduce(addTally, emptyTally(problem));
  const common = { format: 1, fingerprint: fingerprint(problem.inputs.data), method: problem.method, tally } as const;
  if (problem.method === 'exhaustive') {
    const done = joined(states.flatMap((state) => state.done ?? []));
    const parts = states.flatMap(({ shard, parts: own = [] }) => (shard === undefined ? own : [shard]));
    return withParts({ ...common, share: shareOf(candidatesOf(problem), 1, 1), done, parts });
  }
  const seeds = states.flatMap((state) => state.seeds ?? []);
  const twice = seeds.find((seed, i) => seeds.indexOf(seed) < i);
  if (twice !== undefined) {
    fail({
      code: 'contradiction',
      message: `two of the results have the seed ${twice}`,
      allowed: 'results of different seeds',
    });
  }
  const [only] = states.length === 1 ? states : [];
  return {
    ...common,
    seeds: [...seeds].sort((a, b) => a - b),
    ...(only?.population === undefined ? {} : { population: only.population }),
  };
}
