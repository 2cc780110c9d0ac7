import { join } from 'node:path';
import { starterDesign } from '@selvage/core';
import type { Given } from '../command.js';
import { type ExitCode, exit } from '../exit.js';
import { createWhole } from '../output.js';
import { stderrText } from '../terminal.js';

export async function run(given: Given): Promise<ExitCode> {
  const path = join(given.positionals[0] ?? '.', 'design.yaml');
  await createWhole(path, starterDesign);
  const next = [
    `wrote ${path}; next:`,
    `  selvage check ${path}               what is wrong in it, if anything`,
    `  selvage report ${path} --summary    the figures that decide`,
    `  selvage report ${path} --watch      again at every save, with what changed`,
  ];
  await stderrText(`${next.join('\n')}\n`);
  return exit.fine;
}
