import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crowdingDistance } from '../../../../packages/core/src/study/method/crowding.js';
import { constrainedDomination } from '../../../../packages/core/src/study/method/domination.js';
import { nonDominatedSort } from '../../../../packages/core/src/study/method/non-dominated-sort.js';

/** Candidates of few different values, so that equals and domination are frequent. */
const candidates = fc
  .record({ width: fc.integer({ min: 1, max: 4 }), count: fc.integer({ min: 0, max: 40 }) })
  .chain(({ width, count }) =>
    fc.record({
      width: fc.constant(width),
      objectives: fc.array(fc.integer({ min: 0, max: 5 }), { minLength: width * count, maxLength: width * count }),
      violations: fc.array(fc.constantFrom(0, 0, 0, 1, 2.5), { minLength: count, maxLength: count }),
    }),
  );

describe('constrained domination', () => {
  const table = { width: 2, objectives: [1, 2, 2, 1, 1, 1, 1, 1, 9, 9, 0, 0], violations: [0, 0, 0, 0, 0, 0.1] };

  it('prefers the smaller violation, then what is nowhere worse and somewhere better', () => {
    expect(constrainedDomination(table, 0, 1)).toBe(0);
    expect(constrainedDomination(table, 2, 0)).toBe(-1);
    expect(constrainedDomination(table, 0, 2)).toBe(1);
    expect(constrainedDomination(table, 2, 3)).toBe(0);
    // Far worse, but meets the constraints.
    expect(constrainedDomination(table, 4, 5)).toBe(-1);
  });
});

describe('the sorting into fronts', () => {
  it('gives each candidate one front more than the deepest of those that dominate it', () => {
    fc.assert(
      fc.property(candidates, (table) => {
        const count = table.violations.length;
        const fronts = nonDominatedSort(table, count);
        expect(fronts.flat().sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, i) => i));
        const rank = new Map(fronts.flatMap((front, number) => front.map((i) => [i, number] as const)));
        for (let i = 0; i < count; i++) {
          let deepest = -1;
          for (let j = 0; j < count; j++) {
            if (constrainedDomination(table, j, i) < 0) deepest = Math.max(deepest, rank.get(j) ?? 0);
          }
          expect(rank.get(i)).toBe(deepest + 1);
        }
      }),
    );
  });
});

describe('crowding', () => {
  it('adds up the distance between the neighbours, as shares of the ranges', () => {
    // Ranges 10 and 20; the third lies between (2, 12) and (10, 0): 8/10 + 12/20. Row 0 is no member.
    const objectives = [99, 99, 0, 20, 2, 12, 5, 4, 10, 0];
    const found = crowdingDistance(objectives, 2, [1, 2, 3, 4]);
    expect(found[0]).toBe(Number.POSITIVE_INFINITY);
    expect(found[1]).toBeCloseTo(5 / 10 + 16 / 20, 14);
    expect(found[2]).toBeCloseTo(8 / 10 + 12 / 20, 14);
    expect(found[3]).toBe(Number.POSITIVE_INFINITY);
  });

  it('counts nothing where all members are alike', () => {
    expect([...crowdingDistance([1, 1, 1, 1], 2, [0, 1])]).toEqual([0, 0]);
    expect([...crowdingDistance([], 2, [])]).toEqual([]);
  });

  it('does not change with the units of the objectives', () => {
    fc.assert(
      fc.property(candidates, ({ objectives, width, violations }) => {
        const members = violations.map((_, i) => i);
        const scaled = objectives.map((value) => 1024 * value);
        expect(crowdingDistance(scaled, width, members)).toEqual(crowdingDistance(objectives, width, members));
      }),
    );
  });
});
