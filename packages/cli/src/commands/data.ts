import { libraryReport } from '@selvage/core';
import type { Given } from '../command.js';
import { type ExitCode, exit } from '../exit.js';
import { lookUp } from '../lookup.js';
import { present } from '../presentation.js';

export async function run(given: Given): Promise<ExitCode> {
  const [kind, id] = given.positionals;
  await present(
    lookUp(given, () => libraryReport(kind, id)),
    given,
  );
  return exit.fine;
}
