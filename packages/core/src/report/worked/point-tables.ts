import { rules } from '../../working/index.js';
import type { Block } from '../blocks.js';
import { kindOf, symbolText } from '../formula/index.js';
import { amount, slug, table } from '../sections/build.js';
import type { FoldedStep } from './fold.js';
import { withoutRounding } from './rounding.js';
import { plyOf, resultsOf } from './select.js';

/** The results of the same rule at every height of every ply, as one table for each rule. */
export function pointTables(steps: readonly FoldedStep[], id: string, digits: number): Block[] {
  return [...new Set(steps.map(({ rule }) => rule))].map((rule) => {
    const those = steps.filter((step) => step.rule === rule);
    const values = withoutRounding(those.map((step) => step.values));
    const symbols = resultsOf({ rule });
    return table(
      `${slug(id)}-${slug(rule)}`,
      `${rules[rule].title}, at every height (${rule})`,
      [
        { label: 'Ply' },
        { label: 'Height' },
        ...symbols.map((symbol) => ({ label: symbolText(symbol), kind: kindOf(symbol) })),
      ],
      those.map((step, i) => [
        String(plyOf(step) ?? ''),
        step.part.at(-1) ?? '',
        ...symbols.map((symbol) => amount(values[i]?.[symbol] ?? 0, kindOf(symbol), digits)),
      ]),
    );
  });
}
