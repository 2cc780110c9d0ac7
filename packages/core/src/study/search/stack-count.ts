import type { StackBuilder, StackRules } from './stack-rules.js';

/** How many stacks keep to the rules, and how many ways there are to write them where a choice is written more than once. */
export interface StackCount {
  readonly stacks: bigint;
  readonly written: bigint;
}

/** Counts stacks without building them. */
export interface StackCounter {
  /** Of all lengths together. */
  readonly all: StackCount;
  /** Of each length. */
  readonly each: readonly StackCount[];
  /** Moves a builder of a length to the stack with a number, counted from 0 in the order of `nextStack`. */
  readonly goTo: (builder: StackBuilder, index: number) => void;
}

/** Different situations beyond which nothing is counted. */
const mostStates = 100_000;

/**
 * Counts the stacks of every length by the situations that a stack under construction can be in: places left, last ply, how many of it, and surplus of each pair.
 * @returns undefined where there are more than 100 000 situations
 */
export function stackCounter(rules: StackRules): StackCounter | undefined {
  const { choices, touch, grouping, symmetric, outer, pairs, pair, sign, weights, lengths } = rules;
  const most = Math.max(...lengths);
  const runs = grouping > 0 ? Math.min(grouping, most) : 1;
  const spread = 2 * most + 1;
  if (spread ** pairs * (most + 1) * (choices + 1) * (runs + 1) > Number.MAX_SAFE_INTEGER) return undefined;
  const known = new Map<number, StackCount>();
  const surplus = new Int32Array(pairs);
  let unpaired = 0;

  /** What can follow; undefined when there are too many situations. */
  const after = (left: number, last: number, run: number): StackCount | undefined => {
    if (left === 0) {
      const closed = unpaired === 0 && !(symmetric && grouping > 0 && 2 * run > grouping);
      return closed ? { stacks: 1n, written: 1n } : { stacks: 0n, written: 0n };
    }
    let key = (left * (choices + 1) + last + 1) * (runs + 1) + run;
    for (let p = 0; p < pairs; p++) key = key * spread + surplus[p]! + most;
    const before = known.get(key);
    if (before !== undefined) return before;
    let [stacks, written] = [0n, 0n];
    for (let next = 0; next < choices; next++) {
      const found = step(left, last, run, next);
      if (found === undefined) return undefined;
      stacks += found.stacks;
      written += weights[next] === 1 ? found.written : found.written * BigInt(weights[next]!);
    }
    if (known.size >= mostStates) return undefined;
    const count = { stacks, written };
    known.set(key, count);
    return count;
  };
  const none: StackCount = { stacks: 0n, written: 0n };
  /** What can follow once a choice is placed. */
  const step = (left: number, last: number, run: number, next: number): StackCount | undefined => {
    if (last >= 0 ? touch[last * choices + next] === 0 : outer >= 0 && next !== outer) return none;
    const alike = last === next ? run + 1 : 1;
    if (grouping > 0 && alike > grouping) return none;
    // Without a limit on groups their length makes no difference.
    const kept = grouping > 0 ? alike : 1;
    const p = pair[next]!;
    if (p < 0) return unpaired > left - 1 ? none : after(left - 1, next, kept);
    const old = surplus[p]!;
    const change = Math.abs(old + sign[next]!) - Math.abs(old);
    if (unpaired + change > left - 1) return none;
    surplus[p] = old + sign[next]!;
    unpaired += change;
    const found = after(left - 1, next, kept);
    surplus[p] = old;
    unpaired -= change;
    return found;
  };

  const each: StackCount[] = [];
  for (const length of lengths) {
    const found = after(length, -1, 0);
    if (found === undefined) return undefined;
    each.push(found);
  }
  const sum = (of: (count: StackCount) => bigint): bigint => each.reduce((total, count) => total + of(count), 0n);
  return {
    each,
    all: { stacks: sum(({ stacks }) => stacks), written: sum(({ written }) => written) },
    goTo(builder, index) {
      while (builder.depth() > 0) builder.lift();
      surplus.fill(0);
      unpaired = 0;
      let [rest, last, run] = [BigInt(index), -1, 0];
      for (let left = builder.stack.length; left > 0; left--) {
        for (let next = 0; next < choices; next++) {
          const { stacks } = step(left, last, run, next) ?? none;
          if (rest >= stacks) {
            rest -= stacks;
            continue;
          }
          builder.place(next);
          run = grouping > 0 && last === next ? run + 1 : 1;
          last = next;
          const p = pair[next]!;
          if (p >= 0) {
            unpaired += Math.abs(surplus[p]! + sign[next]!) - Math.abs(surplus[p]!);
            surplus[p] = surplus[p]! + sign[next]!;
          }
          break;
        }
      }
    },
  };
}
