import * as z from 'zod/mini';
import { fail } from '../../problem/index.js';
import { demandState } from '../method/nsga2-state.js';
import type { SearchProblem } from './problem.js';
import { demandSameSearch, type SearchState } from './state.js';

const numbers = z.array(z.number());
const whole = z.int();
const share = z.object({ from: whole, to: whole });
const shard = z.tuple([z.int().check(z.minimum(1)), z.int().check(z.minimum(1), z.maximum(1_000_000))]);

const stateSchema = z.object({
  format: z.literal(1),
  fingerprint: z.string(),
  method: z.enum(['exhaustive', 'nsga2']),
  tally: z.object({
    evaluated: whole,
    failed: whole,
    missed: whole,
    leaders: z.object({
      genes: whole,
      steps: numbers,
      count: whole,
      genomes: z.array(whole),
      objectives: numbers,
      most: whole,
    }),
    closest: z.optional(z.object({ violation: z.number(), genome: z.array(whole) })),
    reason: z.optional(z.string()),
  }),
  share: z.optional(share),
  done: z.optional(z.array(share)),
  shard: z.optional(shard),
  parts: z.optional(z.array(shard)),
  seeds: z.optional(z.array(whole)),
  population: z.optional(
    z.object({
      settings: z.object({
        counts: numbers,
        width: whole,
        population: whole,
        crossover: z.number(),
        mutation: z.number(),
        initial: numbers,
      }),
      generation: whole,
      evaluations: whole,
      random: z.tuple([whole, whole, whole, whole]),
      genomes: z.array(whole),
      objectives: numbers,
      violations: numbers,
    }),
  ),
});

/** Whether genomes have numbers that the search has choices for. */
const isWithin = (genomes: readonly number[], counts: readonly number[]): boolean =>
  genomes.length % counts.length === 0 &&
  genomes.every((gene, i) => gene >= 0 && gene < (counts[i % counts.length] ?? 0));

/**
 * The state in the JSON report of a search, checked against the search that it is to go on with.
 * @param report what the report's JSON holds, parsed
 * @throws SelvageError `wrong-type` something else; `contradiction` a state of another search, or one that no search leaves behind
 */
export function readSearchState(problem: SearchProblem, report: unknown): SearchState {
  const parsed = stateSchema.safeParse((report as { state?: unknown } | null | undefined)?.state);
  if (!parsed.success) {
    return fail({
      code: 'wrong-type',
      message: 'the file is not the JSON report of a search',
      allowed: 'a file that `selvage search --format json` has written',
    });
  }
  // Keys that are absent, not undefined: that is how JSON gives them.
  const state = parsed.data as SearchState;
  demandSameSearch(problem, state);
  const { leaders, closest } = state.tally;
  const { counts, goals, keep } = problem;
  const fits =
    leaders.genes === counts.length &&
    leaders.most === keep &&
    leaders.steps.length === goals.aims.length &&
    leaders.genomes.length === leaders.count * counts.length &&
    leaders.objectives.length === leaders.count * goals.aims.length &&
    isWithin(leaders.genomes, counts) &&
    isWithin(closest?.genome ?? [], counts);
  const own = state.population?.settings;
  if (!fits || (own !== undefined && (own.counts.join() !== counts.join() || own.width !== goals.aims.length))) {
    fail({
      code: 'contradiction',
      message: 'the result does not fit the search of the design',
      allowed: 'a result as it was written',
    });
  }
  if (state.population !== undefined) demandState(state.population);
  return state;
}
