import { uncertainty, uncertaintyReport } from '@selvage/core';
import type { Given } from '../command.js';
import { type ExitCode, exit } from '../exit.js';
import { present } from '../presentation.js';
import { beginStudy, studied, wholeOf } from '../study.js';

export async function run(given: Given): Promise<ExitCode> {
  const options = { samples: wholeOf(given, 'samples', 2000, [100, 1_000_000]), seed: wholeOf(given, 'seed', 1) };
  const { input, inputs, quantities, units } = await beginStudy(given);
  const found = studied(input.name, given, () => uncertainty(inputs, quantities, options));
  await present(uncertaintyReport(found, { units }), given);
  return exit.fine;
}
