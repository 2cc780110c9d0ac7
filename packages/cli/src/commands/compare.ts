import { assemble, compare, comparisonReport, compute } from '@selvage/core';
import type { Given } from '../command.js';
import type { ExitCode } from '../exit.js';
import { demandSeparate } from '../output.js';
import { formatOf, present, unitsOf } from '../presentation.js';
import { openDesign, studied } from '../study.js';
import { judgeTargets } from '../targets.js';
import { usageStop } from '../usage.js';

export async function run(given: Given): Promise<ExitCode> {
  formatOf(given);
  const files = given.positionals;
  if (files.filter((file) => file === '-').length > 1) throw usageStop('`-` can be given once', given.command);
  const out = given.values.get('out');
  for (const file of files) await demandSeparate(file, out === undefined || out === '-' ? [] : [out]);
  const designs = [];
  for (const file of files) {
    const { input, inputs } = await openDesign(file, given);
    const results = studied(input.name, given, () => compute(assemble(inputs.design)));
    designs.push({ name: input.name, inputs, results });
  }
  const units = unitsOf(given).units ?? designs[0]?.results.model.units ?? 'metric';
  await present(comparisonReport(compare(designs), { units }), given);
  return judgeTargets({ data: { targets: designs.flatMap(({ results }) => results.targets) } });
}
