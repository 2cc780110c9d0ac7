import { resultsOf, rules } from '../../working/index.js';
import type { Block } from '../blocks.js';
import { kindOf, symbolText } from '../formula/index.js';
import { amount, slug, table } from '../sections/build.js';
import { listed, pointOf, stateWords } from './about.js';
import type { FoldedStep } from './fold.js';
import { withoutRounding } from './rounding.js';

/** The results of the same rule at every height of every ply, as one table for each rule and state of the load. */
export function pointTables(steps: readonly FoldedStep[], id: string, digits: number): Block[] {
  const groups = new Map<string, FoldedStep[]>();
  for (const step of steps) {
    const { state = '', further = '' } = pointOf(step) ?? {};
    const key = [step.rule, state, further].join(' ');
    groups.set(key, [...(groups.get(key) ?? []), step]);
  }
  return [...groups].map(([key, those]) => {
    const [first] = those as [FoldedStep, ...FoldedStep[]];
    const { state = '' } = pointOf(first) ?? {};
    const values = withoutRounding(those.map((step) => step.values));
    const symbols = resultsOf(first.rule);
    return table(
      `${slug(id)}-${slug(key)}`,
      `${rules[first.rule].title}, at every height${state === '' ? '' : `; ${stateWords(state)}`} (${first.rule})`,
      [
        { label: 'Ply' },
        { label: 'Height' },
        ...symbols.map((symbol) => ({ label: symbolText(symbol), kind: kindOf(symbol) })),
      ],
      those.map((step, i) => [
        listed(step.numbers),
        pointOf(step)?.face ?? '',
        ...symbols.map((symbol) => amount(values[i]?.[symbol] ?? 0, kindOf(symbol), digits)),
      ]),
    );
  });
}
