import { extname } from 'node:path';
import { type RenderFormat, type Report, render } from '@selvage/core';
import type { Given } from './command.js';
import { exit } from './exit.js';
import { writeWhole } from './output.js';
import { Stop } from './stop.js';
import { coloured, stderrText, stdoutText, terminalWidth } from './terminal.js';

type Units = 'metric' | 'us';

/** The format each file extension stands for. */
const extensions: Readonly<Record<string, RenderFormat>> = {
  '': 'text',
  '.txt': 'text',
  '.md': 'markdown',
  '.html': 'html',
  '.htm': 'html',
  '.json': 'json',
  '.csv': 'csv',
};

const formats: readonly RenderFormat[] = ['text', 'markdown', 'html', 'json', 'csv'];

/** The units asked for, ready to spread into options; nothing when the choice is left to the design. */
export function unitsOf(given: Given): { readonly units?: Units } {
  const units = given.values.get('units');
  return units === 'metric' || units === 'us' ? { units } : {};
}

/**
 * The format asked for: by name, or by the extension of the output file, or text.
 *
 * @throws Stop 64 for an extension that stands for no format
 */
export function formatOf(given: Given): RenderFormat {
  const named = formats.find((format) => format === given.values.get('format'));
  if (named !== undefined) return named;
  const out = given.values.get('out');
  if (out === undefined || out === '-') return 'text';
  const format = extensions[extname(out).toLowerCase()];
  if (format !== undefined) return format;
  const message = `no format is known by the extension of \`${out}\`; name one with --format, or end in`;
  throw new Stop(exit.usage, `${message} ${Object.keys(extensions).filter(Boolean).join(' ')}`);
}

/** Renders the report as asked and writes it where asked: standard output, or whole into the file of `--out`. */
export async function present(report: Report, given: Given): Promise<void> {
  const looks =
    toFile(given) === undefined
      ? { width: terminalWidth(process.stdout), colour: coloured(process.stdout, given.flags) }
      : { width: 80, colour: false };
  const units = unitsOf(given).units ?? report.units;
  await deliver(render(report, formatOf(given), { ...looks, units }), given);
}

function toFile(given: Given): string | undefined {
  const out = given.values.get('out');
  return out === '-' ? undefined : out;
}

/** Writes a finished text where `--out` says, and says on standard error that a file was written. */
export async function deliver(text: string, given: Given): Promise<void> {
  const out = toFile(given);
  const whole = text.endsWith('\n') ? text : `${text}\n`;
  if (out === undefined) return stdoutText(whole);
  await writeWhole(out, whole);
  await stderrText(`wrote ${out}\n`);
}
