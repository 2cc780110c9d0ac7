import { setImmediate } from 'node:timers/promises';
import type { evaluateGenomes, evaluateRange } from '@selvage/core';
import {
  acceptGeneration,
  acceptRange,
  isSearchComplete,
  proposeGeneration,
  remainingCandidates,
  type SearchProblem,
  type SearchState,
} from '@selvage/core';
import { type Done, perform, type Task } from './search-job.js';
import { cutter, type Stretch } from './search-pieces.js';
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

/** Work that is shared out among a crew. */
interface Work {
  readonly stretches: readonly Stretch[];
  readonly task: (piece: Stretch) => Task;
  readonly stopped: () => boolean;
  /** Takes results in the order of the pieces. */
  readonly takeUp: (piece: Stretch, done: Done) => void;
}

/**
 * Shares work out. This thread does small pieces itself: in between it hears answers and an interrupt, and hands on what is next, so that no thread waits for long.
 */
async function shareOut(problem: SearchProblem, crew: Crew, { stretches, task, stopped, takeUp }: Work): Promise<void> {
  const cut = cutter(stretches, problem.evaluator.path, crew.size);
  const underWay: { piece: Stretch; done?: Done }[] = [];
  const answers = new Set<Promise<void>>();
  const takeUpFirst = (): void => {
    for (let first = underWay[0]; first?.done !== undefined; first = underWay[0]) {
      takeUp(first.piece, first.done);
      underWay.shift();
    }
  };
  while (!stopped()) {
    for (let free = crew.free(); free > 0; free--) {
      const piece = cut.other();
      if (piece === undefined) break;
      const slot: (typeof underWay)[number] = { piece };
      underWay.push(slot);
      const answer = crew.perform(task(piece)).then((done) => {
        slot.done = done;
        answers.delete(answer);
      });
      // A failure is met by `free`, or where the answers are waited for.
      answer.catch(() => undefined);
      answers.add(answer);
    }
    const piece = cut.own();
    if (piece === undefined) break;
    underWay.push({ piece, done: perform(problem, task(piece)) });
    takeUpFirst();
    await setImmediate();
  }
  await Promise.all(answers);
  takeUpFirst();
}

async function goThrough(problem: SearchProblem, from: SearchState, crew: Crew, { stopped, progress }: Watcher) {
  const stretches = remainingCandidates(from);
  const all = stretches.reduce((sum, stretch) => sum + stretch.to - stretch.from, 0);
  let state = from;
  let evaluated = 0;
  await shareOut(problem, crew, {
    stretches,
    task: (range) => ({ range }),
    stopped,
    takeUp(piece, done) {
      state = acceptRange(state, piece, done as Tally);
      evaluated += piece.to - piece.from;
      progress(evaluated / all, evaluated);
    },
  });
  return state;
}

async function breed(problem: SearchProblem, from: SearchState, crew: Crew, { stopped, progress }: Watcher) {
  const { genes } = problem.layout;
  let state = from;
  while (!stopped() && !isSearchComplete(problem, state)) {
    const proposal = proposeGeneration(problem, state);
    if (proposal === undefined) break;
    const results: Results[] = [];
    await shareOut(problem, crew, {
      stretches: [{ from: 0, to: proposal.count }],
      task: (piece) => ({ genomes: proposal.genomes.slice(piece.from * genes, piece.to * genes) }),
      // A generation is taken up as a whole.
      stopped: () => false,
      takeUp: (_, done) => results.push(done as Results),
    });
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
