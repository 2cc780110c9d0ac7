import { sourceName } from '../../examples/index.js';
import { bibliography, citation } from '../../material/index.js';
import { accessInWords } from '../../provenance/index.js';
import { type Rule, resultsOf, rules, type StepValues } from '../../working/index.js';
import type { Block, ResultMatrix, StepBlock } from '../blocks.js';
import { kindOf } from '../formula/index.js';
import { slug } from '../sections/build.js';
import { about } from './about.js';
import type { FoldedStep } from './fold.js';
import { withoutRounding } from './rounding.js';
import { rowTables } from './row-tables.js';

/** Author, year and place of a rule's source, and how it was reached. */
function sourceText({ source, where }: Rule): string {
  const name = sourceName(source);
  const [opening = name] = citation(source).split(',');
  const access = bibliography[source]?.access;
  const place = where === undefined ? '' : `, ${where}`;
  // What has no author was not read anywhere: common practice, a derivation of our own.
  if (name === source) return opening + place;
  return `${name}${place}${access === undefined ? '' : ` (${accessInWords(access)})`}`;
}

/** One step as blocks: the step itself, and tables of the rows that its sums run over. */
export function stepBlocks(
  step: FoldedStep,
  number: number,
  digits: number,
  examples: readonly string[],
  first = true,
): Block[] {
  const rule: Rule = rules[step.rule];
  const { part } = step;
  const [values, ...rows] = withoutRounding([step.values, ...(step.rows ?? [])]) as [StepValues, ...StepValues[]];
  const shown = rows.at(-1);
  const inGrids = new Set(Object.values(rule.grids ?? {}).flat(2));
  const sums = Object.entries(rule.sums ?? {});
  const id = slug(`${number}-${part.join('-')}-${step.rule}`);
  // Of a matrix of sums the first component is written out; the tables have the terms of all.
  const leading = new Set(Object.values(rule.grids ?? {}).flatMap((grid) => grid[0]?.[0] ?? []));
  const block: StepBlock = {
    kind: 'step',
    id,
    number,
    title: rule.title,
    of: about(step),
    rule: step.rule,
    part: part.join('.'),
    ...(rule.form === undefined ? {} : { form: rule.form }),
    results: Object.fromEntries(resultsOf(step.rule).map((symbol) => [symbol, values[symbol] ?? Number.NaN])),
    equations: [
      ...(rule.results ?? []).filter((symbol) => !inGrids.has(symbol)).map((symbol) => ({ symbol, values })),
      ...sums
        .filter(([symbol]) => !inGrids.has(symbol) || leading.has(symbol))
        .map(([symbol, expression]) => ({ symbol, expression, terms: rows, values })),
      ...Object.entries(rule.formulas ?? {}).map(([symbol, expression]) => ({ symbol, expression, values })),
      ...Object.entries(rule.each ?? {}).map(([symbol, expression]) => ({
        symbol,
        expression,
        values: { ...values, ...shown },
      })),
    ],
    matrices: Object.entries(rule.grids ?? {}).map(
      ([name, grid]): ResultMatrix => ({
        name,
        kind: kindOf(grid[0]?.[0] ?? ''),
        rows: grid.map((row) => row.map((symbol) => values[symbol] ?? Number.NaN)),
      }),
    ),
    digits,
    ...remarkOf(rule, first, rows.length),
    source: rule.source,
    sourceText: sourceText(rule),
    examples,
  };
  return [block, ...rowTables({ ...step, values, rows }, rule, id, digits)];
}

/** What a reader should know, told once; and which row is written out. */
function remarkOf({ remark, each, row = 'row' }: Rule, first: boolean, rows: number): { readonly remark?: string } {
  const told = [
    ...(remark === undefined || !first ? [] : [remark]),
    ...(each === undefined ? [] : [`Written out for ${row} ${rows}, the last; the table has every ${row}.`]),
  ];
  return told.length === 0 ? {} : { remark: told.join(' ') };
}
