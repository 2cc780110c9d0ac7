import type { KindName } from '../quantity/index.js';
import { keyOf, type RecordedStep, resultsOf, rules, symbols } from '../working/index.js';

/** A number of the working, by the name that an answer has for it. */
export interface Quantity {
  /** `laminates.skin.plies.2.Qbar11` */
  readonly key: string;
  readonly part: readonly string[];
  readonly symbol: string;
  readonly kind: KindName;
  /** In words; absent for a number that only the report has. */
  readonly meaning?: string;
  /** SI, angles in degrees. */
  readonly value: number;
  /** Computed here, not only used. */
  readonly computed: boolean;
}

/** Every number of a working by its key. Where one symbol of a part is used and computed, it is what was computed. */
export function quantitiesOf(steps: readonly RecordedStep[]): ReadonlyMap<string, Quantity> {
  const found = new Map<string, Quantity>();
  const add = (part: readonly string[], symbol: string, value: number, computed: boolean): void => {
    const key = keyOf(part, symbol);
    const before = found.get(key);
    if (before !== undefined && (before.computed || !computed)) return;
    const known = symbols[symbol];
    found.set(key, {
      key,
      part,
      symbol,
      kind: known?.kind ?? 'number',
      ...(known === undefined ? {} : { meaning: known.meaning }),
      value,
      computed,
    });
  };
  for (const { part, rule, values, rows = [] } of steps) {
    const results = new Set(resultsOf(rule));
    for (const [symbol, value] of Object.entries(values)) add(part, symbol, value, results.has(symbol));
    if (rules[rule].row !== 'ply') continue;
    // What a ply brings into a sum, its height above all, belongs to the ply; its share of the result has no name.
    for (const [i, row] of rows.entries()) {
      for (const [symbol, value] of Object.entries(row)) {
        if (!results.has(symbol)) add([...part, 'plies', String(i + 1)], symbol, value, false);
      }
    }
  }
  return found;
}
