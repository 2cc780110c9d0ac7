import type { Command } from './command.js';
import { exit } from './exit.js';
import { usageLine } from './help.js';
import { nearest } from './nearest.js';
import { Stop } from './stop.js';

/**
 * The end of a run that was called wrongly: what is wrong, the nearest right word where there is one, and how the
 * command is typed.
 */
export function usageStop(
  message: string,
  command?: Command,
  meant?: { readonly word: string; readonly known: readonly string[] },
): Stop {
  const hint = meant === undefined ? undefined : nearest(meant.word, meant.known);
  const usage =
    command === undefined
      ? 'selvage --help lists the commands'
      : `usage: ${usageLine(command)}\nselvage ${command.name} --help says more`;
  return new Stop(exit.usage, `${message}${hint === undefined ? '' : `; did you mean \`${hint}\`?`}\n${usage}`);
}
