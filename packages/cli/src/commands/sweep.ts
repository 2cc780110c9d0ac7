import { parseVariation, SelvageError, sweep, sweepReport, type Variation } from '@selvage/core';
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
  const variations = vary.map((text) => variationOf(text, given));
  const found = studied(opened.input.name, given, () => sweep(opened.inputs, variations, quantities));
  const units = unitsOf(given).units ?? opened.inputs.design.units ?? 'metric';
  await present(sweepReport(found, { units }), given);
  return exit.fine;
}

/** What `--vary` says. @throws Stop 64 */
function variationOf(text: string, given: Given): Variation {
  try {
    return parseVariation(text);
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    const [problem] = error.problems;
    throw usageStop(`\`--vary\` ${problem?.message}: ${problem?.allowed}`, given.command);
  }
}
