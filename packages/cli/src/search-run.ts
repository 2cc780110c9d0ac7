import type { evaluateGenomes, evaluateRange } from '@selvage/core';
import {
  acceptGeneration,
  acceptRange,
  genomeBlocks,
  isSearchComplete,
  proposeGeneration,
  rangeBlocks,
  remainingCandidates,
  type SearchProblem,
  type SearchState,
} from '@selvage/core';
import type { Crew } from './search-workers.js';

type Tally = ReturnType<typeof evaluateRange>;
type Results = ReturnType<typeof evaluateGenomes>;

/** Who looks on. */
export interface Watcher {
  /** Whether no further work is to be handed out. */
  readonly stopped: () => boolean;
  /** Part of the work that is done, 0 to 1, and candidates evaluated. */
  readonly progress: (share: number, evaluated: number) => void;
}

/** Goes on with a search to its end, or until it is stopped. The state does not depend on the number of workers: results are taken up in the order of the work. */
export function runSearch(
  problem: SearchProblem,
  state: SearchState,
  crew: Crew,
  watcher: Watcher,
): Promise<SearchState> {
  return state.share === undefined ? breed(problem, state, crew, watcher) : goThrough(problem, state, crew, watcher);
}

async function goThrough(problem: SearchProblem, from: SearchState, crew: Crew, { stopped, progress }: Watcher) {
  const all = remainingCandidates(from).reduce((sum, stretch) => sum + stretch.to - stretch.from, 0);
  const blocks = rangeBlocks(problem, from);
  const underWay: { block: { from: number; to: number }; result: Promise<Tally> }[] = [];
  let state = from;
  let done = 0;
  while (true) {
    while (!stopped() && underWay.length < 3 * crew.size) {
      const { value: block } = blocks.next();
      if (block === undefined) break;
      const result = crew.perform({ range: block }) as Promise<Tally>;
      // A failure is met where the result is taken up.
      result.catch(() => undefined);
      underWay.push({ block, result });
    }
    const first = underWay.shift();
    if (first === undefined) return state;
    state = acceptRange(state, first.block, await first.result);
    done += first.block.to - first.block.from;
    progress(done / all, done);
  }
}

async function breed(problem: SearchProblem, from: SearchState, crew: Crew, { stopped, progress }: Watcher) {
  let state = from;
  while (!stopped() && !isSearchComplete(problem, state)) {
    const proposal = proposeGeneration(problem, state);
    if (proposal === undefined) break;
    const blocks = genomeBlocks(problem, proposal.genomes);
    const results = (await Promise.all(blocks.map((genomes) => crew.perform({ genomes })))) as Results[];
    const reason = results.find((one) => one.reason !== undefined)?.reason;
    state = acceptGeneration(state, proposal, {
      objectives: joined(results.map(({ objectives }) => objectives)),
      violations: joined(results.map(({ violations }) => violations)),
      ...(reason === undefined ? {} : { reason }),
    });
    progress((state.population?.generation ?? 0) / problem.generations, state.tally.evaluated - from.tally.evaluated);
  }
  return state;
}

function joined(parts: readonly Float64Array[]): Float64Array {
  const out = new Float64Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    out.set(part, at);
    at += part.length;
  }
  return out;
}
