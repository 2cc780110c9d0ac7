import type { Command, Option, Positional } from '../command.js';
import { optionsOf } from '../options.js';

const quoted = (text: string): string => `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;

const seen = ({ name }: Command): string => `complete -c selvage -n '__fish_seen_subcommand_from ${name}'`;

function optionLine(command: Command, { name, short, value, choices, summary }: Option): string {
  const letter = short === undefined ? '' : ` -s ${short}`;
  const takes = value === undefined ? '' : choices === undefined ? ' -r -F' : ` -x -a ${quoted(choices.join(' '))}`;
  return `${seen(command)} -l ${name}${letter}${takes} -d ${quoted(summary)}`;
}

function positionalLines(command: Command, { completes, choices, summary }: Positional): string[] {
  if (choices !== undefined) return [`${seen(command)} -a ${quoted(choices.join(' '))} -d ${quoted(summary)}`];
  if (completes === 'file') return [`${seen(command)} -F`];
  return completes === 'directory' ? [`${seen(command)} -a '(__fish_complete_directories)'`] : [];
}

/** Completion for fish: commands, options, their values, each with what it does. */
export function fish(commands: readonly Command[]): string {
  return `${[
    '# Completion of selvage for fish: selvage completion fish > ~/.config/fish/completions/selvage.fish',
    'complete -c selvage -f',
    "complete -c selvage -n __fish_use_subcommand -l version -d 'the version'",
    "complete -c selvage -n __fish_use_subcommand -s h -l help -d 'what selvage does'",
    ...commands.flatMap((command) => [
      `complete -c selvage -n __fish_use_subcommand -a ${command.name} -d ${quoted(command.summary)}`,
      ...optionsOf(command).map((option) => optionLine(command, option)),
      ...command.positionals.flatMap((positional) => positionalLines(command, positional)),
    ]),
  ].join('\n')}\n`;
}
