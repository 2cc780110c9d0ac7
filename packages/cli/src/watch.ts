import { realpath, watch } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { changesText, differencesBetween, type Report } from '@selvage/core';
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
 * Computes the design of the command line now and after every save, and prints what changed since the last good version and since the
 * start, until interrupted. A design with problems shows them and leaves the last good output as it is.
 */
export async function watchDesign(
  given: Given,
  compute: (input: Input, first: boolean) => Promise<Report>,
): Promise<ExitCode> {
  const name = given.positionals[0] ?? '-';
  if (name === '-') throw usageStop('`--watch` needs a file; standard input cannot be watched', given.command);
  let input = await readDesignInput(given);
  let good = await round({}, input, compute);
  const path = await realpath(name);
  try {
    for await (const { filename } of watch(dirname(path), { signal: untilInterrupted() })) {
      if (filename !== null && filename !== basename(path)) continue;
      await pause(settlingTime);
      const next = await readDesignInput(given).catch(() => input);
      if (Buffer.compare(next.bytes, input.bytes) === 0) continue;
      input = next;
      good = await round(good, input, compute);
    }
  } catch (error) {
    if (!(error instanceof Error && error.name === 'AbortError')) throw error;
  }
  return exit.interrupted;
}

/** The good reports so far that changes are counted from. */
interface Good {
  readonly first?: Report;
  readonly last?: Report;
}

/** One computation; the answer is the good reports after it. */
async function round(
  good: Good,
  input: Input,
  compute: (input: Input, first: boolean) => Promise<Report>,
): Promise<Good> {
  try {
    const report = await compute(input, good.last === undefined);
    await stdoutText(whatChanged(good, report));
    await stderrText(`${clock()} ok; waiting for the next save\n`);
    return { first: good.first ?? report, last: report };
  } catch (error) {
    if (!(error instanceof Stop)) throw error;
    const kept = good.last === undefined ? 'not computed' : 'not computed, the numbers above still hold';
    await stderrText(`${error.message.trimEnd()}\n${clock()} ${kept}; waiting for the next save\n`);
    return good;
  }
}

function whatChanged({ first, last }: Good, report: Report): string {
  if (first === undefined || last === undefined) return '';
  const { units } = report;
  const since = (before: Report): string => changesText(differencesBetween(before.data, report.data), { units });
  const now = since(last);
  const head = now === '' ? 'no result changed\n' : `changed:\n${now}`;
  if (first === last) return head;
  const whole = since(first);
  if (whole === now) return head;
  return `${head}${whole === '' ? 'as at the start again\n' : `since the start:\n${whole}`}`;
}

/** Fires when the user interrupts, or when nobody reads any more. */
function untilInterrupted(): AbortSignal {
  const controller = new AbortController();
  for (const event of ['SIGINT', 'SIGTERM'] as const) process.once(event, () => controller.abort());
  process.stdout.once('error', () => controller.abort());
  return controller.signal;
}
