import { compute } from '@selvage/core';
import type { Given } from '../command.js';
import { fromInput, readDesignInput } from '../design.js';
import { type ExitCode, exit } from '../exit.js';
import { stdoutText } from '../terminal.js';

export async function run(given: Given): Promise<ExitCode> {
  const input = await readDesignInput(given);
  fromInput(input, given, (model) => compute(model));
  const asJson = given.values.get('format') === 'json';
  await stdoutText(asJson ? `${JSON.stringify({ file: input.name, ok: true })}\n` : `${input.name}: ok\n`);
  return exit.fine;
}
