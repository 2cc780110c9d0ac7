import { withoutControls } from '../figures/index.js';
import { padEnd, padStart, widthOf, wordsOf, wrap } from './wrap.js';

/** A table with its cells already in words. */
export interface TextTable {
  readonly columns: readonly { readonly label: string; readonly unit: string; readonly numeric: boolean }[];
  readonly rows: readonly (readonly string[])[];
}

/** How heads and units are marked; both leave the printed width as it is. */
export interface TableMarks {
  readonly head: (line: string) => string;
  readonly unit: (line: string) => string;
}

const gap = '  ';

const longest = (texts: readonly string[]): number => Math.max(0, ...texts.map(widthOf));

/** The least width of a column: numbers stay whole, words may be wrapped. */
function least({ columns, rows }: TextTable, index: number): number {
  const column = columns[index] ?? { label: '', unit: '', numeric: false };
  const cells = rows.map((row) => row[index] ?? '');
  const whole = column.numeric ? cells : cells.flatMap(wordsOf);
  return longest([...wordsOf(column.label), column.unit, ...whole]);
}

/** Widths that fit together into `width`, taken from the widest column first; undefined when not even the least ones fit. */
function fittingWidths(table: TextTable, width: number): number[] | undefined {
  const floor = table.columns.map((_, i) => least(table, i));
  const widths = table.columns.map(({ label, unit }, i) =>
    longest([label, unit, ...table.rows.map((row) => row[i] ?? '')]),
  );
  const room = width - gap.length * (table.columns.length - 1);
  for (let total = widths.reduce((sum, w) => sum + w, 0); total > room; total--) {
    let widest = -1;
    widths.forEach((w, i) => {
      if (w > (floor[i] ?? 0) && (widest < 0 || w > (widths[widest] ?? 0))) widest = i;
    });
    if (widest < 0) return undefined;
    widths[widest] = (widths[widest] ?? 0) - 1;
  }
  return widths;
}

/** Cells beside each other, each already in lines; `low` sets short ones at the foot, as in a head. */
function beside(
  cells: readonly (readonly string[])[],
  widths: readonly number[],
  numeric: readonly boolean[],
  low = false,
): string[] {
  const height = Math.max(1, ...cells.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) =>
    cells
      .map((lines, i) => {
        const text = lines[low ? line - (height - lines.length) : line] ?? '';
        return numeric[i] ? padStart(text, widths[i] ?? 0) : padEnd(text, widths[i] ?? 0);
      })
      .join(gap)
      .trimEnd(),
  );
}

function drawn(table: TextTable, widths: readonly number[], marks: TableMarks): string[] {
  const numeric = table.columns.map((column) => column.numeric);
  const labels = table.columns.map((column, i) => wrap(column.label, widths[i] ?? 0));
  const units = table.columns.map((column) => [column.unit]);
  const body = (row: readonly string[]): string[][] =>
    row.map((cell, i) => (numeric[i] ? [withoutControls(cell)] : wrap(cell, widths[i] ?? 0)));
  return [
    ...beside(labels, widths, numeric, true).map(marks.head),
    ...(units.some(([unit]) => unit !== '') ? beside(units, widths, numeric).map(marks.unit) : []),
    widths.map((w) => '-'.repeat(w)).join(gap),
    ...table.rows.flatMap((row) => beside(body(row), widths, numeric)),
  ];
}

/** Each row as a small list of "label  value unit" under the row's first cell. */
function stacked({ columns, rows }: TextTable, width: number): string[] {
  const labelWidth = longest(columns.slice(1).map((column) => column.label));
  return rows.flatMap((row) => [
    ...wrap(row[0] ?? '', width),
    ...columns.slice(1).flatMap(({ label, unit }, i) => {
      const value = [(row[i + 1] ?? '').trim(), unit].filter((word) => word !== '').join(' ');
      const lead = `  ${padEnd(label, Math.min(labelWidth, width))}  `;
      return wrap(value, width, lead, Math.min(4, widthOf(lead)));
    }),
  ]);
}

const pick = (table: TextTable, indices: readonly number[]): TextTable => ({
  columns: indices.flatMap((i) => table.columns[i] ?? []),
  rows: table.rows.map((row) => indices.map((i) => row[i] ?? '')),
});

/** Columns shared out into parts that fit, each begun by column 0; undefined when column 0 and one other do not fit. */
function parts(table: TextTable, width: number): TextTable[] | undefined {
  const shared: number[][] = [[0]];
  for (let column = 1; column < table.columns.length; column++) {
    const grown = [...(shared.at(-1) ?? []), column];
    if (fittingWidths(pick(table, grown), width)) shared[shared.length - 1] = grown;
    else if (grown.length > 2 && fittingWidths(pick(table, [0, column]), width)) shared.push([0, column]);
    else return undefined;
  }
  return shared.map((indices) => pick(table, indices));
}

/**
 * The lines of a table no wider than `width`: heads and words are wrapped first; when that is not enough the columns are
 * split into several tables that each repeat the first column; when not even two columns fit, rows become lists.
 */
export function tableLines(table: TextTable, width: number, marks: TableMarks): string[] {
  const fitting = parts(table, width);
  if (!fitting) return stacked(table, width);
  return fitting.flatMap((part, i) => [
    ...(i === 0 ? [] : ['']),
    ...drawn(part, fittingWidths(part, width) ?? part.columns.map((_, j) => least(part, j)), marks),
  ]);
}
