import { examplesReport } from '@selvage/core';
import type { Given } from '../command.js';
import { type ExitCode, exit } from '../exit.js';
import { lookUp } from '../lookup.js';
import { present } from '../presentation.js';

export async function run(given: Given): Promise<ExitCode> {
  await present(
    lookUp(given, () => examplesReport(given.positionals[0])),
    given,
  );
  return exit.fine;
}
