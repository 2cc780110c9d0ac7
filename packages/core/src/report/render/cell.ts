import { displayNumber, displayUnit, formatQuantity, inDisplayUnit, type UnitSystem } from '../../quantity/index.js';
import type { Cell, Column, QuantityCell } from '../blocks.js';

export function isQuantity(cell: Cell): cell is QuantityCell {
  return typeof cell !== 'string';
}

/** A cell under a column head: the number alone when the head carries its unit, else number and unit. */
export function cellText(cell: Cell, units: UnitSystem, column?: Column): string {
  if (!isQuantity(cell)) return cell;
  const options = cell.digits === undefined ? { units } : { units, digits: cell.digits };
  return cell.kind === column?.kind
    ? displayNumber(cell.value, cell.kind, options)
    : formatQuantity(cell.value, cell.kind, options);
}

/** The unit in a column's head; empty when the column has none. */
export function headUnit(column: Column, units: UnitSystem): string {
  return column.kind === undefined ? '' : displayUnit(column.kind, units);
}

/** Whether the column at `index` holds numbers and is set to the right. */
export function isNumeric(column: Column, rows: readonly (readonly Cell[])[], index: number): boolean {
  return column.kind !== undefined || rows.some((row) => typeof row[index] === 'object');
}

/** The number of a quantity in the reader's unit with all the digits a double holds. */
export function fullNumber(cell: QuantityCell, units: UnitSystem): string {
  return String(Number(inDisplayUnit(cell.value, cell.kind, units).toPrecision(15)) + 0);
}

const plainNumber = /^-?\d+(?:\.(\d+))?$/;

/**
 * For each number of a column the characters that, set after it, bring all decimal points to one place; all empty when the
 * column holds a number in exponent form. Words keep to the right edge.
 */
export function decimalPadding(texts: readonly string[]): string[] {
  const numbers = texts.filter((text) => /^-?\d/.test(text));
  if (!numbers.every((text) => plainNumber.test(text))) return texts.map(() => '');
  const tail = (text: string): string => {
    const fraction = plainNumber.exec(text)?.[1];
    return fraction === undefined ? '' : `.${fraction}`;
  };
  const longest = Math.max(0, ...numbers.map((text) => tail(text).length));
  return texts.map((text) => {
    if (!plainNumber.test(text)) return '';
    const own = tail(text);
    return own === '' ? '.0000000000000000'.slice(0, longest) : '0'.repeat(longest - own.length);
  });
}
