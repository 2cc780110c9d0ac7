import { candidatesFrom } from './genomes.js';
import { judge, notComputed } from './goals.js';
import { addLeaders, isBeaten, isCloser, noLeaders, type Tally } from './leaders.js';
import type { SearchProblem } from './problem.js';

/** Candidates evaluated at a time within a block. */
const portion = 1024;

/** A stretch of the candidates of a search that is gone through: from `from` up to, not including, `to`. */
export interface RangeBlock {
  readonly from: number;
  readonly to: number;
}

/** Candidates of a generation, flat. */
export interface GenomeBlock {
  readonly genomes: Int32Array;
}

/** What came of single genomes, in their order. */
export interface GenomeResults {
  readonly objectives: Float64Array;
  readonly violations: Float64Array;
  readonly reason?: string;
}

/** Space for the numbers of a portion of candidates. */
function bench({ goals, layout }: SearchProblem, count: number) {
  return {
    genomes: new Int32Array(count * layout.genes),
    values: new Float64Array(count * goals.quantities.length),
    computed: new Uint8Array(count),
    objectives: new Float64Array(count * goals.aims.length),
    violations: new Float64Array(count),
  };
}

/** Evaluates single genomes. */
export function evaluateGenomes(problem: SearchProblem, { genomes }: GenomeBlock): GenomeResults {
  const { goals, layout, evaluator } = problem;
  const count = genomes.length / layout.genes;
  const { values, computed, objectives, violations } = bench(problem, count);
  const reason = evaluator.evaluate(genomes, count, values, computed);
  judge(goals, count, values, computed, objectives, violations);
  return { objectives, violations, ...(reason === undefined ? {} : { reason }) };
}

/** No candidates yet. */
export const emptyTally = ({ layout, goals, keep }: SearchProblem): Tally => ({
  evaluated: 0,
  failed: 0,
  missed: 0,
  leaders: noLeaders(layout.genes, goals.aims.length, keep),
});

/** Offers gathered before they are added to the leaders, so that most of what follows is beaten at once. */
const mostOffered = 64;

/** The tally of judged candidates added to what is known: only what may lead is copied. */
export function tallied(
  before: Tally,
  count: number,
  genomes: Int32Array,
  { objectives, violations, reason }: GenomeResults,
): Tally {
  const { genes, steps } = before.leaders;
  const width = steps.length;
  let { leaders, failed, missed, closest } = before;
  let offered: number[] = [];
  const add = (): void => {
    const rows = <Table extends Int32Array | Float64Array>(table: Table, size: number): number[] =>
      offered.flatMap((k) => [...table.subarray(k * size, (k + 1) * size)]);
    leaders = addLeaders(leaders, rows(genomes, genes), rows(objectives, width));
    offered = [];
  };
  for (let k = 0; k < count; k++) {
    const violation = violations[k]!;
    if (violation === 0) {
      if (isBeaten(leaders, genomes, objectives, k)) continue;
      offered.push(k);
      if (offered.length === mostOffered) add();
    } else if (violation >= notComputed) failed++;
    else {
      missed++;
      if (isCloser(closest, violation, genomes, k)) {
        closest = { violation, genome: Array.from(genomes.subarray(k * genes, (k + 1) * genes)) };
      }
    }
  }
  add();
  const why = before.reason ?? reason;
  return {
    evaluated: before.evaluated + count,
    failed,
    missed,
    leaders,
    ...(closest === undefined ? {} : { closest }),
    ...(why === undefined ? {} : { reason: why }),
  };
}

/** Goes through a stretch of candidates. What comes out depends on the stretch alone. */
export function evaluateRange(problem: SearchProblem, { from, to }: RangeBlock): Tally {
  const { evaluator, goals } = problem;
  const space = bench(problem, Math.min(portion, to - from));
  const next = candidatesFrom(problem, from);
  let tally = emptyTally(problem);
  for (let at = from; at < to; at += portion) {
    const count = Math.min(portion, to - at);
    next(space.genomes, count);
    const reason = evaluator.evaluate(space.genomes, count, space.values, space.computed);
    judge(goals, count, space.values, space.computed, space.objectives, space.violations);
    tally = tallied(tally, count, space.genomes, { ...space, ...(reason === undefined ? {} : { reason }) });
  }
  return tally;
}
