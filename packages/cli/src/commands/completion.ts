import { basename } from 'node:path';
import { exampleIds, exampleSubjects } from '@selvage/core';
import type { Command, Given, Positional } from '../command.js';
import { bash } from '../completion/bash.js';
import { fish } from '../completion/fish.js';
import { zsh } from '../completion/zsh.js';
import { type ExitCode, exit } from '../exit.js';
import { stdoutText } from '../terminal.js';
import { usageStop } from '../usage.js';

const scripts = new Map([
  ['bash', bash],
  ['zsh', zsh],
  ['fish', fish],
]);

export async function run(given: Given, commands: readonly Command[]): Promise<ExitCode> {
  const shell = given.positionals[0] ?? basename(process.env.SHELL ?? '');
  const script = scripts.get(shell);
  if (script === undefined) {
    throw usageStop(`SHELL is missing: name one of ${[...scripts.keys()].join(', ')}`, given.command);
  }
  await stdoutText(script(commands.map(withWords)));
  return exit.fine;
}

/** A command whose words that stand in the library are written out, so that a shell need not ask for them. */
function withWords(command: Command): Command {
  const spelled = (one: Positional): Positional =>
    one.completes === 'example' ? { ...one, choices: [...exampleSubjects, ...exampleIds] } : one;
  return { ...command, positionals: command.positionals.map(spelled) };
}
