import type { UnitSystem } from '../../quantity/index.js';
import type { Block, Report } from '../blocks.js';
import { withoutControls } from '../figures/index.js';
import { cellText, decimalPadding, headUnit, isNumeric } from './cell.js';
import { type Paint, paintFor } from './paint.js';
import { factLines } from './text-facts.js';
import { stepLines } from './text-step.js';
import { type TextTable, tableLines } from './text-table.js';
import { widthOf, wrap } from './wrap.js';

interface Page {
  readonly units: UnitSystem;
  readonly width: number;
  readonly paint: Paint;
}

/** A heading over a rule as long as itself: `=` for the title, `-` for a section, a running stitch below that. */
function heading(text: string, rule: '=' | '-' | '- ', { width, paint }: Page): string[] {
  const lines = wrap(text, width);
  const length = Math.max(...lines.map(widthOf));
  return [...lines.map(paint.bold), rule.repeat(length).slice(0, length).trimEnd()];
}

function textTable(block: Extract<Block, { kind: 'table' }>, units: UnitSystem): TextTable {
  const cells = block.rows.map((row) => row.map((cell, i) => cellText(cell, units, block.columns[i])));
  const columns = block.columns.map((column, i) => ({
    label: column.label,
    unit: headUnit(column, units),
    numeric: isNumeric(column, block.rows, i),
  }));
  const padding = columns.map(({ numeric }, i) => (numeric ? decimalPadding(cells.map((row) => row[i] ?? '')) : []));
  return {
    columns,
    rows: cells.map((row, r) => row.map((cell, i) => cell + ' '.repeat(padding[i]?.[r]?.length ?? 0))),
  };
}

function figureLines(block: Extract<Block, { kind: 'figure' }>, { width, paint }: Page): string[] {
  const caption = wrap(`Figure: ${block.caption}`, width).map(paint.bold);
  const drawing = (block.text ?? '').split('\n').map((line) => `  ${withoutControls(line)}`.trimEnd());
  const fits = block.text !== undefined && drawing.every((line) => widthOf(line) <= width);
  return fits ? [...caption, '', ...drawing] : [...caption, ...wrap(block.alt, width, '  ')];
}

function blockLines(block: Block, page: Page): string[] {
  const { width, paint, units } = page;
  switch (block.kind) {
    case 'heading':
      return ['', ...heading(block.text, block.level === 2 ? '-' : '- ', page)];
    case 'paragraph':
      return wrap(block.text, width);
    case 'list':
      return block.items.flatMap((item) => wrap(item, width, '- '));
    case 'facts':
      return factLines(block, units, width, paint.dim);
    case 'table': {
      const marks = { head: paint.bold, unit: paint.dim };
      return [...wrap(block.caption, width), '', ...tableLines(textTable(block, units), width, marks)];
    }
    case 'figure':
      return figureLines(block, page);
    case 'step':
      return stepLines(block, units, width, paint);
    case 'notes':
      return block.notes.flatMap(({ level, text, source }) => {
        const words = source === undefined ? text : `${text} [${source}]`;
        return level === 'warning'
          ? wrap(`Warning: ${words}`, width, '! ').map(paint.yellow)
          : wrap(`Assumption: ${words}`, width, '* ');
      });
    case 'caution':
      return [
        ...wrap(block.title, width, '!! ').map(paint.yellow),
        ...block.items.flatMap((item) => wrap(item, width, '   - ')),
      ];
    case 'sources':
      return block.entries.flatMap(({ key, text, access }) => wrap(`[${key}] ${text} (${access})`, width, '', 2));
  }
}

export interface TextOptions {
  readonly units: UnitSystem;
  /** Characters in a line, at least 20. */
  readonly width: number;
  readonly colour: boolean;
}

/** The report for a terminal: wrapped at `width`, columns aligned, drawings in characters, colours only when asked for. */
export function renderText(report: Report, { units, width, colour }: TextOptions): string {
  const page: Page = { units, width: Math.max(20, Math.floor(width)), paint: paintFor(colour) };
  const title = heading(report.title, '=', page);
  const subtitle = report.subtitle === undefined ? [] : wrap(report.subtitle, page.width);
  const parts = report.blocks.map((block) => blockLines(block, page)).filter((lines) => lines.length > 0);
  return `${[[...title, ...subtitle], ...parts].map((lines) => lines.join('\n')).join('\n\n')}\n`;
}
