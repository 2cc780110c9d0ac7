import type { Command, Option } from '../command.js';
import { optionsOf } from '../options.js';

const words = (list: readonly string[]): string => `COMPREPLY=($(compgen -W '${list.join(' ')}' -- "$current"))`;

const dashed = ({ name, short }: Option): string[] => [`--${name}`, ...(short === undefined ? [] : [`-${short}`])];

/** The values of an option; an empty reply leaves the word to the completion of file names. */
function valueCase(command: Command, option: Option): string[] {
  if (option.value === undefined) return [];
  const pattern = dashed(option)
    .map((word) => `${command.name}:${word}`)
    .join(' | ');
  return [`    ${pattern}) ${option.choices === undefined ? ':' : words(option.choices)}; return ;;`];
}

function commandCase(command: Command): string[] {
  const options = optionsOf(command).flatMap(dashed);
  const choices = command.positionals.flatMap((positional) => positional.choices ?? []);
  return [
    `    ${command.name})`,
    `      if [[ $current == -* ]]; then ${words(options)}`,
    ...(choices.length > 0 ? [`      else ${words(choices)}`] : []),
    '      fi ;;',
  ];
}

/** Completion for bash: commands, options, their values, and file names elsewhere. */
export function bash(commands: readonly Command[]): string {
  return `${[
    '# Completion of selvage for bash: source <(selvage completion bash)',
    '_selvage() {',
    `  local current=\${COMP_WORDS[COMP_CWORD]} previous=\${COMP_WORDS[COMP_CWORD-1]} command=\${COMP_WORDS[1]}`,
    '  COMPREPLY=()',
    `  if ((COMP_CWORD == 1)); then ${words([...commands.map(({ name }) => name), '--help', '--version'])}; return; fi`,
    '  case $command:$previous in',
    ...commands.flatMap((command) => command.options.flatMap((option) => valueCase(command, option))),
    '  esac',
    '  case $command in',
    ...commands.flatMap(commandCase),
    '  esac',
    '}',
    'complete -o default -F _selvage selvage',
  ].join('\n')}\n`;
}
