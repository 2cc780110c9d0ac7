import { fail } from '../../problem/index.js';
import { demandFiniteResults } from './check.js';
import { crowdingDistance } from './crowding.js';
import { nonDominatedSort } from './non-dominated-sort.js';
import { type Nsga2Proposal, proposeNsga2 } from './nsga2-proposal.js';
import type { Nsga2State } from './nsga2-state.js';
import { compareRows } from './rows.js';

/**
 * Evaluates genomes: reads `count` rows of genes, writes as many rows of objectives, to be made small, and one violation per genome:
 * 0 where all constraints are met, else above 0, by how much they are missed together (shares of their limits added up, say).
 * All must be finite; a genome that cannot be computed gets a large violation.
 */
export type EvaluateGenomes = (
  genomes: Int32Array,
  count: number,
  objectives: Float64Array,
  violations: Float64Array,
) => void;

/**
 * The search one generation on: NSGA-II for genomes of whole numbers.
 *
 * The same state gives the same bits. `proposeNsga2` and `acceptNsga2` are its two halves, for an evaluation that is spread over workers.
 *
 * @throws out-of-range or contradiction for a state that no search leaves behind; not-computable when the evaluation gives a number that is not
 * finite; out-of-range for a violation below 0
 * @source Deb, Pratap, Agarwal & Meyarivan 2002, deb-2002
 */
export function stepNsga2(state: Nsga2State, evaluate: EvaluateGenomes): Nsga2State {
  const proposal = proposeNsga2(state);
  const objectives = new Float64Array(proposal.count * state.settings.width);
  const violations = new Float64Array(proposal.count);
  if (proposal.count > 0) evaluate(proposal.genomes, proposal.count, objectives, violations);
  return acceptNsga2(state, proposal, objectives, violations);
}

/**
 * The next state from the proposed genomes and their results: the best of members and children together.
 *
 * Whole fronts are kept while there is room; of the front that no longer fits those with the most room around them.
 *
 * @param objectives flat, a row per proposed genome
 * @param violations one per proposed genome, 0 or more
 * @throws contradiction for results of another number than the genomes; not-computable; out-of-range for a violation below 0
 * @source Deb, Pratap, Agarwal & Meyarivan 2002, section III C
 */
export function acceptNsga2(
  state: Nsga2State,
  proposal: Nsga2Proposal,
  objectives: ArrayLike<number>,
  violations: ArrayLike<number>,
): Nsga2State {
  const { counts, width, population } = state.settings;
  demandResults(proposal.count, width, objectives, violations);
  // Adding 0 turns -0 into 0, which JSON does not keep apart.
  const all = {
    width,
    objectives: [...state.objectives, ...Array.from(objectives, (value) => value + 0)],
    violations: [...state.violations, ...Array.from(violations, (value) => value + 0)],
  };
  const genomes = [...state.genomes, ...proposal.genomes];
  const kept: number[] = [];
  for (const front of nonDominatedSort(all, all.violations.length)) {
    const room = population - kept.length;
    if (room <= 0) break;
    kept.push(...(front.length <= room ? front : roomiest(all.objectives, width, front, room)));
  }
  const rows = (table: readonly number[], size: number): number[] =>
    kept.flatMap((i) => table.slice(i * size, (i + 1) * size));
  return {
    settings: state.settings,
    generation: state.generation + 1,
    evaluations: state.evaluations + proposal.count,
    random: proposal.random,
    genomes: rows(genomes, counts.length),
    objectives: rows(all.objectives, width),
    violations: rows(all.violations, 1),
  };
}

/** The members of a front with the most room around them, in the order of the front. */
function roomiest(objectives: readonly number[], width: number, front: readonly number[], count: number): number[] {
  const distance = crowdingDistance(objectives, width, front);
  const places = front.map((_, place) => place);
  // A difference of two infinities is not a number; || then goes on to the order of the front.
  places.sort((a, b) => (distance[b] ?? 0) - (distance[a] ?? 0) || a - b);
  return places
    .slice(0, count)
    .sort((a, b) => a - b)
    .map((place) => front[place] ?? 0);
}

function demandResults(
  count: number,
  width: number,
  objectives: ArrayLike<number>,
  violations: ArrayLike<number>,
): void {
  if (objectives.length !== count * width || violations.length !== count) {
    fail({
      code: 'contradiction',
      message: `${objectives.length} objectives and ${violations.length} violations for ${count} genomes`,
      allowed: `${width} objectives and 1 violation per genome`,
    });
  }
  demandFiniteResults('objective', objectives);
  demandFiniteResults('violation', violations);
  const least = Math.min(0, ...Array.from(violations));
  if (least < 0) fail({ code: 'out-of-range', message: `a violation is ${least}`, allowed: '0 or more' });
}

/** Members of a search that meet all constraints and that no other member dominates. */
export interface Nsga2Front {
  readonly count: number;
  /** Flat. */
  readonly genomes: readonly number[];
  /** Flat; rising by their first unequal objective, equals by their first unequal gene. */
  readonly objectives: readonly number[];
}

/** The best of a search so far: none while no member meets all constraints. */
export function nsga2Front({ settings, genomes, objectives, violations }: Nsga2State): Nsga2Front {
  const { counts, width } = settings;
  const genes = counts.length;
  const [first = []] = nonDominatedSort({ objectives, width, violations }, violations.length);
  const members = first.filter((i) => violations[i] === 0);
  members.sort((i, j) => compareRows(objectives, width, i, j) || compareRows(genomes, genes, i, j));
  return {
    count: members.length,
    genomes: members.flatMap((i) => genomes.slice(i * genes, (i + 1) * genes)),
    objectives: members.flatMap((i) => objectives.slice(i * width, (i + 1) * width)),
  };
}
