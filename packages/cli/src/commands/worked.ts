import { workedReport } from '@selvage/core';
import type { Given } from '../command.js';
import { fromInput, readDesignInput } from '../design.js';
import { type ExitCode, exit } from '../exit.js';
import { lookUp } from '../lookup.js';
import { demandSeparate } from '../output.js';
import { formatOf, present } from '../presentation.js';
import { workingOptions } from '../working-options.js';

export async function run(given: Given): Promise<ExitCode> {
  formatOf(given);
  const out = given.values.get('out');
  await demandSeparate(given.positionals[0] ?? '-', out === undefined || out === '-' ? [] : [out]);
  const options = workingOptions(given);
  const model = fromInput(await readDesignInput(given), given, (assembled) => assembled);
  await present(
    lookUp(given, () => workedReport(model, options)),
    given,
  );
  return exit.fine;
}
