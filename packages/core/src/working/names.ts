import { type RuleName, rules } from './rules.js';

/** The symbols that a rule gives: its sums, its formulas, what a form leads to. */
export function resultsOf(rule: RuleName): readonly string[] {
  const { formulas = {}, sums = {}, results = [] } = rules[rule];
  return [...Object.keys(formulas), ...Object.keys(sums), ...results];
}

/** How a number of the working is called: `laminates.skin.plies.2.Qbar11`. */
export const keyOf = (part: readonly string[], symbol: string): string => [...part, symbol].join('.');

/** The laminate, load, plan, coupon or material that a part belongs to: `laminates.skin`. */
export const holderOf = ({ part }: { readonly part: readonly string[] }): string => part.slice(0, 2).join('.');
