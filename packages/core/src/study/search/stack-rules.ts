/** What a stack may be, in flat numbers; a ply is the number of its choice. */
export interface StackRules {
  /** Number of different choices. */
  readonly choices: number;
  /** How often each choice is written. */
  readonly weights: readonly number[];
  /** Numbers of plies, of the half when symmetric. */
  readonly lengths: readonly number[];
  readonly symmetric: boolean;
  /** For each choice and the one above it, 1 where they may touch: choices² entries. */
  readonly touch: Uint8Array;
  /** Most plies alike next to each other; 0 for no limit. */
  readonly grouping: number;
  /** The choice of the first ply; -1 for any. */
  readonly outer: number;
  /** Pairs of opposite choices of which there must be equal numbers. */
  readonly pairs: number;
  /** Of each choice the pair it belongs to, -1 for none, and its sign in it. */
  readonly pair: Int32Array;
  readonly sign: Int32Array;
}

/** A stack under construction, from the tool side on. */
export interface StackBuilder {
  /** The plies; those up to the depth are placed. */
  readonly stack: Int32Array;
  /** How many plies are placed. */
  readonly depth: () => number;
  /** Whether a choice may come next, as far as the rules can tell before the rest is known. */
  readonly fits: (choice: number) => boolean;
  /** Puts a choice behind the placed plies. */
  readonly place: (choice: number) => void;
  /** Takes the last ply away. */
  readonly lift: () => void;
}

/**
 * Builds stacks of one length that keep to the rules.
 *
 * A ply that leaves more unpaired plies than there are places left does not fit; a full stack always keeps to all rules.
 */
export function stackBuilder(rules: StackRules, length: number): StackBuilder {
  const { choices, touch, grouping, symmetric, outer, pairs, pair, sign } = rules;
  const stack = new Int32Array(length);
  const run = new Int32Array(length);
  const surplus = new Int32Array(pairs);
  let depth = 0;
  let unpaired = 0;
  const add = (choice: number, by: number): void => {
    const p = pair[choice]!;
    if (p < 0) return;
    const before = surplus[p]!;
    const after = before + by * sign[choice]!;
    surplus[p] = after;
    unpaired += Math.abs(after) - Math.abs(before);
  };
  return {
    stack,
    depth: () => depth,
    fits(choice) {
      const left = length - depth - 1;
      let alike = 1;
      if (depth === 0) {
        if (outer >= 0 && choice !== outer) return false;
      } else {
        const last = stack[depth - 1]!;
        if (touch[last * choices + choice] === 0) return false;
        if (last === choice) alike = run[depth - 1]! + 1;
      }
      if (grouping > 0 && (left === 0 && symmetric ? 2 * alike : alike) > grouping) return false;
      const p = pair[choice]!;
      if (p < 0) return unpaired <= left;
      const before = surplus[p]!;
      return unpaired + Math.abs(before + sign[choice]!) - Math.abs(before) <= left;
    },
    place(choice) {
      run[depth] = depth > 0 && stack[depth - 1] === choice ? run[depth - 1]! + 1 : 1;
      stack[depth] = choice;
      depth++;
      add(choice, 1);
    },
    lift() {
      depth--;
      add(stack[depth]!, -1);
    },
  };
}

/**
 * The next stack that keeps to the rules, in the order of counting with the last ply fastest; the first from a builder with nothing placed.
 * @returns false after the last one
 */
export function nextStack({ choices }: StackRules, builder: StackBuilder): boolean {
  const { stack, depth, fits, place, lift } = builder;
  const length = stack.length;
  let at = depth();
  let choice = 0;
  if (at === length) {
    lift();
    at--;
    choice = stack[at]! + 1;
  }
  while (at < length) {
    while (choice < choices && !fits(choice)) choice++;
    if (choice < choices) {
      place(choice);
      at++;
      choice = 0;
    } else {
      if (at === 0) return false;
      lift();
      at--;
      choice = stack[at]! + 1;
    }
  }
  return true;
}

/** Trials after which a stack is given up. */
const mostTrials = 20_000;

/**
 * The stack that keeps to the rules and is nearest to one that may not: each ply is as wanted, or else the next choice with which the rest can be completed.
 * @param wanted choices of the plies; as many as the builder has places are read
 * @returns the stack, in the builder; false when none was found within 20 000 trials
 */
export function repairedStack({ choices }: StackRules, builder: StackBuilder, wanted: ArrayLike<number>): boolean {
  const { stack, depth, fits, place, lift } = builder;
  while (depth() > 0) lift();
  const tried = new Int32Array(stack.length + 1);
  for (let trials = 0; trials < mostTrials; trials++) {
    const at = depth();
    if (at === stack.length) return true;
    if (tried[at] === choices) {
      if (at === 0) return false;
      tried[at] = 0;
      lift();
      continue;
    }
    const choice = ((wanted[at] ?? 0) + tried[at]!) % choices;
    tried[at] = tried[at]! + 1;
    if (fits(choice)) place(choice);
  }
  return false;
}
