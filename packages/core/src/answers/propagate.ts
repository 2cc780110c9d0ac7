import { keyOf, type RecordedStep, type RuleName, resultsOf, rules, type StepValues } from '../working/index.js';
import { evaluate } from './evaluate.js';
import { invertedStiffness } from './inverse.js';
import { reachOf } from './reach.js';

/** A working in which something is taken otherwise: formulas, inputs, the rows of a sum. */
export interface Change {
  /** Expressions in place of those of a rule, of a row's term for a sum; all others stay. */
  readonly formulas?: Partial<Record<RuleName, Readonly<Record<string, string>>>>;
  /** Inputs wherever they are used, by an expression of themselves and of what is known there. */
  readonly inputs?: Readonly<Record<string, string>>;
  /** Which rows of a sum over plies count; all when not given. */
  readonly counts?: (row: number, rows: number) => boolean;
}

/** What goes into a step or row under a change, and whether any of it is another number. */
interface Inputs {
  readonly values: StepValues;
  readonly other: boolean;
}

type NumberOf = (symbol: string) => number;

/**
 * The numbers of a working that come out otherwise under a change, by their keys. Each recorded step is gone through again in its order, with
 * what came out otherwise before it in place of what was recorded; steps that nothing reaches keep their numbers.
 *
 * @param laminateOf the name of the laminate of a load: its stiffness is used there
 */
export function propagate(
  steps: readonly RecordedStep[],
  change: Change,
  laminateOf: (load: string) => string | undefined,
): ReadonlyMap<string, number> {
  const recorded = new Map<string, number>();
  const changed = new Map<string, number>();
  const computed = new Set<string>();
  const placesOf = reachOf(laminateOf);

  /** The number that came out otherwise where the symbol was computed last; none when it is as it was there. */
  const otherwise = (part: readonly string[], symbol: string): number | undefined => {
    if (changed.size === 0) return undefined;
    const place = placesOf(part).find((one) => changed.has(`${one}.${symbol}`) || computed.has(`${one}.${symbol}`));
    return changed.get(`${place}.${symbol}`);
  };
  const known = (part: readonly string[], symbol: string): number => {
    const place = placesOf(part).find((one) => recorded.has(`${one}.${symbol}`));
    return otherwise(part, symbol) ?? recorded.get(`${place}.${symbol}`) ?? Number.NaN;
  };
  const numberOf =
    (part: readonly string[], values: StepValues): NumberOf =>
    (symbol) =>
      values[symbol] ?? known(part, symbol);

  const inputsOf = (part: readonly string[], all: StepValues, results: ReadonlySet<string>): Inputs => {
    const values: Record<string, number> = {};
    let other = false;
    for (const [symbol, value] of Object.entries(all)) {
      if (results.has(symbol)) continue;
      const expression = change.inputs?.[symbol];
      if (expression === undefined) values[symbol] = otherwise(part, symbol) ?? value;
      else {
        values[symbol] = evaluate(expression, (name) => (name === symbol ? value : known(part, name)));
        changed.set(keyOf(part, symbol), values[symbol]);
      }
      other = other || values[symbol] !== value;
    }
    return { values, other };
  };

  /** Sums of a step whose terms, rows or number of rows are another; nothing where all is as it was. */
  const sumsOf = ({ part, rule, rows = [] }: RecordedStep, own: Inputs, results: ReadonlySet<string>): StepValues => {
    const ofPlies = rules[rule].row === 'ply';
    const replaced = change.formulas?.[rule];
    const all = rows.map((row, i) => inputsOf(ofPlies ? [...part, 'plies', String(i + 1)] : part, row, results));
    const fewer = ofPlies && change.counts !== undefined;
    if (replaced === undefined && !fewer && !own.other && all.every((row) => !row.other)) return {};
    const counted = all.filter((_, i) => !fewer || change.counts?.(i, rows.length) === true);
    const sum = (term: string): number =>
      counted.reduce((total, row) => total + evaluate(term, numberOf(part, { ...own.values, ...row.values })), 0);
    return Object.fromEntries(
      Object.entries({ ...rules[rule].sums, ...replaced }).map(([symbol, term]) => [symbol, sum(term)]),
    );
  };

  /** Results of a step by its formulas, each by those before it. */
  const formulasOf = ({ part, rule }: RecordedStep, values: StepValues): StepValues => {
    const all: Record<string, number> = { ...values };
    const { formulas, sums = {} } = rules[rule];
    for (const [symbol, expression] of Object.entries({ ...formulas, ...change.formulas?.[rule] })) {
      if (symbol in sums) continue;
      all[symbol] = evaluate(expression, numberOf(part, all));
    }
    return all;
  };

  const again = (step: RecordedStep, results: ReadonlySet<string>): StepValues => {
    const { part, rule, values } = step;
    const own = inputsOf(part, values, results);
    const sums = rules[rule].sums === undefined ? {} : sumsOf(step, own, results);
    const summed = Object.keys(sums).length > 0;
    const replaced = change.formulas?.[rule] !== undefined;
    // Forces of a prescribed deformation would need its open components solved anew: they stay out.
    if ((!own.other && !replaced && !summed) || rule === 'forces') return {};
    if (rule === 'inverse' && !replaced) return invertedStiffness(numberOf(part, own.values));
    return formulasOf(step, { ...own.values, ...sums });
  };

  for (const step of steps) {
    const results = new Set(resultsOf(step.rule));
    for (const [symbol, value] of Object.entries(step.values)) {
      const key = keyOf(step.part, symbol);
      if (results.has(symbol) || !recorded.has(key)) recorded.set(key, value);
      if (results.has(symbol)) computed.add(key);
    }
    const now = again(step, results);
    for (const symbol of results) {
      const value = now[symbol];
      if (value !== undefined && Number.isFinite(value) && value !== step.values[symbol]) {
        changed.set(keyOf(step.part, symbol), value);
      }
    }
  }
  return changed;
}
