import { uncertainty, uncertaintyReport } from '@selvage/core';
import type { Given } from '../command.js';
import { type ExitCode, exit } from '../exit.js';
import { demandSeparate } from '../output.js';
import { formatOf, present, unitsOf } from '../presentation.js';
import { openDesign, quantitiesOf, studied, wholeOf } from '../study.js';

export async function run(given: Given): Promise<ExitCode> {
  formatOf(given);
  const [file = '-'] = given.positionals;
  const options = { samples: wholeOf(given, 'samples', 2000, [100, 1_000_000]), seed: wholeOf(given, 'seed', 1) };
  const out = given.values.get('out');
  await demandSeparate(file, out === undefined || out === '-' ? [] : [out]);
  const opened = await openDesign(file, given);
  const quantities = quantitiesOf(given, opened);
  const found = studied(opened.input.name, given, () => uncertainty(opened.inputs, quantities, options));
  const units = unitsOf(given).units ?? opened.inputs.design.units ?? 'metric';
  await present(uncertaintyReport(found, { units }), given);
  return exit.fine;
}
