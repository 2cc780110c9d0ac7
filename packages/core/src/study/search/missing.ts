import { type Share, shareOf } from '../method/enumeration.js';
import { candidatesOf } from './genomes.js';
import type { SearchProblem } from './problem.js';
import { remainingCandidates, type SearchState, type ShardOf } from './state.js';

/** A stretch of the candidates that a search has left out so far. */
export interface MissingStretch extends Share {
  /** The shares that it is made of, K of N, where the results that were put together are such shares. */
  readonly shards?: readonly ShardOf[];
}

/**
 * What is left of a search that goes through its candidates, in rising order; of shares that were put together with the names of those that are not there.
 * A share of which a part was done is not named.
 */
export function missingCandidates(problem: SearchProblem, state: SearchState): readonly MissingStretch[] {
  const { parts = [] } = state;
  const [first, ...others] = parts;
  const left = remainingCandidates(state);
  if (first === undefined || others.some(([, n]) => n !== first[1])) return left;
  const n = first[1];
  const all = Array.from({ length: n }, (_, k) => ({ k: k + 1, ...shareOf(candidatesOf(problem), k + 1, n) }));
  return left.map((stretch) => {
    const within = all.filter(({ from, to }) => from < to && from >= stretch.from && to <= stretch.to);
    const size = within.reduce((sum, { from, to }) => sum + to - from, 0);
    return size === stretch.to - stretch.from
      ? { ...stretch, shards: within.map(({ k }): ShardOf => [k, n]) }
      : stretch;
  });
}
