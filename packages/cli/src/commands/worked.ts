import { answersReport, checkAnswers, type Model, readAnswers, workedReport } from '@selvage/core';
import type { Given } from '../command.js';
import { fromInput, readDesignInput } from '../design.js';
import { type ExitCode, exit } from '../exit.js';
import { readInput } from '../input.js';
import { lookUp } from '../lookup.js';
import { demandSeparate } from '../output.js';
import { formatOf, present, unitsOf } from '../presentation.js';
import { studied } from '../study.js';
import { usageStop } from '../usage.js';
import { workingOptions } from '../working-options.js';

export async function run(given: Given): Promise<ExitCode> {
  formatOf(given);
  const out = given.values.get('out');
  const sheet = given.values.get('check');
  const design = given.positionals[0] ?? '-';
  if (sheet === '-' && design === '-')
    throw usageStop('standard input cannot be both the design and the answers', given.command);
  for (const file of [design, ...(sheet === undefined ? [] : [sheet])]) {
    await demandSeparate(file, out === undefined || out === '-' ? [] : [out]);
  }
  const options = workingOptions(given);
  const model = fromInput(await readDesignInput(given), given, (assembled) => assembled);
  if (sheet !== undefined) return mark(sheet, model, given);
  await present(
    lookUp(given, () => workedReport(model, options)),
    given,
  );
  return exit.fine;
}

/** Marks a sheet of answers. @throws Stop 64 beside options of the working, 65 and 66 for the sheet */
async function mark(sheet: string, model: Model, given: Given): Promise<ExitCode> {
  const other = ['of', 'ply', 'upto', 'digits'].find((name) => given.values.has(name));
  if (other !== undefined) throw usageStop(`\`--check\` marks answers and takes no \`--${other}\``, given.command);
  const { name, bytes } = await readInput(sheet, given.command);
  const checked = studied(name, given, () => checkAnswers(model, readAnswers(bytes, { fileName: name })));
  await present(answersReport(checked, unitsOf(given)), given);
  return checked.counts.slip + checked.counts.wrong > 0 ? exit.answerNotRight : exit.fine;
}
