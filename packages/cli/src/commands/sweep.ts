import { parseVariation, SelvageError, sweep, sweepReport, type Variation } from '@selvage/core';
import type { Given } from '../command.js';
import { type ExitCode, exit } from '../exit.js';
import { present } from '../presentation.js';
import { beginStudy, studied } from '../study.js';
import { usageStop } from '../usage.js';

export async function run(given: Given): Promise<ExitCode> {
  const vary = given.lists.get('vary') ?? [];
  if (vary.length === 0) throw usageStop('`--vary` is missing: PATH=FROM..TO:COUNT', given.command);
  const variations = vary.map((text) => variationOf(text, given));
  const { input, inputs, quantities, units } = await beginStudy(given);
  const found = studied(input.name, given, () => sweep(inputs, variations, quantities));
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
