import { readFile } from 'node:fs/promises';
import type { Command } from './command.js';
import { exit } from './exit.js';
import { commandHelp } from './help.js';
import { Stop, systemReason } from './stop.js';
import { terminalWidth } from './terminal.js';

/** An input as it was found, and what messages call it. */
export interface Input {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/**
 * The bytes of a file, or of standard input when the name is `-`.
 *
 * @throws Stop 66 when there is no such file or it cannot be read, 64 when standard input is a terminal
 */
export async function readInput(name: string, command: Command): Promise<Input> {
  if (name === '-') return { name: 'standard input', bytes: await readStandardInput(command) };
  try {
    return { name, bytes: await readFile(name) };
  } catch (error) {
    const reason = systemReason(error);
    if (reason === undefined) throw error;
    throw new Stop(exit.noInput, `cannot read \`${name}\`: ${reason}`);
  }
}

async function readStandardInput(command: Command): Promise<Uint8Array> {
  if (process.stdin.isTTY) {
    const help = commandHelp(command, terminalWidth(process.stderr));
    throw new Stop(
      exit.usage,
      `\`-\` reads standard input, which is the keyboard here: pipe a file into it\n\n${help}`,
    );
  }
  const chunks: Uint8Array[] = [];
  try {
    for await (const chunk of process.stdin) chunks.push(chunk);
  } catch (error) {
    const reason = systemReason(error);
    if (reason === undefined) throw error;
    throw new Stop(exit.noInput, `cannot read standard input: ${reason}`);
  }
  return Buffer.concat(chunks);
}
