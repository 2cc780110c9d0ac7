import type { Command, Option, Positional } from '../command.js';
import { optionsOf } from '../options.js';

/** Text inside single quotes, with what the completion functions of zsh read as punctuation escaped. */
const quoted = (text: string): string => `'${text.replaceAll("'", "'\\''")}'`;
const plain = (text: string): string => text.replace(/[\\:[\]]/g, (sign) => `\\${sign}`);

const action = (choices: readonly string[] | undefined, otherwise: string): string =>
  choices === undefined ? otherwise : `(${choices.join(' ')})`;

function optionSpecs({ name, short, value, choices, summary }: Option): string[] {
  const text = `[${plain(summary)}]`;
  const tail = value === undefined ? '' : `:${value}:${action(choices, '_files')}`;
  const long = quoted(`--${name}${value === undefined ? '' : '='}${text}${tail}`);
  return short === undefined ? [long] : [long, quoted(`-${short}${text}${tail}`)];
}

function positionalSpec({ name, optional, repeated, choices, completes }: Positional, index: number): string {
  const files = completes === 'file' ? '_files' : completes === 'directory' ? '_files -/' : ' ';
  const position = repeated ? '*' : `${index + 1}`;
  return quoted(`${position}${optional && !repeated ? '::' : ':'}${name}:${action(choices, files)}`);
}

function commandCase(command: Command): string {
  const specs = [...optionsOf(command).flatMap(optionSpecs), ...command.positionals.map(positionalSpec)];
  return `    ${command.name}) _arguments ${specs.join(' \\\n      ')} ;;`;
}

/** Completion for zsh: commands, options, their values, each with what it does. */
export function zsh(commands: readonly Command[]): string {
  const list = commands.map(({ name, summary }) => `    ${quoted(`${name}:${plain(summary)}`)}`);
  return `${[
    '#compdef selvage',
    '# Completion of selvage for zsh: source <(selvage completion zsh), or a file _selvage in $fpath',
    '_selvage() {',
    '  local -a commands=(',
    ...list,
    '  )',
    "  if ((CURRENT == 2)); then _describe command commands; _arguments '--help' '--version'; return; fi",
    '  local command=$words[2]',
    '  shift words; ((CURRENT--))',
    '  case $command in',
    ...commands.map(commandCase),
    '  esac',
    '}',
    'if [[ $funcstack[1] == _selvage ]]; then _selvage "$@"; else compdef _selvage selvage; fi',
  ].join('\n')}\n`;
}
