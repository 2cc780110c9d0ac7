import { sensitivity, sensitivityReport } from '@selvage/core';
import type { Given } from '../command.js';
import { type ExitCode, exit } from '../exit.js';
import { demandSeparate } from '../output.js';
import { formatOf, present, unitsOf } from '../presentation.js';
import { openDesign, quantitiesOf, studied } from '../study.js';
import { usageStop } from '../usage.js';

export async function run(given: Given): Promise<ExitCode> {
  formatOf(given);
  const [file = '-'] = given.positionals;
  const step = given.values.get('step');
  if (step !== undefined && !(Number(step) >= 1e-6 && Number(step) < 0.5)) {
    throw usageStop(`\`--step\` is ${step}, must be at least 0.000001 and below 0.5`, given.command);
  }
  const out = given.values.get('out');
  await demandSeparate(file, out === undefined || out === '-' ? [] : [out]);
  const opened = await openDesign(file, given);
  const quantities = quantitiesOf(given, opened);
  const options = step === undefined ? {} : { step: Number(step) };
  const found = studied(opened.input.name, given, () => sensitivity(opened.inputs, quantities, options));
  const units = unitsOf(given).units ?? opened.inputs.design.units ?? 'metric';
  await present(sensitivityReport(found, { units }), given);
  return exit.fine;
}
