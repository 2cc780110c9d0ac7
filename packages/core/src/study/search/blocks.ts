import { candidatesFrom } from './genomes.js';
import { judge, notComputed } from './goals.js';
import { addLeaders, type Bar, barOf, closer, isBeaten, noLeaders, notAfter, type Tally } from './leaders.js';
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

/** The first candidate from `from` on that may lead; `count` where none does. */
function nextOffer(
  bar: Bar,
  genomes: Int32Array,
  objectives: Float64Array,
  violations: Float64Array,
  from: number,
  count: number,
): number {
  let k = from;
  while (k < count && (violations[k]! > 0 || isBeaten(bar, genomes, objectives, k))) k++;
  return k;
}

/** Candidates that could not be computed, those that miss a limit, and which of these is the closest; -1 for none. */
function misses(genomes: Int32Array, violations: Float64Array, count: number, genes: number) {
  let [failed, missed, closest, least] = [0, 0, -1, Number.POSITIVE_INFINITY];
  for (let k = 0; k < count; k++) {
    const violation = violations[k]!;
    if (violation === 0) continue;
    if (violation >= notComputed) {
      failed++;
      continue;
    }
    missed++;
    if (violation < least || (violation === least && !notAfter(genomes, closest, genomes, k, genes))) {
      closest = k;
      least = violation;
    }
  }
  return { failed, missed, closest };
}

/** The tally of judged candidates added to what is known: only what may lead is copied. */
export function tallied(
  before: Tally,
  count: number,
  genomes: Int32Array,
  { objectives, violations, reason }: GenomeResults,
): Tally {
  const { genes, steps } = before.leaders;
  let { leaders } = before;
  let bar = barOf(leaders);
  let offered: number[] = [];
  const add = (): void => {
    // Spelled out: spreading slices of typed arrays took a fifth of a small stretch.
    const rows = (table: Int32Array | Float64Array, size: number): number[] => {
      const out: number[] = [];
      for (const k of offered) for (let i = k * size; i < (k + 1) * size; i++) out.push(table[i]!);
      return out;
    };
    leaders = addLeaders(leaders, rows(genomes, genes), rows(objectives, steps.length));
    bar = barOf(leaders);
    offered = [];
  };
  let k = nextOffer(bar, genomes, objectives, violations, 0, count);
  while (k < count) {
    offered.push(k);
    if (offered.length === mostOffered) add();
    k = nextOffer(bar, genomes, objectives, violations, k + 1, count);
  }
  if (offered.length > 0) add();
  const { failed, missed, closest: at } = misses(genomes, violations, count, genes);
  const found =
    at < 0
      ? undefined
      : { violation: violations[at]!, genome: Array.from(genomes.subarray(at * genes, (at + 1) * genes)) };
  const closest = closer(before.closest, found);
  const why = before.reason ?? reason;
  return {
    evaluated: before.evaluated + count,
    failed: before.failed + failed,
    missed: before.missed + missed,
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
