import { fail } from '../../problem/index.js';
import type { UnitSystem } from '../../quantity/index.js';
import type { RenderFormat, Report } from '../blocks.js';
import { renderCsv } from './csv.js';
import { checkBlocks } from './finite.js';
import { renderHtml } from './html.js';
import { renderJson } from './json.js';
import { renderMarkdown } from './markdown.js';
import { renderText } from './text.js';

/** How a report is written out. */
export interface RenderOptions {
  /** Default the units in which the report was written. JSON is always SI; drawings keep the units they were drawn in. */
  readonly units?: UnitSystem;
  /** Characters in a line of text output, at least 20; default 80. */
  readonly width?: number;
  /** Mark headings, units and warnings of text output by terminal colours; default false. */
  readonly colour?: boolean;
}

/**
 * Prints a report. Same report, same options: the same characters.
 *
 * @param report Blocks for a reader, data for a program.
 * @param format text for terminals, markdown, html (one file, nothing else needed), json (the data, SI), csv (the tables).
 * @throws not-computable for a NaN or infinite number in the blocks or, for json, the data
 * @throws not-a-choice for another format
 * @throws contradiction for a table row that does not match its head
 */
export function render(report: Report, format: RenderFormat, options: RenderOptions = {}): string {
  const units = options.units ?? report.units;
  checkBlocks(report);
  switch (format) {
    case 'text':
      return renderText(report, { units, width: options.width ?? 80, colour: options.colour ?? false });
    case 'markdown':
      return renderMarkdown(report, units);
    case 'html':
      return renderHtml(report, units);
    case 'json':
      return renderJson(report);
    case 'csv':
      return renderCsv(report, units);
    default:
      return fail({
        code: 'not-a-choice',
        message: `there is no format \`${String(format)}\``,
        allowed: 'text, markdown, html, json, csv',
      });
  }
}
