import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { readSearchState, type SearchProblem, type SearchState } from '@selvage/core';
import type { Given } from './command.js';
import { exit } from './exit.js';
import { readInput } from './input.js';
import { createWhole } from './output.js';
import { Stop } from './stop.js';
import { studied } from './study.js';

const candidateName = /^candidate-\d+\.yaml$/;

/** Refuses a directory that holds candidates already, before any work is done. @throws Stop 74 */
export async function demandNoCandidates(directory: string): Promise<void> {
  const names = await readdir(directory).catch(() => [] as string[]);
  const there = names.filter((name) => candidateName.test(name)).sort()[0];
  if (there === undefined) return;
  throw new Stop(exit.cannotWrite, `cannot write into \`${directory}\`: \`${there}\` exists already; nothing was done`);
}

/** Writes candidates as files of their own, all of them or none. @throws Stop 74 */
export async function writeCandidates(directory: string, texts: readonly string[]): Promise<void> {
  const written: string[] = [];
  try {
    for (const [i, text] of texts.entries()) {
      const path = join(directory, `candidate-${String(i + 1).padStart(String(texts.length).length, '0')}.yaml`);
      await createWhole(path, text);
      written.push(path);
    }
  } catch (error) {
    for (const path of written) await rm(path, { force: true });
    throw error;
  }
}

/** The state in the JSON report of a search. @throws Stop 65 another file, 66 no such file */
export async function readState(path: string, problem: SearchProblem, given: Given): Promise<SearchState> {
  const { name, bytes } = await readInput(path, given.command);
  let report: unknown;
  try {
    report = JSON.parse(new TextDecoder().decode(bytes));
  } catch {
    throw new Stop(exit.badData, `\`${name}\` is not JSON: a search writes it with --format json`);
  }
  return studied(name, given, () => readSearchState(problem, report));
}
