import { assemble, readDesign, workedSteps } from '../src/design/index.js';
import { exampleDesign, exampleIds, exampleOf, whyNoDesign } from '../src/examples/index.js';
import { kinds, parseUnit, toSI } from '../src/quantity/index.js';
import { keyOf, type RecordedStep, type RuleName, resultsOf, symbols } from '../src/working/index.js';

/** A printed value of an example and the results in the working of its design that are that number, to the tolerance of the print. */
export interface PrintedInWorking {
  readonly key: string;
  readonly found: readonly { readonly rule: RuleName; readonly quantity: string }[];
}

/** Below this many digits an agreement of two plain numbers may be chance. */
const fewestDigits = 3;

const digitsOf = (printed: string): number => printed.replace(/e.*$/, '').replace(/\D/g, '').replace(/^0+/, '').length;

const numbersOf = ({ rule, values, rows = [] }: RecordedStep): [symbol: string, value: number][] =>
  [values, ...rows].flatMap((numbers) =>
    resultsOf(rule).map((name): [string, number] => [name, numbers[name] ?? Number.NaN]),
  );

const dimensionOf = (unit: string): string => parseUnit(unit)?.dimension ?? '';

/** Where the printed values of an example stand in the working of its design; nothing for an example without one. */
export function printedInWorking(id: string): PrintedInWorking[] {
  const example = exampleOf(id);
  if (whyNoDesign(example) !== undefined) return [];
  const steps = workedSteps(assemble(readDesign(exampleDesign(id))));
  return Object.entries(example.values).map(([key, { value, unit, tolerance, printed }]) => {
    const [target, room] = [toSI(value, unit), Math.abs(toSI(tolerance, unit))];
    const dimension = dimensionOf(unit);
    const found = steps.flatMap((step) =>
      numbersOf(step).flatMap(([symbol, result]) => {
        const kind = kinds[symbols[symbol]?.kind ?? 'number'];
        const same = dimensionOf(kind.si) === dimension && Math.abs(result - target) <= room * (1 + 1e-9);
        const chance = target === 0 || (dimension === '' && digitsOf(printed) < fewestDigits);
        return same && !chance ? [{ rule: step.rule, quantity: keyOf(step.part, symbol) }] : [];
      }),
    );
    return { key, found };
  });
}

/** Published examples by the rules whose results they print. */
export function examplesByRule(): Record<string, string[]> {
  const shown = new Map<string, Set<string>>();
  for (const id of exampleIds.filter((id) => exampleOf(id).source !== 'independent-script')) {
    for (const { found } of printedInWorking(id)) {
      for (const { rule } of found) shown.set(rule, (shown.get(rule) ?? new Set()).add(id));
    }
  }
  return Object.fromEntries(
    [...shown].sort(([one], [other]) => (one < other ? -1 : 1)).map(([rule, ids]) => [rule, [...ids]]),
  );
}
