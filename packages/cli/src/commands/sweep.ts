import { parseVariation, sweep, sweepReport } from '@selvage/core';
import type { Given } from '../command.js';
import { type ExitCode, exit } from '../exit.js';
import { demandSeparate } from '../output.js';
import { formatOf, present, unitsOf } from '../presentation.js';
import { openDesign, quantitiesOf, studied } from '../study.js';
import { usageStop } from '../usage.js';

export async function run(given: Given): Promise<ExitCode> {
  formatOf(given);
  const [file = '-'] = given.positionals;
  const vary = given.lists.get('vary') ?? [];
  if (vary.length === 0) throw usageStop('`--vary` is missing: PATH=FROM..TO:COUNT', given.command);
  const out = given.values.get('out');
  await demandSeparate(file, out === undefined || out === '-' ? [] : [out]);
  const opened = await openDesign(file, given);
  const quantities = quantitiesOf(given, opened);
  const found = studied(opened.input.name, given, () => sweep(opened.inputs, vary.map(parseVariation), quantities));
  const units = unitsOf(given).units ?? opened.inputs.design.units ?? 'metric';
  await present(sweepReport(found, { units }), given);
  return exit.fine;
}
