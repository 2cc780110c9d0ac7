import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BridgingRow } from '../../../../packages/core/src/fracture/index.js';
import {
  forceAfter,
  lostAt,
  type RowLaw,
  rowLaw,
  storedAfter,
} from '../../../../packages/core/src/fracture/specimen/row-law.js';
import { codesOf, expectNear, row } from './support.js';

const rowOf = (opening: readonly number[], force: readonly number[], penetrations = 1): BridgingRow => ({
  position: 1,
  penetrations,
  curve: { opening, force },
  failure: 'threadPullOut',
});
const lawOf = (opening: readonly number[], force: readonly number[]): RowLaw =>
  rowLaw(rowOf(opening, force), 'row 1') as RowLaw;

/** Work done on the row from opening 0 to w and back to 0 by small steps. */
function cycle(law: RowLaw, w: number): { up: number; down: number } {
  const steps = 20_000;
  let [up, down] = [0, 0];
  for (let i = 0; i < steps; i++) {
    const middle = ((i + 0.5) * w) / steps;
    up += (forceAfter(law, middle, Math.max(law.firm, middle)) * w) / steps;
    down += (forceAfter(law, middle, Math.max(law.firm, w)) * w) / steps;
  }
  return { up, down };
}

describe('a row that never recovers', () => {
  it('carries the force of all its penetrations along the curve', () => {
    const law = rowLaw(row(0.01, 5), 'row 1') as RowLaw;
    expectNear(forceAfter(law, 0.2e-3, 0.1e-3), 500, 1e-12);
    expectNear(forceAfter(law, 0.3e-3, 0.1e-3), 600, 1e-12);
    expectNear(forceAfter(law, 0.55e-3, 0.1e-3), 150, 1e-12);
    expect(forceAfter(law, 0.9e-3, 0.1e-3)).toBe(0);
    expect(forceAfter(law, -1e-3, 0.1e-3)).toBe(0);
  });

  it('unloads straight back and comes up the same line', () => {
    const law = lawOf([0, 1, 3, 8], [0, 8, 12, 0]);
    for (const w of [0.1, 0.7, 1.9]) expectNear(forceAfter(law, w, 2), (w * 10) / 2, 1e-12);
    expectNear(forceAfter(law, 2.5, 2), 11, 1e-12);
  });

  it('drops from one force to another at one opening', () => {
    const law = lawOf([0, 2, 2, 5], [0, 10, 4, 0]);
    expect(forceAfter(law, 2, 2)).toBe(10);
    expectNear(forceAfter(law, 2.0001, 2), 4, 1e-4);
    expectNear(lostAt(law, 2.000001) - lostAt(law, 2), 10 - 4, 1e-5);
  });

  it('is elastic along a toe, and after damage along a share of it', () => {
    const law = lawOf([0, 1, 2, 4], [0, 1, 6, 6]);
    expect([law.firm, law.stiffness, law.straight]).toEqual([2, 3, false]);
    expect(lostAt(law, 2)).toBe(0);
    expectNear(forceAfter(law, 0.5, 2), 0.5, 1e-12);
    // At 4 half of the stiffness is left.
    expectNear(forceAfter(law, 0.5, 4), 0.25, 1e-12);
    expectNear(forceAfter(law, 3, 4), 4.5, 1e-12);
  });

  it('loses in a cycle what it says, never less the further it went, at the end all its work', () => {
    const falling = fc.array(
      fc.tuple(fc.double({ min: 0.05, max: 1, noNaN: true }), fc.double({ min: 0.1, max: 1, noNaN: true })),
      {
        minLength: 1,
        maxLength: 6,
      },
    );
    fc.assert(
      fc.property(
        falling,
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.double({ min: 0.1, max: 1.2, noNaN: true }),
        (steps, slack, share) => {
          // Force over opening falls from point to point by the second number.
          const opening = [0, ...(slack > 0.05 ? [slack] : [])];
          const force = opening.map(() => 0);
          let secant = 10;
          for (const [gap, fall] of steps) {
            const w = (opening.at(-1) ?? 0) + gap;
            opening.push(w);
            force.push(secant * w);
            secant *= fall;
          }
          const law = lawOf(opening, force);
          const w = share * law.end;
          const { up, down } = cycle(law, w);
          const scale = law.area.at(-1) ?? 1;
          expect(Math.abs(up - down - lostAt(law, Math.max(law.firm, w)))).toBeLessThan(2e-4 * scale);
          expect(Math.abs(storedAfter(law, w, Math.max(law.firm, w)) - down)).toBeLessThan(2e-4 * scale);
          expect(lostAt(law, w * 1.01)).toBeGreaterThanOrEqual(lostAt(law, w) - 1e-12 * scale);
          expectNear(lostAt(law, 2 * law.end), scale, 1e-12);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('may have its force at once, and is left out without any', () => {
    const law = lawOf([0, 1], [5, 0]);
    expect(forceAfter(law, 1e-4, 1e-4)).toBe(5);
    expect(rowLaw(rowOf([0, 1], [0, 0]), 'row 1')).toBeUndefined();
  });

  it.each([
    ['one point', [0], [0]],
    ['lists of different length', [0, 1], [0]],
    ['a start past 0', [1, 2], [0, 1]],
    ['no opening at all', [0, 0], [0, 1]],
    ['an opening that falls', [0, 2, 1], [0, 1, 0]],
    ['a negative force', [0, 1, 2], [0, 1, -1]],
    ['no number', [0, 1, Number.NaN], [0, 1, 1]],
    ['an endless force', [0, 1], [0, Number.POSITIVE_INFINITY]],
  ])('with %s is refused', (_, opening, force) => {
    expect(codesOf(() => lawOf(opening, force))).toEqual(['out-of-range']);
  });

  it('that drops where it has become stiffer again, but not down to what it was, is refused, in millimetres', () => {
    const opening = [0, 1e-4, 2e-4, 3e-4, 3e-4, 5e-4];
    const wrong = () => lawOf(opening, [0, 10, 2, 9, 7, 0]);
    expect(codesOf(wrong)).toEqual(['not-admissible']);
    expect(wrong).toThrow('curve of row 1 drops at an opening of 0.3 mm');
    // To 6 N, where F/w is 20 N/mm against 10 at its least: refused; to 2.9 N it ends the stretch.
    expect(lawOf(opening, [0, 10, 2, 9, 2.9, 0]).firmer).toEqual([{ from: 2e-4, to: 3e-4 }]);
  });

  it('that stiffens again follows its curve both ways there, and unloads further as from where it was softest', () => {
    // F/w: 10, 2, 5, then down past 2 where 20 (4 + t) - ... the line from (4, 20) to (8, 0) meets 2 w at 40/7.
    const law = lawOf([0, 1, 2, 4, 8], [0, 10, 4, 20, 0]);
    expect(law.firmer).toEqual([{ from: 2, to: 40 / 7 }]);
    for (const [w, F] of [
      [3, 12],
      [2, 4],
      [1, 2],
    ] as const)
      expectNear(forceAfter(law, w, 3.5), F, 1e-12);
    expectNear(lostAt(law, 2), lostAt(law, 4), 1e-12);
    expectNear(forceAfter(law, 3, 6), (3 * 10) / 6, 1e-12);
  });

  it('gives out no energy in any cycle, however it stiffens', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(number(0.05, 1), number(0, 20)), { minLength: 2, maxLength: 8 }),
        number(0.05, 1.1),
        (steps, share) => {
          const opening = [0];
          const force = [0];
          for (const [gap, F] of steps) {
            opening.push((opening.at(-1) ?? 0) + gap);
            force.push(F);
          }
          fc.pre(Math.max(...force) > 0.1);
          const law = lawOf(opening, force);
          const w = share * law.end;
          const m = Math.max(law.firm, w);
          const { up, down } = cycle(law, w);
          const scale = law.end * Math.max(...law.force);
          expect(Math.abs(up - down - lostAt(law, m))).toBeLessThan(5e-4 * scale);
          expect(Math.abs(storedAfter(law, w, m) - down)).toBeLessThan(5e-4 * scale);
          expect(lostAt(law, m * 1.01)).toBeGreaterThanOrEqual(lostAt(law, m) - 1e-9 * scale);
          expect(lostAt(law, m)).toBeGreaterThanOrEqual(-1e-9 * scale);
        },
      ),
      { numRuns: 200 },
    );
  });
});
