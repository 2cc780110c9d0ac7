import { type Report, render, report } from '@selvage/core';
import type { Given } from '../command.js';
import { fromInput, readDesignInput } from '../design.js';
import type { ExitCode } from '../exit.js';
import type { Input } from '../input.js';
import { demandSeparate, writeWhole } from '../output.js';
import { formatOf, present, unitsOf } from '../presentation.js';
import { judgeTargets } from '../targets.js';
import { stderrText } from '../terminal.js';
import { usageStop } from '../usage.js';

export async function run(given: Given): Promise<ExitCode> {
  formatOf(given);
  if (given.values.get('html') === '-') throw usageStop('`--html` needs the name of a file', given.command);
  const outputs = [given.values.get('out'), given.values.get('html')].filter(
    (path) => path !== undefined && path !== '-',
  );
  await demandSeparate(given.positionals[0] ?? '-', outputs as string[]);
  if (given.flags.has('watch')) {
    const { watchDesigns } = await import('../watch.js');
    return watchDesigns(given, async ([input], first) => {
      const { units, data } = await once(given, input as Input, first);
      return { units, reports: new Map([[(input as Input).name, data]]) };
    });
  }
  return judgeTargets(await once(given, await readDesignInput(given), true));
}

/** One report from one state of the design; `print` is whether it also goes to standard output. */
async function once(given: Given, input: Input, print: boolean): Promise<Report> {
  const units = unitsOf(given);
  const summary = given.flags.has('summary');
  const page = given.values.get('html');
  const { shown, whole } = fromInput(input, given, (model) => {
    const shown = report(model, { ...units, summary });
    return { shown, whole: summary && page !== undefined ? report(model, units) : shown };
  });
  if (print || (given.values.get('out') ?? '-') !== '-') await present(shown, given);
  if (page !== undefined) {
    await writeWhole(page, render(whole, 'html', { units: whole.units }));
    await stderrText(`wrote ${page}\n`);
  }
  return shown;
}
