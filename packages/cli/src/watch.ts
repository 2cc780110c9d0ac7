import { watch } from 'node:fs';
import { realpath } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { changesText, differencesBetween, partsOnlyIn, type UnitSystem } from '@selvage/core';
import type { Given } from './command.js';
import { type ExitCode, exit } from './exit.js';
import { type Input, readInput } from './input.js';
import { Stop } from './stop.js';
import { stderrText, stdoutText } from './terminal.js';
import { usageStop } from './usage.js';

/** Editors save in several steps; this long after the first of them the file is whole again. */
const settlingTime = 80;

const clock = (): string => new Date().toTimeString().slice(0, 8);

/** What a round of computing comes to: the JSON reports that changes are counted between, by the name of their file. */
export interface Watched {
  readonly units: UnitSystem;
  readonly reports: ReadonlyMap<string, unknown>;
}

/** Computes what the command line asks for; `first` while nothing was computed yet. */
export type Computing = (inputs: readonly Input[], first: boolean) => Promise<Watched>;

/**
 * Computes the designs of the command line now and after every save of one of them, and prints what changed since the last good version and
 * since the start, until interrupted. A design with problems shows them and leaves the last good output as it is.
 */
export async function watchDesigns(given: Given, compute: Computing): Promise<ExitCode> {
  const names = given.positionals;
  if (names.includes('-')) throw usageStop('`--watch` needs files; standard input cannot be watched', given.command);
  const read = () => Promise.all(names.map((name) => readInput(name, given.command)));
  let inputs = await read();
  let good = await round({}, inputs, compute);
  for await (const _ of saves(await Promise.all(names.map((name) => realpath(name))))) {
    const next = await read().catch(async (error: unknown) => {
      if (!(error instanceof Stop)) throw error;
      await stderrText(
        `${error.message.trimEnd()}\n${clock()} the numbers above still hold; waiting for the next save\n`,
      );
      return inputs;
    });
    if (next.every(({ bytes }, i) => Buffer.compare(bytes, inputs[i]?.bytes ?? bytes) === 0)) continue;
    inputs = next;
    good = await round(good, inputs, compute);
  }
  return exit.interrupted;
}

/** Ticks after each save of one of the files, until interrupted. */
async function* saves(paths: readonly string[]): AsyncGenerator<void> {
  const signal = untilInterrupted();
  let wake = (): void => undefined;
  let saved = false;
  const tick = (): void => {
    saved = true;
    wake();
  };
  const watchers = [...new Set(paths.map((path) => dirname(path)))].map((directory) =>
    watch(directory, { signal }, (_, filename) => {
      if (filename === null || paths.includes(join(directory, filename))) tick();
    }),
  );
  signal.addEventListener('abort', () => wake());
  try {
    while (!signal.aborted) {
      if (!saved) await new Promise<void>((resolve) => (wake = resolve));
      if (signal.aborted) return;
      await pause(settlingTime);
      saved = false;
      yield;
    }
  } finally {
    for (const watcher of watchers) watcher.close();
  }
}

/** The good versions so far that changes are counted from. */
interface Good {
  readonly first?: Watched;
  readonly last?: Watched;
}

/** One computation; the answer is the good versions after it. */
async function round(good: Good, inputs: readonly Input[], compute: Computing): Promise<Good> {
  try {
    const now = await compute(inputs, good.last === undefined);
    await stdoutText(whatChanged(good, now));
    await stderrText(`${clock()} ok; waiting for the next save\n`);
    return { first: good.first ?? now, last: now };
  } catch (error) {
    if (!(error instanceof Stop)) throw error;
    const kept = good.last === undefined ? 'not computed' : 'not computed, the numbers above still hold';
    await stderrText(`${error.message.trimEnd()}\n${clock()} ${kept}; waiting for the next save\n`);
    return good;
  }
}

function whatChanged({ first, last }: Good, now: Watched): string {
  if (first === undefined || last === undefined) return '';
  const recent = changesSince(last, now);
  const head = recent === '' ? 'no result changed\n' : `changed:\n${recent}`;
  if (first === last) return head;
  const whole = changesSince(first, now);
  if (whole === recent) return head;
  return `${head}${whole === '' ? 'as at the start again\n' : `since the start:\n${whole}`}`;
}

/** The changes of every design, under its name where there are several. */
function changesSince(before: Watched, { units, reports }: Watched): string {
  return [...reports]
    .map(([name, report]) => {
      const was = before.reports.get(name);
      const text = `${onlyIn('gone', was, report)}${onlyIn('new', report, was)}${changesText(differencesBetween(was, report), { units })}`;
      return reports.size === 1 || text === '' ? text : `${name}:\n${text}`;
    })
    .join('');
}

/** Parts that one report has and the other does not, in a line. */
function onlyIn(word: string, one: unknown, other: unknown): string {
  const parts = partsOnlyIn(one, other);
  return parts.length === 0 ? '' : `  ${word}: ${parts.join(', ')}\n`;
}

/** Fires when the user interrupts, or when nobody reads any more. */
function untilInterrupted(): AbortSignal {
  const controller = new AbortController();
  for (const event of ['SIGINT', 'SIGTERM'] as const) process.once(event, () => controller.abort());
  process.stdout.once('error', () => controller.abort());
  return controller.signal;
}
