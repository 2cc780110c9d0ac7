import type { UnitSystem } from '../../quantity/index.js';
import type { Block, Cell, Column, Report } from '../blocks.js';
import { cellText, fullNumber, headUnit, isQuantity } from './cell.js';

const lineEnd = '\r\n';
const number = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;

/** A field as RFC 4180 writes it; text that a spreadsheet would run as a formula gets an apostrophe in front. */
function field(text: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) && !number.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

const record = (fields: readonly string[]): string => fields.map(field).join(',') + lineEnd;

function head(column: Column, units: UnitSystem): string {
  const unit = headUnit(column, units);
  return unit === '' ? column.label : `${column.label} [${unit}]`;
}

function value(cell: Cell, units: UnitSystem, column?: Column): string {
  if (!isQuantity(cell)) return cell;
  if (cell.kind === column?.kind) return fullNumber(cell, units);
  const unit = headUnit({ label: '', kind: cell.kind }, units);
  return unit === '' ? fullNumber(cell, units) : `${fullNumber(cell, units)} ${unit}`;
}

type Table = Extract<Block, { kind: 'table' }>;
type Facts = Extract<Block, { kind: 'facts' }>;

function tableRecords(table: Table, units: UnitSystem): string {
  return (
    record([table.id, table.caption]) +
    record(table.columns.map((column) => head(column, units))) +
    table.rows.map((row) => record(row.map((cell, i) => value(cell, units, table.columns[i])))).join('')
  );
}

function factRecords(id: string, caption: string, facts: Facts, units: UnitSystem): string {
  return (
    record([id, caption]) +
    record(['Quantity', 'Value', 'Unit', 'Remark']) +
    facts.items
      .map(({ label, value: cell, remark }) =>
        record([
          label,
          isQuantity(cell) ? fullNumber(cell, units) : cellText(cell, units),
          isQuantity(cell) ? headUnit({ label: '', kind: cell.kind }, units) : '',
          remark ?? '',
        ]),
      )
      .join('')
  );
}

/**
 * The tables and fact lists of a report as comma-separated values (RFC 4180: comma, double quotes, CRLF), one block each
 * with an empty line between blocks.
 *
 * A block is: a record with the block's id and its caption; a record with the column names, each with its unit in square
 * brackets; the rows. Numbers stand in the reader's units with all their digits and a decimal point. Fact lists have the
 * columns Quantity, Value, Unit, Remark and the id of the heading above them with `-facts` (a second one `-facts-2`).
 * Text that begins with = + - @, a tab or a line end and is not a number is preceded by an apostrophe, since spreadsheets
 * would take it for a formula.
 */
export function renderCsv(report: Report, units: UnitSystem): string {
  const sections: string[] = [];
  const used = new Map<string, number>();
  let heading = { id: 'report', text: report.title };
  for (const block of report.blocks) {
    if (block.kind === 'heading') heading = block;
    if (block.kind === 'table') sections.push(tableRecords(block, units));
    if (block.kind === 'facts') {
      const count = (used.get(heading.id) ?? 0) + 1;
      used.set(heading.id, count);
      const id = count === 1 ? `${heading.id}-facts` : `${heading.id}-facts-${count}`;
      sections.push(factRecords(id, heading.text, block, units));
    }
  }
  return sections.join(lineEnd);
}
