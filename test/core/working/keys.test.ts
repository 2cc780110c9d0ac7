import { readdirSync, readFileSync } from 'node:fs';
import { assemble, readDesign, workedSteps } from '@selvage/core';
import { describe, expect, it } from 'vitest';
import { type RecordedStep, rules } from '../../../packages/core/src/working/index.js';

const folder = new URL('../../../docs/examples/', import.meta.url);
const designs = readdirSync(folder).filter((name) => name.endsWith('.yaml'));

/** A number of a working with the step that wrote it down. */
interface Noted {
  readonly key: string;
  readonly rule: string;
  readonly value: number;
}

const notedIn = ({ part, rule, values, rows = [] }: RecordedStep): Noted[] => {
  const { formulas, sums, each, results = [] } = rules[rule];
  // The share of a row in a sum has the symbol of the sum and no name of its own; what a row computes by itself has none either.
  const shares = new Set([...Object.keys({ ...formulas, ...sums, ...each }), ...results]);
  const of = (names: readonly string[], all: Readonly<Record<string, number>>): Noted[] =>
    Object.entries(all).map(([symbol, value]) => ({ key: [...names, symbol].join('.'), rule, value }));
  const inRows = rules[rule].row === 'ply' ? rows : [];
  return [
    ...of(part, values),
    ...inRows.flatMap((row, i) =>
      of(
        [...part, 'plies', String(i + 1)],
        Object.fromEntries(Object.entries(row).filter(([symbol]) => !shares.has(symbol))),
      ),
    ),
  ];
};

/** Keys under which two steps wrote down different numbers, with both. */
function ambiguous(steps: readonly RecordedStep[]): string[] {
  const first = new Map<string, Noted>();
  const found = new Map<string, string>();
  for (const one of steps.flatMap(notedIn)) {
    const before = first.get(one.key);
    if (before === undefined) first.set(one.key, one);
    else if (Math.abs(one.value - before.value) > 1e-9 * Math.max(Math.abs(one.value), Math.abs(before.value))) {
      found.set(one.key, `${one.key}: ${before.value} of ${before.rule}, ${one.value} of ${one.rule}`);
    }
  }
  return [...found.values()];
}

describe('a key of the working', () => {
  it.each(designs)('%s: stands for one number', (name) => {
    const steps = workedSteps(assemble(readDesign(readFileSync(new URL(name, folder), 'utf8'))));
    expect(ambiguous(steps)).toEqual([]);
  });

  it('that two steps give different numbers is found', () => {
    const step = (value: number): RecordedStep => ({ part: ['a'], rule: 'reducedStiffness', values: { Q11: value } });
    expect(ambiguous([step(1), step(1), step(2)])).toEqual(['a.Q11: 1 of reducedStiffness, 2 of reducedStiffness']);
  });
});
