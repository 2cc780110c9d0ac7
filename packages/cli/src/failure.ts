import { type ExitCode, exit } from './exit.js';
import { Stop } from './stop.js';
import { stderrText } from './terminal.js';
import { version } from './version.js';

/** The names of the ends of a run in the JSON form of an error. */
const names: Readonly<Record<ExitCode, string>> = {
  [exit.fine]: 'fine',
  [exit.targetMissed]: 'target-missed',
  [exit.usage]: 'usage',
  [exit.badData]: 'bad-data',
  [exit.noInput]: 'no-input',
  [exit.bug]: 'bug',
  [exit.cannotWrite]: 'cannot-write',
  [exit.interrupted]: 'interrupted',
};

/** Says on standard error why the run ends, as JSON when the result would have been JSON; the answer is the exit status. */
export async function report(thrown: unknown, args: readonly string[]): Promise<ExitCode> {
  const { exitCode, message, problems } = thrown instanceof Stop ? thrown : bug(thrown);
  const asJson = args.includes('--format=json') || args[args.indexOf('--format') + 1] === 'json';
  const sentence = problems.length > 0 ? problems.map((problem) => problem.message).join('; ') : message.split('\n')[0];
  const error = { code: names[exitCode], exitCode, message: sentence, problems };
  // Problems of a file begin with their place, as editors and terminals expect it.
  const text = problems.length > 0 ? message : `selvage: ${message}`;
  await stderrText(asJson ? `${JSON.stringify({ error }, null, 2)}\n` : text.endsWith('\n') ? text : `${text}\n`);
  return exitCode;
}

/** Whatever is not foreseen is our fault, and says so; the stack is shown on request. */
function bug(thrown: unknown): Stop {
  const error = thrown instanceof Error ? thrown : new Error(String(thrown));
  const details = (process.env.SELVAGE_DEBUG ?? '') === '' ? '' : `\n${error.stack}`;
  const lines = [
    `internal error: ${error.message}`,
    'This is a fault of selvage, not of your input.',
    'Please report it to whoever maintains your copy, with the command as typed, the input file and this line:',
    `  selvage ${version}, node ${process.version}, ${process.platform} ${process.arch}`,
    ...(details === '' ? ['Set SELVAGE_DEBUG=1 to see where it happened.'] : []),
  ];
  return new Stop(exit.bug, `${lines.join('\n')}${details}`);
}
