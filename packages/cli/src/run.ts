import type { Command } from './command.js';
import { type ExitCode, exit } from './exit.js';
import { commandHelp, programHelp, shortHelp } from './help.js';
import { commands } from './table.js';
import { stderrText, stdoutText, terminalWidth } from './terminal.js';
import { usageStop } from './usage.js';
import { version } from './version.js';

const isHelp = (arg: string): boolean => arg === '--help' || arg === '-h';

/** Runs the command line (the arguments after the program's name); the answer is the exit status. */
export async function run(args: readonly string[]): Promise<ExitCode> {
  const [first, ...rest] = args;
  if (first === undefined) {
    await stderrText(shortHelp(commands));
    return exit.usage;
  }
  if (isHelp(first) || (first === 'help' && rest.length === 0)) {
    await stdoutText(programHelp(commands, terminalWidth(process.stdout)));
    return exit.fine;
  }
  if (first === '--version') {
    await stdoutText(`${version}\n`);
    return exit.fine;
  }
  if (first === 'help') return help(commandNamed(rest[0] ?? ''));
  const command = commandNamed(first);
  const end = rest.indexOf('--');
  if ((end < 0 ? rest : rest.slice(0, end)).some(isHelp)) return help(command);
  const { parseArguments } = await import('./arguments.js');
  const given = parseArguments(command, rest);
  const { run: runCommand } = await command.load();
  return runCommand(given, commands);
}

async function help(command: Command): Promise<ExitCode> {
  await stdoutText(commandHelp(command, terminalWidth(process.stdout)));
  return exit.fine;
}

function commandNamed(name: string): Command {
  const found = commands.find((command) => command.name === name);
  if (found !== undefined) return found;
  const word = name.startsWith('-') ? 'option' : 'command';
  const known = word === 'option' ? ['--help', '--version'] : commands.map((command) => command.name);
  throw usageStop(`unknown ${word} \`${name}\``, undefined, { word: name, known });
}
