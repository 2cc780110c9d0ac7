import type { Rule, StepValues } from '../../working/index.js';
import type { Block, Cell } from '../blocks.js';
import { kindOf, symbolText } from '../formula/index.js';
import { amount, slug, table } from '../sections/build.js';
import type { FoldedStep } from './fold.js';

/** Tables of the rows of a step: what goes into the terms, then the terms of each matrix or of all other sums. */
export function rowTables({ rows = [], values }: FoldedStep, rule: Rule, id: string, digits: number): Block[] {
  if (rows.length === 0) return [];
  const row = rule.row ?? 'row';
  const sums = Object.keys(rule.sums ?? {});
  const each = Object.keys(rule.each ?? {});
  const names = [...new Set(rows.flatMap((one) => Object.keys(one)))];
  const inputs = names.filter((symbol) => !sums.includes(symbol) && (sums.length > 0 || !each.includes(symbol)));
  const grids = Object.entries(rule.grids ?? {}).map(
    ([name, grid]) => [name, [...new Set(grid.flat())].filter((symbol) => sums.includes(symbol))] as const,
  );
  const gridded = new Set(grids.flatMap(([, symbols]) => symbols));
  // A sum of what stands in the first table needs no table of its own.
  const others = sums.filter((symbol) => !gridded.has(symbol) && !inputs.includes(rule.sums?.[symbol] ?? ''));
  const cell = (symbol: string, of: StepValues): Cell => {
    const value = of[symbol];
    return value === undefined ? '' : amount(value, kindOf(symbol), digits);
  };
  const columns = (symbols: readonly string[]) => [
    { label: capital(row) },
    ...symbols.map((symbol) => ({ label: symbolText(symbol), kind: kindOf(symbol) })),
  ];
  /** The sum of a column: of a term, or of an input that is summed as it stands. */
  const totalOf = (symbol: string, totals: readonly string[]): Cell => {
    const sum = totals.find((one) => one === symbol || rule.sums?.[one] === symbol);
    return sum === undefined ? '' : cell(sum, values);
  };
  const plain = (name: string, caption: string, symbols: readonly string[], totals: readonly string[]): Block[] => {
    if (symbols.length === 0) return [];
    const total = symbols.map((symbol): Cell => totalOf(symbol, totals));
    const body = rows.map((one, i) => [String(i + 1), ...symbols.map((symbol) => cell(symbol, one))]);
    return [
      table(`${id}-${name}`, caption, columns(symbols), totals.length === 0 ? body : [...body, ['sum', ...total]]),
    ];
  };
  if (sums.length === 0) return plain('rows', `${capital(row)} by ${row}`, [...inputs, ...each], []);
  if (grids.length === 0 && inputs.length + others.length <= mostColumns) {
    return plain('rows', `Terms of the sums, ${row} by ${row}`, [...inputs, ...others], sums);
  }
  return [
    ...plain('rows', `What goes into the terms, ${row} by ${row}`, inputs, []),
    ...grids.flatMap(([name, symbols]) =>
      plain(`terms-${slug(name)}-of`, `Terms of ${name}, ${row} by ${row}`, symbols, sums),
    ),
    ...plain('terms', `Terms of the sums, ${row} by ${row}`, others, sums),
  ];
}

/** What goes in and the terms stand in one table as long as it has no more columns than this. */
const mostColumns = 8;

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);
