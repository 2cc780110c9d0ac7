import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossings, crossingWords } from '../../../../packages/core/src/report/figures/crossings.js';

const through = (...points: readonly (readonly [number, number])[]) => points.map(([x, y]) => ({ x, y }));

describe('crossings', () => {
  it('finds where two straight lines meet, whatever points they are given by', () => {
    // y = x and y = 6 - 2x meet at x = 2.
    const rising = through([0, 0], [1, 1], [3, 3], [5, 5]);
    const falling = through([-1, 8], [4, -2]);
    const found = crossings(rising, falling) ?? [];
    expect(found).toHaveLength(1);
    expect(found[0]!.x).toBeCloseTo(2, 12);
    expect(found[0]!.y).toBeCloseTo(2, 12);
  });

  it('finds every crossing of two polynomials with known roots to the width of a step', () => {
    const cubic = (x: number): number => 5 + (x - 1) * (x - 2.5) * (x - 4);
    const places = Array.from({ length: 501 }, (_, i) => i / 100);
    const found = crossings(
      places.map((x) => ({ x, y: cubic(x) })),
      through([0, 5], [5, 5]),
    );
    expect(found).toHaveLength(3);
    [1, 2.5, 4].forEach((root, i) => {
      expect(Math.abs(found![i]!.x - root)).toBeLessThan(0.05);
    });
  });

  it('does not take touching for crossing, nor what is not shared', () => {
    expect(crossings(through([0, 2], [1, 1], [2, 2]), through([0, 1], [2, 1]))).toEqual([]);
    expect(crossings(through([0, 0], [1, 1]), through([2, 1], [3, 0]))).toEqual([]);
  });

  it('says nothing of a line that turns back, and knows lines that lie on each other', () => {
    expect(crossings(through([0, 0], [2, 2], [1, 3]), through([0, 1], [2, 1]))).toEqual([]);
    expect(crossings(through([0, 0], [2, 2]), through([0, 0], [1, 1], [2, 2]))).toBeUndefined();
  });

  it('is the same whichever line comes first, and lies between the ends of both', () => {
    const line = fc
      .array(fc.record({ step: fc.integer({ min: 1, max: 9 }), y: fc.integer({ min: -50, max: 50 }) }), {
        minLength: 2,
        maxLength: 9,
      })
      .map((steps) => {
        let x = 0;
        return steps.map(({ step, y }) => {
          x += step;
          return { x, y };
        });
      });
    fc.assert(
      fc.property(line, line, (one, other) => {
        const found = crossings(one, other);
        const turned = crossings(other, one);
        expect(found?.length).toBe(turned?.length);
        found?.forEach(({ x, y }, i) => {
          expect(x).toBeCloseTo(turned![i]!.x, 9);
          expect(x).toBeGreaterThanOrEqual(Math.max(one[0]!.x, other[0]!.x));
          expect(x).toBeLessThanOrEqual(Math.min(one.at(-1)!.x, other.at(-1)!.x));
          expect(Math.abs(y)).toBeLessThanOrEqual(50);
        });
      }),
    );
  });

  it('are told in words: few one by one, many by the first and the last', () => {
    const place = ({ x }: { x: number }): string => `x ${x}`;
    const zigzag = through([0, 1], [2, -1], [4, 1], [6, -1], [8, 1]);
    const zero = { label: 'zero', points: through([0, 0], [8, 0]) };
    expect(crossingWords([{ label: 'saw', points: zigzag }, zero], place)).toEqual([
      'saw and zero cross 4 times, first at x 1, last at x 7.',
    ]);
    expect(crossingWords([{ label: 'saw', points: zigzag.slice(0, 3) }, zero], place)).toEqual([
      'saw and zero cross at x 1, and at x 3.',
    ]);
    expect(crossingWords([zero, { ...zero, label: 'nought' }], place)).toEqual(['zero and nought lie on each other.']);
    expect(crossingWords([zero], place)).toEqual([]);
  });
});
