import { exampleDesign, examplesReport, type Report, workedExampleReport } from '@selvage/core';
import type { Given } from '../command.js';
import { type ExitCode, exit } from '../exit.js';
import { lookUp } from '../lookup.js';
import { deliver, formatOf, present } from '../presentation.js';
import { usageStop } from '../usage.js';
import { workingOptions } from '../working-options.js';

export async function run(given: Given): Promise<ExitCode> {
  checkOptions(given);
  if (given.flags.has('design')) {
    const id = idFor('--design', given);
    if (given.values.has('format')) throw usageStop('`--design` writes YAML and takes no `--format`', given.command);
    await deliver(
      lookUp(given, () => exampleDesign(id)),
      given,
    );
    return exit.fine;
  }
  await present(given.flags.has('worked') ? worked(given) : lookUp(given, () => listed(given)), given);
  return exit.fine;
}

/** @throws Stop 64 for options that need another, or exclude each other */
function checkOptions(given: Given): void {
  const [design, worked] = ['design', 'worked'].map((name) => given.flags.has(name));
  if (design && worked) throw usageStop('`--design` and `--worked` exclude each other', given.command);
  const ofWorking = ['ply', 'upto', 'digits'].find((name) => given.values.has(name));
  if (ofWorking !== undefined && !worked) throw usageStop(`\`--${ofWorking}\` needs \`--worked\``, given.command);
}

const listed = (given: Given): Report => examplesReport(given.positionals[0], { list: formatOf(given) === 'text' });

/** @throws Stop 64 when no example is named, and for one that has no design */
function worked(given: Given): Report {
  const id = idFor('--worked', given);
  const options = workingOptions(given);
  return lookUp(given, () => workedExampleReport(id, options));
}

/** The example that an option needs. @throws Stop 64 */
function idFor(option: string, given: Given): string {
  const [id] = given.positionals;
  if (id === undefined) throw usageStop(`\`${option}\` needs the id of an example`, given.command);
  return id;
}
