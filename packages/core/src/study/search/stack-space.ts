import type { DesignInputs } from '../../design/index.js';
import { fibreAngle } from '../../numeric/index.js';
import { fail } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import { type ChoiceLayers, choiceLayers, couples, isCore } from './choice-layers.js';
import { stackNotes } from './space-notes.js';
import { outerChoice, type StackChoice, type StackEntryOfSearch, stackChoices } from './stack-choices.js';
import { type StackCounter, stackCounter } from './stack-count.js';
import type { StackRules } from './stack-rules.js';

/** The stacks of a laminate among which a search chooses. */
export interface StackSpace {
  readonly laminate: string;
  readonly choices: readonly StackChoice[];
  readonly layers: readonly ChoiceLayers[];
  readonly rules: StackRules;
  /** Absent where the rules leave too many situations to be counted. */
  readonly counter?: StackCounter;
  /** Plies that are listed more than once or can never be used. */
  readonly notes: readonly Note[];
}

const at = ['search', 'stack'] as const;

/** A whole number. @throws out-of-range */
export function wholeAt(value: number, name: string, path: readonly (string | number)[]): number {
  if (Number.isInteger(value)) return value;
  return fail({
    code: 'out-of-range',
    message: `${name} = ${value} is not a whole number`,
    allowed: 'a whole number',
    path,
  });
}

/** Pairs of choices of opposite angle. A coupling choice without an opposite makes a pair alone, and so is never balanced. */
function pairsOf(choices: readonly StackChoice[], layers: readonly ChoiceLayers[]) {
  const pair = new Int32Array(choices.length).fill(-1);
  const sign = new Int32Array(choices.length).fill(1);
  let pairs = 0;
  for (const [i, { material, angle }] of choices.entries()) {
    const own = layers[i];
    if (pair[i] !== -1 || own === undefined || !couples(own)) continue;
    pair[i] = pairs;
    const opposite = choices.findIndex((one) => one.material === material && one.angle === fibreAngle(-angle));
    if (opposite > i) {
      pair[opposite] = pairs;
      sign[opposite] = -1;
    }
    pairs++;
  }
  return { pair, sign, pairs };
}

/** Which choices may touch: as lines, their angles are no further apart than the largest step; a core parts its neighbours. */
function touchOf(
  choices: readonly StackChoice[],
  layers: readonly ChoiceLayers[],
  largest: number | undefined,
): Uint8Array {
  const cores = layers.map(isCore);
  return Uint8Array.from({ length: choices.length ** 2 }, (_, k) => {
    const [i, j] = [Math.floor(k / choices.length), k % choices.length];
    const [a, b] = [choices[i], choices[j]];
    if (largest === undefined || a === undefined || b === undefined || cores[i] || cores[j]) return 1;
    return Math.abs(fibreAngle(a.angle - b.angle)) <= largest ? 1 : 0;
  });
}

/**
 * The stacks that a search chooses among.
 * @throws SelvageError with paths: names that are not there, numbers that are not whole, rules that no stack keeps to
 */
export function stackSpace(inputs: DesignInputs, entry: StackEntryOfSearch): StackSpace {
  const choices = stackChoices(inputs, entry);
  const layers = choiceLayers(inputs, entry, choices);
  const { plies, symmetric = false, balanced = false, grouping, angleJump } = entry;
  const lengths = (Array.isArray(plies) ? plies : [plies]).map((count, i) =>
    wholeAt(count, 'plies', Array.isArray(plies) ? [...at, 'plies', i] : [...at, 'plies']),
  );
  const none = {
    pair: new Int32Array(choices.length).fill(-1),
    sign: new Int32Array(choices.length).fill(1),
    pairs: 0,
  };
  const rules: StackRules = {
    choices: choices.length,
    weights: choices.map(({ weight }) => weight),
    lengths: [...new Set(lengths)],
    symmetric,
    touch: touchOf(choices, layers, angleJump),
    grouping: grouping === undefined ? 0 : wholeAt(grouping, 'grouping', [...at, 'grouping']),
    outer: outerChoice(entry, choices, inputs.design.laminates[entry.laminate]?.material),
    ...(balanced ? pairsOf(choices, layers) : none),
  };
  const counter = stackCounter(rules);
  if (counter?.all.stacks === 0n) {
    fail({
      code: 'contradiction',
      message: 'no stack keeps to all rules of the search',
      allowed: 'rules that leave at least one stack',
      hint: 'balanced needs the opposite of every angle and an even number of them; across the mid-plane of a symmetric stack the last ply meets itself, which is a group of two',
      path: at,
      atKey: true,
    });
  }
  const notes = stackNotes(choices, rules, lengths);
  return { laminate: entry.laminate, choices, layers, rules, notes, ...(counter === undefined ? {} : { counter }) };
}

/** The stack of some choices as an orientation code, ply by ply. */
export function stackCode({ choices, rules }: StackSpace, plies: ArrayLike<number>): string {
  const written = Array.from(plies, (choice) => choices[choice]?.code ?? '').join('/');
  return `[${written}]${rules.symmetric ? 's' : ''}`;
}
