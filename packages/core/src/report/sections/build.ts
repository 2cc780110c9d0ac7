import type { KindName } from '../../quantity/index.js';
import type { Block, Cell, Column, QuantityCell } from '../blocks.js';

/** A number with its kind, for a table or a list of facts. */
export const amount = (value: number, kind: KindName, digits?: number): QuantityCell =>
  digits === undefined ? { value, kind } : { value, kind, digits };

/** A number that may be missing; then a reader sees why instead. */
export const amountOr = (value: number | undefined, kind: KindName, otherwise: string): Cell =>
  value === undefined ? otherwise : amount(value, kind);

/** A name as part of an element id: lower case, hyphens. */
export const slug = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]+/g, '-');

export const heading = (level: 2 | 3, text: string, id: string): Block => ({ kind: 'heading', level, text, id });

export const table = (
  id: string,
  caption: string,
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
): Block => ({
  kind: 'table',
  id,
  caption,
  columns,
  rows,
});

/** Blocks of a list, none when it is empty. */
export const listOf = (items: readonly string[]): Block[] => (items.length === 0 ? [] : [{ kind: 'list', items }]);

/** Rounding noise is shown as zero: anything below 1e-9 of the size that its neighbours have. */
export const withoutNoise = (value: number, scale: number): number =>
  Math.abs(value) < 1e-9 * Math.abs(scale) ? 0 : value;
