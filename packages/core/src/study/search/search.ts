import type { DesignInputs } from '../../design/index.js';
import { evaluateGenomes, evaluateRange } from './blocks.js';
import { rangeBlocks } from './blocks-of.js';
import { type SearchOptions, type SearchProblem, searchProblem } from './problem.js';
import { type SearchResult, searchResult } from './result.js';
import {
  acceptGeneration,
  acceptRange,
  isSearchComplete,
  proposeGeneration,
  type SearchState,
  startSearch,
} from './state.js';

/** A state gone on with to its end. */
export function finishSearch(problem: SearchProblem, from: SearchState): SearchState {
  let state = from;
  for (const block of rangeBlocks(problem, state)) state = acceptRange(state, block, evaluateRange(problem, block));
  while (!isSearchComplete(problem, state)) {
    const proposal = proposeGeneration(problem, state);
    if (proposal === undefined) break;
    state = acceptGeneration(state, proposal, evaluateGenomes(problem, proposal));
  }
  return state;
}

/**
 * The best candidates of a design's `search`: all of them gone through, or bred generation by generation.
 *
 * The same design gives the same bits.
 *
 * @throws SelvageError as {@link searchProblem}
 */
export function search(inputs: DesignInputs, options: SearchOptions = {}): SearchResult {
  const problem = searchProblem(inputs, options);
  return searchResult(problem, finishSearch(problem, startSearch(problem)));
}
