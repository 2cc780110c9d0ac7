import { designJsonSchema } from '@selvage/core';
import type { Given } from '../command.js';
import { type ExitCode, exit } from '../exit.js';
import { deliver } from '../presentation.js';

export async function run(given: Given): Promise<ExitCode> {
  await deliver(JSON.stringify(designJsonSchema(), null, 2), given);
  return exit.fine;
}
