import { exit } from './exit.js';
import { Stop, systemCode, systemReason } from './stop.js';

type Output = typeof process.stdout | typeof process.stderr;

/** Columns to write in: those of the terminal up to 100, and 80 where there is none. */
export function terminalWidth(stream: Output): number {
  // A terminal that does not know its width reports 0 columns.
  return stream.isTTY && stream.columns > 0 ? Math.min(stream.columns, 100) : 80;
}

/** Whether colours may go to the stream: it is a terminal that knows them, and nobody has asked for none. */
export function coloured(stream: Output, flags: ReadonlySet<string>): boolean {
  const { NO_COLOR, TERM } = process.env;
  return stream.isTTY === true && (NO_COLOR ?? '') === '' && TERM !== 'dumb' && !flags.has('no-color');
}

/** Writes all of the text; a reader that has gone away is no fault. */
function writeAll(stream: Output, text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    stream.write(text, (error) => {
      if (error === null || error === undefined || systemCode(error) === 'EPIPE') resolve();
      else reject(error);
    });
  });
}

/**
 * Writes a result.
 *
 * @throws Stop 74 when standard output takes no more
 */
export async function stdoutText(text: string): Promise<void> {
  try {
    await writeAll(process.stdout, text);
  } catch (error) {
    const reason = systemReason(error);
    if (reason === undefined) throw error;
    throw new Stop(exit.cannotWrite, `cannot write to standard output: ${reason}`);
  }
}

/** Writes a message; where it cannot be written there is nobody to tell. */
export async function stderrText(text: string): Promise<void> {
  await writeAll(process.stderr, text).catch(() => undefined);
}
