import { type DesignInputs, type InputValue, inputAt, variantText } from '../../design/index.js';
import { SelvageError } from '../../problem/index.js';
import { evaluateVariant } from '../evaluate.js';
import { crowdingDistance } from '../method/crowding.js';
import { representativeRows } from '../method/pareto-front.js';
import type { Limit } from './goals.js';
import { type MissingStretch, missingCandidates } from './missing.js';
import { changesOf, type SearchProblem } from './problem.js';
import { isSearchComplete, type SearchState } from './state.js';

/** A limit with what a candidate makes of it. */
export interface LimitMargin {
  readonly value: number;
  /** Distance to the nearer limit, positive inside. */
  readonly margin: number;
  readonly met: boolean;
}

/** A candidate that is shown. */
export interface SearchCandidate {
  readonly genome: readonly number[];
  /** As they would be written in the design file. */
  readonly inputs: readonly { readonly path: string; readonly value: InputValue }[];
  /** SI, in the order of the quantities of the goals. */
  readonly values: readonly number[];
  /** In the order of the limits of the goals. */
  readonly limits: readonly LimitMargin[];
  /** Room around it on the front as a share of the front's range; null at an end of the front and with one aim. */
  readonly crowding: number | null;
  /** What is wrong with the design as a whole, where something is that the search did not look at. */
  readonly problem?: string;
}

/** What a search found. */
export interface SearchResult {
  readonly problem: SearchProblem;
  readonly state: SearchState;
  readonly complete: boolean;
  /** Stretches of the candidates, where all are gone through, that were not; of a share only its own. */
  readonly missing: readonly MissingStretch[];
  /** Candidates on the front, of which some are shown; or, with one aim, how many of the best are kept. */
  readonly front: number;
  readonly candidates: readonly SearchCandidate[];
  /** Quantities of the design as written, SI; absent where it cannot be computed. */
  readonly written?: readonly number[];
  /** What varies, as the design has it, in the order of a candidate's inputs; null where it leaves it out. */
  readonly writtenInputs: readonly InputValue[];
  /** Where no candidate keeps to all limits: the one that misses them by least. */
  readonly closest?: SearchCandidate;
}

function marginOf(limit: Limit, value: number): LimitMargin {
  const { atLeast = Number.NEGATIVE_INFINITY, atMost = Number.POSITIVE_INFINITY } = limit;
  const margin = Math.min(value - atLeast, atMost - value);
  return { value, margin, met: margin >= 0 };
}

function candidateOf(problem: SearchProblem, genome: readonly number[], crowding: number | null): SearchCandidate {
  const { goals, evaluator, inputs } = problem;
  const values = new Float64Array(goals.quantities.length);
  evaluator.evaluate(Int32Array.from(genome), 1, values, new Uint8Array(1));
  const changes = changesOf(problem, genome);
  // The kernel looks at the laminate alone; the rest of the design may not take every stack.
  const whole = evaluator.path === 'kernel' ? evaluateVariant(inputs, changes, { quantities: [] }) : undefined;
  return {
    genome,
    inputs: changes,
    values: [...values],
    limits: goals.limits.map((limit) => marginOf(limit, values[limit.quantity] ?? 0)),
    crowding,
    ...(whole !== undefined && 'problems' in whole ? { problem: whole.problems[0]?.message ?? '' } : {}),
  };
}

/** An input as written; null where the design leaves it out. */
function writtenAt(inputs: DesignInputs, path: string): InputValue {
  try {
    return inputAt(inputs, path);
  } catch (error) {
    if (error instanceof SelvageError) return null;
    throw error;
  }
}

/**
 * What a search has found so far: of a front so many candidates as are to be kept, spread over it; with one aim the best ones in order.
 */
export function searchResult(problem: SearchProblem, state: SearchState): SearchResult {
  const { genes, count, genomes, objectives, steps } = state.tally.leaders;
  const width = steps.length;
  const all = Array.from({ length: count }, (_, i) => i);
  const shown = width === 1 ? all.slice(0, problem.keep) : representativeRows(objectives, width, problem.keep);
  const crowding = width === 1 ? undefined : crowdingDistance(objectives, width, all);
  const candidates = shown.map((i) => {
    const room = crowding?.[i];
    const finite = room !== undefined && Number.isFinite(room) ? room : null;
    return candidateOf(problem, genomes.slice(i * genes, (i + 1) * genes), finite);
  });
  const { closest } = state.tally;
  const written = evaluateVariant(problem.inputs, [], { quantities: problem.goals.quantities });
  return {
    problem,
    state,
    complete: isSearchComplete(problem, state),
    missing: missingCandidates(problem, state),
    front: count,
    candidates,
    ...('values' in written ? { written: written.values } : {}),
    writtenInputs: changesOf(problem, new Int32Array(genes)).map(({ path }) => writtenAt(problem.inputs, path)),
    ...(count > 0 || closest === undefined ? {} : { closest: candidateOf(problem, closest.genome, null) }),
  };
}

/** A candidate as a design file: the file of the search with the candidate's inputs, comments and order as they are. @throws SelvageError as `variantText` */
export const candidateText = (problem: SearchProblem, { genome }: Pick<SearchCandidate, 'genome'>): string =>
  variantText(problem.inputs, changesOf(problem, genome));
