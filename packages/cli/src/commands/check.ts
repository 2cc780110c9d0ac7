import { assemble, compute, searchProblem, uncertainInputs } from '@selvage/core';
import type { Given } from '../command.js';
import { type ExitCode, exit } from '../exit.js';
import { openDesign, studied } from '../study.js';
import { stdoutText } from '../terminal.js';

export async function run(given: Given): Promise<ExitCode> {
  const { input, inputs } = await openDesign(given.positionals[0] ?? '-', given);
  studied(input.name, given, () => {
    compute(assemble(inputs.design), { faultsOnly: true });
    uncertainInputs(inputs);
    if (inputs.design.search !== undefined) searchProblem(inputs);
  });
  const asJson = given.values.get('format') === 'json';
  await stdoutText(asJson ? `${JSON.stringify({ file: input.name, ok: true })}\n` : `${input.name}: ok\n`);
  return exit.fine;
}
