import type { Command, Option, Positional } from './command.js';
import { exitMeanings } from './exit.js';
import { optionsOf } from './options.js';
import { wrap } from './wrap.js';

const placeholder = ({ name, optional, repeated }: Positional): string => {
  const one = repeated ? `${name}...` : name;
  return optional ? `[${one}]` : one;
};

/** One line: how the command is typed. */
export function usageLine(command: Command): string {
  const options = command.options.length > 0 ? ['[options]'] : [];
  return ['selvage', command.name, ...options, ...command.positionals.map(placeholder)].join(' ');
}

const optionLabel = ({ name, short, value }: Option): string =>
  `${short === undefined ? '' : `-${short}, `}--${name}${value === undefined ? '' : ` ${value}`}`;

const withChoices = (summary: string, choices: readonly string[] | undefined): string =>
  choices === undefined ? summary : `${choices.join('|')}: ${summary}`;

type Row = readonly [label: string, text: string];

/** Labels in a column, their texts wrapped beside them. */
function listing(title: string, rows: readonly Row[], width: number): string {
  if (rows.length === 0) return '';
  const labelWidth = Math.max(...rows.map(([label]) => label.length));
  const lines = rows.flatMap(([label, text]) =>
    wrap(text, width - labelWidth - 4).map((line, i) => `  ${(i === 0 ? label : '').padEnd(labelWidth)}  ${line}`),
  );
  return `\n${title}\n${lines.join('\n')}\n`;
}

const exampleLines = (examples: readonly string[]): string => examples.map((line) => `  ${line}\n`).join('');

/** The help of one command: examples first. */
export function commandHelp(command: Command, width: number): string {
  const positionals = command.positionals.map((p): Row => [p.name, withChoices(p.summary, p.choices)]);
  const options = optionsOf(command).map((o): Row => [optionLabel(o), withChoices(o.summary, o.choices)]);
  return [
    `selvage ${command.name}: ${command.summary}\n`,
    `\nExamples\n${exampleLines(command.examples)}`,
    `\nUsage\n  ${usageLine(command)}\n`,
    listing('Arguments', positionals, width),
    listing('Options', options, width),
  ].join('');
}

/** The help of the whole program. */
export function programHelp(commands: readonly Command[], width: number): string {
  return [
    'selvage: laminate and stitch mechanics of stitched composite blades\n',
    `\nExamples\n${exampleLines(['selvage init', 'selvage report design.yaml', 'selvage check design.yaml'])}`,
    listing(
      'Commands',
      commands.map(({ name, summary }): Row => [name, summary]),
      width,
    ),
    listing(
      'Options',
      [
        ['-h, --help', 'this text; after a command, the help of that command'],
        ['--version', 'the version'],
      ],
      width,
    ),
    listing(
      'Exit status',
      exitMeanings.map(([code, meaning]): Row => [String(code), meaning]),
      width,
    ),
  ].join('');
}

/** What someone sees who types the bare name. */
export function shortHelp(commands: readonly Command[]): string {
  return [
    'usage: selvage COMMAND [options] [arguments]\n',
    exampleLines(['selvage init', 'selvage report design.yaml']),
    `commands: ${commands.map(({ name }) => name).join(', ')}\n`,
    'selvage --help says more\n',
  ].join('');
}
