import { realpath, watch } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { Report } from '@selvage/core';
import { changeLines, changesBetween } from './changes.js';
import type { Given } from './command.js';
import { readDesignInput } from './design.js';
import { type ExitCode, exit } from './exit.js';
import type { Input } from './input.js';
import { Stop } from './stop.js';
import { stderrText, stdoutText } from './terminal.js';
import { usageStop } from './usage.js';

/** Editors save in several steps; this long after the first of them the file is whole again. */
const settlingTime = 80;

const clock = (): string => new Date().toTimeString().slice(0, 8);

/**
 * Computes the design of the command line now and after every save, and prints what changed, until interrupted.
 * A design with problems leaves the last good output as it is.
 */
export async function watchDesign(
  given: Given,
  compute: (input: Input, first: boolean) => Promise<Report>,
): Promise<ExitCode> {
  const name = given.positionals[0] ?? '-';
  if (name === '-') throw usageStop('`--watch` needs a file; standard input cannot be watched', given.command);
  let input = await readDesignInput(given);
  let last = await round(undefined, input, compute);
  const path = await realpath(name);
  try {
    for await (const { filename } of watch(dirname(path), { signal: untilInterrupted() })) {
      if (filename !== null && filename !== basename(path)) continue;
      await pause(settlingTime);
      const next = await readDesignInput(given).catch(() => input);
      if (Buffer.compare(next.bytes, input.bytes) === 0) continue;
      input = next;
      last = await round(last, input, compute);
    }
  } catch (error) {
    if (!(error instanceof Error && error.name === 'AbortError')) throw error;
  }
  return exit.interrupted;
}

/** One computation; the answer is the last good report. */
async function round(
  last: Report | undefined,
  input: Input,
  compute: (input: Input, first: boolean) => Promise<Report>,
): Promise<Report | undefined> {
  try {
    const report = await compute(input, last === undefined);
    if (last !== undefined) await stdoutText(changeLines(changesBetween(last.data, report.data)));
    await stderrText(`${clock()} ok; waiting for the next save\n`);
    return report;
  } catch (error) {
    if (!(error instanceof Stop)) throw error;
    await stderrText(`${error.message.trimEnd()}\n${clock()} not computed; waiting for the next save\n`);
    return last;
  }
}

/** Fires when the user interrupts, or when nobody reads any more. */
function untilInterrupted(): AbortSignal {
  const controller = new AbortController();
  for (const event of ['SIGINT', 'SIGTERM'] as const) process.once(event, () => controller.abort());
  process.stdout.once('error', () => controller.abort());
  return controller.signal;
}
