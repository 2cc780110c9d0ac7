export type { Amount } from './amount.js';
export { type ComparedDesign, type Comparison, compare, type DifferingInput, type MovedQuantity } from './compare.js';
export { type Difference, differencesBetween, partsOnlyIn } from './differences.js';
export { type Evaluated, type Evaluation, evaluateDesign, evaluateVariant, type Wanted } from './evaluate.js';
export { type Convergence, convergence } from './method/convergence.js';
export { type CorrelationRatioOptions, correlationRatio } from './method/correlation-ratio.js';
export { type Moments, momentsOf } from './method/distribution-moments.js';
export {
  type Cut,
  type Distribution,
  demandDistribution,
  distributionOfPrior,
  type Lognormal,
  lognormalOf,
  type Normal,
  quantileFunction,
  type Triangular,
  type Uniform,
} from './method/distributions.js';
export {
  countableSize,
  genomeAt,
  genomeIndex,
  genomesFrom,
  type Share,
  shareOf,
  spaceSize,
} from './method/enumeration.js';
export type { BootstrapOptions, RangedEstimate } from './method/estimate.js';
export { type Limit, limitProbability, wilson } from './method/limit-probability.js';
export {
  type InputEffect,
  type LinearMoments,
  type LinearMomentsOptions,
  linearMoments,
} from './method/linear-moments.js';
export { acceptNsga2, type EvaluateGenomes, type Nsga2Front, nsga2Front, stepNsga2 } from './method/nsga2.js';
export { type Nsga2Proposal, proposeNsga2 } from './method/nsga2-proposal.js';
export { type Nsga2Options, type Nsga2Settings, type Nsga2State, startNsga2 } from './method/nsga2-state.js';
export { addToArchive, emptyArchive, mergeArchives, type ParetoArchive } from './method/pareto-archive.js';
export { nonDominatedRows, representativeRows } from './method/pareto-front.js';
export { saltelliDesign } from './method/saltelli-design.js';
export {
  type Percentile,
  type SampleSummary,
  type SummaryOptions,
  sampleSummary,
  type WithError,
} from './method/sample-summary.js';
export { type EvaluatePoints, latinHypercube, sampleRows } from './method/sampled-model.js';
export {
  type SobolIndex,
  type SobolIndices,
  type SobolOptions,
  sobolIndices,
  sobolIndicesOf,
} from './method/sobol-indices.js';
export {
  type Aim as SearchAim,
  acceptGeneration,
  acceptRange,
  type ChoiceLayers,
  type Closest as ClosestCandidate,
  candidateText,
  type Evaluator as SearchEvaluator,
  evaluateGenomes,
  evaluateRange,
  finishSearch,
  type GenomeBlock,
  type GenomeLayout,
  type GenomeResults,
  type Goals as SearchGoals,
  genomeBlocks,
  isSearchComplete,
  type Leaders,
  type Limit as SearchLimit,
  type LimitMargin,
  type MissingStretch,
  mergeSearches,
  proposeGeneration,
  type RangeBlock,
  rangeBlocks,
  readSearchState,
  remainingCandidates,
  type SearchCandidate,
  type SearchOptions,
  type SearchProblem,
  type SearchResult,
  type SearchState,
  type ShardOf,
  type SpaceSize,
  type StackBuilder,
  type StackChoice,
  type StackCount,
  type StackCounter,
  type StackRules,
  type StackSpace,
  search,
  searchProblem,
  searchResult,
  startSearch,
  type Tally as SearchTally,
  type VariedInput,
} from './search/index.js';
export {
  type InputResponse,
  type InputSensitivity,
  type Sensitivity,
  type SensitivityOptions,
  sensitivity,
} from './sensitivity.js';
export { type Sweep, type SweepPoint, sweep } from './sweep.js';
export { type UncertainInput, uncertainInputs } from './tolerances.js';
export {
  type TargetProbability,
  type UncertainQuantity,
  type Uncertainty,
  type UncertaintyOptions,
  uncertainty,
} from './uncertainty.js';
export { parseVariation, type Variation } from './variation.js';
