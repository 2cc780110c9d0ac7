import { sensitivity, sensitivityReport } from '@selvage/core';
import type { Given } from '../command.js';
import { type ExitCode, exit } from '../exit.js';
import { present } from '../presentation.js';
import { beginStudy, studied } from '../study.js';
import { usageStop } from '../usage.js';

export async function run(given: Given): Promise<ExitCode> {
  const step = given.values.get('step');
  if (step !== undefined && !(Number(step) >= 1e-6 && Number(step) < 0.5)) {
    throw usageStop(`\`--step\` is ${step}, must be at least 0.000001 and below 0.5`, given.command);
  }
  const { input, inputs, quantities, units } = await beginStudy(given);
  const options = step === undefined ? {} : { step: Number(step) };
  const found = studied(input.name, given, () => sensitivity(inputs, quantities, options));
  await present(sensitivityReport(found, { units }), given);
  return exit.fine;
}
