import type { UnitSystem } from '../../quantity/index.js';
import type { Block, Cell, Column, Report, StepBlock } from '../blocks.js';
import { kindOf } from '../formula/index.js';
import { fullNumber, headUnit, isQuantity } from './cell.js';

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

const unitOf = (cell: Cell, units: UnitSystem): string =>
  isQuantity(cell) ? headUnit({ label: '', kind: cell.kind }, units) : '';

type Table = Extract<Block, { kind: 'table' }>;
type Facts = Extract<Block, { kind: 'facts' }>;

/** Whether a column needs one more for its units, since its numbers are of several kinds. */
const isMixed = (table: Table, i: number, units: UnitSystem): boolean =>
  table.columns[i]?.kind === undefined && table.rows.some((row) => unitOf(row[i] ?? '', units) !== '');

function tableRecords(table: Table, units: UnitSystem): string {
  const mixed = table.columns.map((_, i) => isMixed(table, i, units));
  const heads = table.columns.flatMap((column, i) =>
    mixed[i] ? [column.label, `${column.label} unit`] : [head(column, units)],
  );
  const row = (cells: readonly Cell[]): string[] =>
    cells.flatMap((cell, i) => {
      const own = isQuantity(cell) ? fullNumber(cell, units) : cell;
      return mixed[i] ? [own, unitOf(cell, units)] : [own];
    });
  return record([table.id, table.caption]) + record(heads) + table.rows.map((cells) => record(row(cells))).join('');
}

/** The result of each formula of each step: a table of quantities by their keys. */
function stepRecords(steps: readonly StepBlock[], units: UnitSystem): string {
  const rows = steps.flatMap((step) =>
    Object.entries(step.results).map(([symbol, value]) => {
      const cell = { value, kind: kindOf(symbol) };
      return [String(step.number), step.rule, `${step.part}.${symbol}`, fullNumber(cell, units), unitOf(cell, units)];
    }),
  );
  return (
    record(['steps', 'Results of the steps']) +
    record(['Step', 'Rule', 'Quantity', 'Value', 'Unit']) +
    rows.map(record).join('')
  );
}

type Notes = Extract<Block, { kind: 'notes' | 'caution' }>;

/** Assumptions, warnings and cautions: a table of words. */
function wordRecords(blocks: readonly Notes[]): string {
  const rows = blocks.flatMap((block) =>
    block.kind === 'notes'
      ? block.notes.map((note) => [note.level, note.text, note.source ?? ''])
      : block.items.map((item) => ['caution', item, '']),
  );
  const once = [...new Map(rows.map((row) => [row.join('\n'), row])).values()];
  return (
    record(['notes', 'Assumptions, warnings and cautions']) +
    record(['Level', 'Text', 'Source']) +
    once.map(record).join('')
  );
}

/** A count in groups of three as a program reads it: "36 864" is 36864. */
const ungrouped = (text: string): string => (/^\d{1,3}( \d{3})+$/.test(text) ? text.replaceAll(' ', '') : text);

function factRecords(id: string, caption: string, facts: Facts, units: UnitSystem): string {
  return (
    record([id, caption]) +
    record(['Quantity', 'Value', 'Unit', 'Remark']) +
    facts.items
      .map(({ label, value: cell, remark }) =>
        record([
          label,
          isQuantity(cell) ? fullNumber(cell, units) : ungrouped(cell),
          unitOf(cell, units),
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
 * First a record with `report` and the title; last a block of the assumptions, warnings and cautions.
 * A block is: a record with the block's id and its caption; a record with the column names, each with its unit in square
 * brackets, or followed by a column of units where they differ; the rows. Numbers stand in the reader's units with all their digits and a decimal point. Fact lists have the
 * columns Quantity, Value, Unit, Remark and the id of the heading above them with `-facts` (a second one `-facts-2`).
 * Text that begins with = + - @, a tab or a line end and is not a number is preceded by an apostrophe, since spreadsheets
 * would take it for a formula.
 */
export function renderCsv(report: Report, units: UnitSystem): string {
  const sections: string[] = [record(['report', report.title])];
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
  const steps = report.blocks.filter((block) => block.kind === 'step');
  if (steps.length > 0) sections.unshift(stepRecords(steps, units));
  const words = report.blocks.filter((block) => block.kind === 'notes' || block.kind === 'caution');
  return [...sections, ...(words.length === 0 ? [] : [wordRecords(words)])].join(lineEnd);
}
