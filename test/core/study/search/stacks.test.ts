import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stackCounter } from '../../../../packages/core/src/study/search/stack-count.js';
import {
  nextStack,
  repairedStack,
  type StackRules,
  stackBuilder,
} from '../../../../packages/core/src/study/search/stack-rules.js';

/** Rules as data that a test can check a stack against by itself. */
interface Plain {
  readonly angles: readonly number[];
  readonly length: number;
  readonly symmetric: boolean;
  readonly balanced: boolean;
  readonly grouping: number;
  readonly outer: number;
  readonly jump: number;
}

const apart = (a: number, b: number): number => {
  const rest = Math.abs(a - b) % 180;
  return Math.min(rest, 180 - rest);
};

function rulesOf({ angles, length, symmetric, balanced, grouping, outer, jump }: Plain): StackRules {
  const n = angles.length;
  const pair = new Int32Array(n).fill(-1);
  const sign = new Int32Array(n).fill(1);
  let pairs = 0;
  if (balanced) {
    angles.forEach((angle, i) => {
      if (angle === 0 || angle === 90 || pair[i] !== -1) return;
      pair[i] = pairs;
      const j = angles.indexOf(-angle);
      if (j > i) {
        pair[j] = pairs;
        sign[j] = -1;
      }
      pairs++;
    });
  }
  const touch = Uint8Array.from({ length: n * n }, (_, k) =>
    apart(angles[Math.floor(k / n)]!, angles[k % n]!) <= jump ? 1 : 0,
  );
  return {
    choices: n,
    weights: angles.map(() => 1),
    lengths: [length],
    symmetric,
    touch,
    grouping,
    outer,
    pairs,
    pair,
    sign,
  };
}

/** Whether a stack keeps to the rules, judged from its angles alone. */
function keeps(plain: Plain, stack: readonly number[]): boolean {
  const half = stack.map((choice) => plain.angles[choice]!);
  const whole = plain.symmetric ? [...half, ...half.toReversed()] : half;
  if (plain.outer >= 0 && stack[0] !== plain.outer) return false;
  if (whole.some((angle, i) => i > 0 && apart(angle, whole[i - 1]!) > plain.jump)) return false;
  let run = 0;
  for (const [i, angle] of whole.entries()) {
    run = i > 0 && whole[i - 1] === angle ? run + 1 : 1;
    if (plain.grouping > 0 && run > plain.grouping) return false;
  }
  const count = (angle: number): number => whole.filter((one) => one === angle).length;
  return (
    !plain.balanced || plain.angles.every((angle) => angle === 0 || angle === 90 || count(angle) === count(-angle))
  );
}

function all(plain: Plain): number[][] {
  let stacks: number[][] = [[]];
  for (let i = 0; i < plain.length; i++) {
    stacks = stacks.flatMap((stack) => plain.angles.map((_, choice) => [...stack, choice]));
  }
  return stacks.filter((stack) => keeps(plain, stack));
}

function walked(rules: StackRules, length: number): number[][] {
  const builder = stackBuilder(rules, length);
  const found: number[][] = [];
  while (nextStack(rules, builder)) found.push([...builder.stack]);
  return found;
}

const plain = fc.record({
  angles: fc.uniqueArray(fc.constantFrom(0, 90, 45, -45, 30, -30, 60), { minLength: 1, maxLength: 5 }),
  length: fc.integer({ min: 1, max: 6 }),
  symmetric: fc.boolean(),
  balanced: fc.boolean(),
  grouping: fc.integer({ min: 0, max: 4 }),
  outer: fc.constantFrom(-1, 0),
  jump: fc.constantFrom(90, 60, 45),
});

describe('stacks under rules', () => {
  it('are gone through in order, all that keep to the rules and no other', () => {
    fc.assert(
      fc.property(plain, (one) => {
        expect(walked(rulesOf(one), one.length)).toEqual(all(one));
      }),
      { numRuns: 300 },
    );
  });

  it('are counted without being built, and reached by their number', () => {
    fc.assert(
      fc.property(plain, fc.nat(), (one, pick) => {
        const rules = rulesOf(one);
        const stacks = all(one);
        const counter = stackCounter(rules)!;
        expect(counter.all.stacks).toBe(BigInt(stacks.length));
        if (stacks.length === 0) return;
        const builder = stackBuilder(rules, one.length);
        counter.goTo(builder, pick % stacks.length);
        expect([...builder.stack]).toEqual(stacks[pick % stacks.length]);
        expect(nextStack(rules, builder)).toBe((pick % stacks.length) + 1 < stacks.length);
      }),
      { numRuns: 300 },
    );
  });

  it('are counted as often as they are written', () => {
    const angles = [0, 45, -45];
    const rules = {
      ...rulesOf({ angles, length: 4, symmetric: false, balanced: true, grouping: 0, outer: -1, jump: 90 }),
      weights: [2, 1, 3],
    };
    const ways = walked(rules, 4).reduce(
      (sum, stack) => sum + stack.reduce((product, c) => product * rules.weights[c]!, 1),
      0,
    );
    expect(stackCounter(rules)!.all.written).toBe(BigInt(ways));
  });

  it('are repaired to one that keeps to the rules, and left alone when they do', () => {
    fc.assert(
      fc.property(plain, fc.array(fc.nat(4), { minLength: 6, maxLength: 6 }), (one, wanted) => {
        const rules = rulesOf(one);
        const builder = stackBuilder(rules, one.length);
        const genes = wanted.slice(0, one.length).map((gene) => gene % one.angles.length);
        const found = repairedStack(rules, builder, genes);
        expect(found).toBe(all(one).length > 0);
        if (!found) return;
        expect(keeps(one, [...builder.stack])).toBe(true);
        if (keeps(one, genes)) expect([...builder.stack]).toEqual(genes);
      }),
      { numRuns: 300 },
    );
  });

  it('are not counted where there are too many situations', () => {
    const angles = [0, 15, -15, 30, -30, 45, -45, 60, -60, 75, -75, 90];
    const many = { angles, length: 24, symmetric: true, balanced: true, grouping: 2, outer: -1, jump: 90 };
    expect(stackCounter(rulesOf(many))).toBeUndefined();
  });
});
