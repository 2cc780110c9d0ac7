import type { InputValue } from '../../design/index.js';
import type { Note } from '../../provenance/index.js';
import type { StackChoice } from './stack-choices.js';
import type { StackRules } from './stack-rules.js';

const assumption = (text: string): Note => ({ level: 'assumption', text });

const isSame = <Value>(a: Value, b: Value): boolean => a === b;

/**
 * Says that values of a list are there more than once and count once.
 * @param name of the list
 * @param same whether two values are one; equality by default
 */
export function repeatNotes<Value extends InputValue>(
  name: string,
  values: readonly Value[],
  same: (a: Value, b: Value) => boolean = isSame,
): Note[] {
  return values.flatMap((value, i) => {
    const alike = values.filter((other) => same(other, value));
    const isFirst = values.findIndex((other) => same(other, value)) === i;
    if (!isFirst || alike.length === 1) return [];
    const others = [...new Set(alike.map(String))];
    const what = others.length === 1 ? `${others[0]} ${alike.length} times` : `${others.join(' and ')}, which are one`;
    return [assumption(`\`${name}\` lists ${what}: it counts once.`)];
  });
}

/** Says which plies of a stack are listed more than once, and which no stack can hold when it is balanced. */
export function stackNotes(
  choices: readonly StackChoice[],
  { lengths, pair, sign }: StackRules,
  written: readonly number[],
): Note[] {
  const named = ({ material, angle }: StackChoice): string => `${material} at ${angle}°`;
  const repeated = choices.filter(({ weight }) => weight > 1);
  const alone = choices.filter((_, i) => {
    const own = pair[i] ?? -1;
    return own >= 0 && sign[i] === 1 && !pair.some((other, j) => other === own && j !== i);
  });
  return [
    ...(written.length === lengths.length ? [] : repeatNotes('plies', written)),
    ...repeated.map((one) =>
      assumption(`${named(one)} is listed ${one.weight} times, half turns counted as the same: it counts once.`),
    ),
    ...alone.map((one): Note => {
      const opposite = `no choice is ${one.material} at ${-one.angle}°`;
      return { level: 'warning', text: `No stack holds ${named(one)}: it is to be balanced, and ${opposite}.` };
    }),
  ];
}
