import { basename, extname } from 'node:path';
import { assemble, type ComparedDesign, compare, comparisonReport, compute } from '@selvage/core';
import type { Given } from '../command.js';
import type { ExitCode } from '../exit.js';
import { type Input, readInput } from '../input.js';
import { demandSeparate } from '../output.js';
import { formatOf, present, unitsOf } from '../presentation.js';
import { inputsOf, studied } from '../study.js';
import { judgeTargets } from '../targets.js';
import { usageStop } from '../usage.js';

export async function run(given: Given): Promise<ExitCode> {
  formatOf(given);
  const files = given.positionals;
  if (files.filter((file) => file === '-').length > 1) throw usageStop('`-` can be given once', given.command);
  const out = given.values.get('out');
  for (const file of files) await demandSeparate(file, out === undefined || out === '-' ? [] : [out]);
  if (given.flags.has('watch')) {
    const { watchDesigns } = await import('../watch.js');
    return watchDesigns(given, async (inputs, first) => {
      const { units, designs } = await once(given, inputs, first);
      return { units, reports: new Map(designs.map(({ name, results }) => [name, results.data])) };
    });
  }
  const inputs = [];
  for (const file of files) inputs.push(await readInput(file, given.command));
  const { designs } = await once(given, inputs, true);
  const targets = designs.flatMap(({ name, results }) =>
    results.targets.map((target) => ({ ...target, quantity: `${target.quantity} of ${name}` })),
  );
  return judgeTargets({ data: { targets } });
}

/** One comparison; `print` is whether it also goes to standard output. */
async function once(given: Given, files: readonly Input[], print: boolean) {
  const names = shortNames(files.map(({ name }) => name));
  const designs = files.map((input, i): ComparedDesign => {
    const inputs = inputsOf(input, given);
    return {
      name: names[i] ?? input.name,
      inputs,
      results: studied(input.name, given, () => compute(assemble(inputs.design))),
    };
  });
  const units = unitsOf(given).units ?? designs[0]?.results.model.units ?? 'metric';
  if (print || (given.values.get('out') ?? '-') !== '-') {
    await present(comparisonReport(compare(designs), { units }), given);
  }
  return { units, designs };
}

/** The names of files without their directories and extension, where they can still be told apart. */
function shortNames(files: readonly string[]): readonly string[] {
  const short = files.map((file) => basename(file, extname(file)));
  return new Set(short).size === new Set(files).size ? short : files;
}
