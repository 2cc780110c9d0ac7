import type { Command, Option } from './command.js';

export const units: Option = {
  name: 'units',
  value: 'SYSTEM',
  choices: ['metric', 'us'],
  summary: 'units shown; the default is that of the design, else metric',
};

/** Values that are quoted are not converted: they are what their source says. */
export const quotedUnits: Option = {
  ...units,
  summary: 'accepted as by other commands; values quoted from a source stay in its units',
};

export const out: Option = {
  name: 'out',
  short: 'o',
  value: 'FILE',
  summary: 'write to FILE, whole or not at all; its extension chooses the format if --format does not',
};

export const quantity: Option = {
  name: 'quantity',
  value: 'PATH',
  repeated: true,
  summary: 'a number of the JSON report, several times for several; by default what the targets ask for',
};

export const watch: Option = {
  name: 'watch',
  summary: 'recompute whenever a file is saved and show what changed since then and since the start',
};

export const format = (...choices: string[]): Option => ({
  name: 'format',
  value: 'FORMAT',
  choices,
  summary: 'how the result is written; text unless --out says otherwise',
});

export const anyFormat = format('text', 'markdown', 'html', 'json', 'csv');

/** The options that every command has. */
const commonOptions: readonly Option[] = [
  { name: 'no-color', summary: 'no colours; a non-empty NO_COLOR in the environment does the same' },
  { name: 'help', short: 'h', summary: 'say how the command is used' },
];

/** All options of a command, its own first. */
export function optionsOf(command: Command): readonly Option[] {
  return [...command.options, ...commonOptions];
}
