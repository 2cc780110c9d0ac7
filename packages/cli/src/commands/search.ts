import { availableParallelism } from 'node:os';
import {
  candidateText,
  mergeSearches,
  type SearchProblem,
  type SearchState,
  searchProgress,
  searchReport,
  searchResult,
  startSearch,
} from '@selvage/core';
import type { Given } from '../command.js';
import { type ExitCode, exit } from '../exit.js';
import { demandSeparate } from '../output.js';
import { formatOf, present, unitsOf } from '../presentation.js';
import { demandNoCandidates, readState, writeCandidates } from '../search-files.js';
import { problemOf, type SearchJob } from '../search-job.js';
import { progressLine } from '../search-progress.js';
import { runSearch } from '../search-run.js';
import { hire } from '../search-workers.js';
import { openDesign, studied, wholeOf } from '../study.js';
import { stderrText } from '../terminal.js';
import { usageStop } from '../usage.js';

export async function run(given: Given): Promise<ExitCode> {
  formatOf(given);
  const [file = '-', ...others] = given.positionals;
  const merged = given.lists.get('merge');
  const shard = shardOf(given);
  const directory = given.values.get('write');
  refuseMixed(given, others);
  const out = given.values.get('out');
  await demandSeparate(file, out === undefined || out === '-' ? [] : [out]);
  if (directory !== undefined) await demandNoCandidates(directory);

  const { input, inputs } = await openDesign(file, given);
  const seed = given.values.has('seed') ? wholeOf(given, 'seed', 1, [0, 2 ** 32 - 1]) : undefined;
  const job: SearchJob = { text: inputs.text, fileName: input.name, ...(seed === undefined ? {} : { seed }) };
  const problem = studied(input.name, given, () => problemOf(job));

  let state: SearchState;
  let interrupted = false;
  if (merged !== undefined) {
    const states: SearchState[] = [];
    for (const path of [...merged, ...others]) states.push(await readState(path, problem, given));
    state = studied(input.name, given, () => mergeSearches(problem, states));
  } else {
    const resumed = given.values.get('resume');
    const start = resumed === undefined ? undefined : await readState(resumed, problem, given);
    state = start ?? studied(input.name, given, () => startSearch(problem, shard));
    ({ state, interrupted } = await worked(given, problem, state, job));
  }
  const found = searchResult(problem, state);
  const units = unitsOf(given).units ?? inputs.design.units ?? 'metric';
  await present(searchReport(found, { units }), given);
  if (directory !== undefined && found.candidates.length > 0) {
    const texts = found.candidates.map((candidate) =>
      studied(input.name, given, () => candidateText(problem, candidate)),
    );
    await writeCandidates(directory, texts);
    await stderrText(`wrote ${texts.length} ${texts.length === 1 ? 'candidate' : 'candidates'} into ${directory}\n`);
  }
  if (interrupted) {
    const how =
      formatOf(given) === 'json' ? '--resume goes on from this result' : 'only a result as JSON can be gone on from';
    await stderrText(`selvage: interrupted, the result is not complete; ${how}\n`);
    return exit.interrupted;
  }
  const gap = searchProgress(found);
  if (gap !== undefined) {
    await stderrText(`selvage: ${gap.charAt(0).toLowerCase()}${gap.slice(1).replace(/\.$/, '')}\n`);
    return exit.badData;
  }
  if (found.candidates.length > 0 || state.shard !== undefined) return exit.fine;
  await stderrText('selvage: no candidate keeps to all limits\n');
  return exit.targetMissed;
}

/** The work itself, which an interrupt ends early. */
async function worked(given: Given, problem: SearchProblem, start: SearchState, job: SearchJob) {
  const crew = hire(job, wholeOf(given, 'workers', usualWorkers(problem), [1, 1024]));
  const line = progressLine();
  let interrupted = false;
  const interrupt = () => {
    interrupted = true;
  };
  // A second interrupt ends the process at once.
  process.once('SIGINT', interrupt);
  try {
    const state = await runSearch(problem, start, crew, { stopped: () => interrupted, progress: line.show });
    return { state, interrupted };
  } finally {
    process.off('SIGINT', interrupt);
    line.end();
    await crew.close();
  }
}

/** Below so many candidates further workers take longer to come than the work takes. */
const worthwhile = { kernel: 200_000, design: 200 };

function usualWorkers({ size, method, evaluator, population, generations }: SearchProblem): number {
  const bred = BigInt(population * generations);
  const count = method === 'nsga2' ? bred : (size.candidates ?? bred);
  return count < BigInt(worthwhile[evaluator.path]) ? 1 : availableParallelism();
}

function shardOf(given: Given): readonly [number, number] | undefined {
  const text = given.values.get('shard');
  if (text === undefined) return undefined;
  const [, k = '', n = ''] = /^(\d+)\/(\d+)$/.exec(text) ?? [];
  if (Number(k) >= 1 && Number(k) <= Number(n) && Number(n) <= 1_000_000) return [Number(k), Number(n)];
  throw usageStop(`\`--shard\` is ${text}, must be K/N, with K from 1 to N`, given.command);
}

/** One way to begin at a time. */
function refuseMixed(given: Given, others: readonly string[]): void {
  const ways = ['merge', 'resume', 'shard'].filter((name) => given.values.has(name) || given.lists.has(name));
  if (ways.length > 1) throw usageStop(`\`--${ways[0]}\` and \`--${ways[1]}\` do not go together`, given.command);
  if (others[0] !== undefined && !given.lists.has('merge')) {
    throw usageStop(`\`${others[0]}\` is one argument too many: only --merge takes further files`, given.command);
  }
}
