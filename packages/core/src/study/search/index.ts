export { evaluateGenomes, evaluateRange, type GenomeBlock, type GenomeResults, type RangeBlock } from './blocks.js';
export { genomeBlocks, rangeBlocks } from './blocks-of.js';
export type { ChoiceLayers } from './choice-layers.js';
export type { Evaluator, GenomeLayout } from './evaluator.js';
export type { Aim, Goals, Limit } from './goals.js';
export type { Closest, Leaders, Tally } from './leaders.js';
export type { MissingStretch } from './missing.js';
export { type SearchOptions, type SearchProblem, type SpaceSize, searchProblem, type VariedInput } from './problem.js';
export { readSearchState } from './read-state.js';
export {
  candidateText,
  type LimitMargin,
  type SearchCandidate,
  type SearchResult,
  searchResult,
} from './result.js';
export { finishSearch, search } from './search.js';
export type { StackChoice } from './stack-choices.js';
export type { StackCount, StackCounter } from './stack-count.js';
export type { StackBuilder, StackRules } from './stack-rules.js';
export type { StackSpace } from './stack-space.js';
export {
  acceptGeneration,
  acceptRange,
  isSearchComplete,
  mergeSearches,
  proposeGeneration,
  remainingCandidates,
  type SearchState,
  type ShardOf,
  startSearch,
} from './state.js';
