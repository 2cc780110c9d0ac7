import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutter, type Stretch } from '../../packages/cli/src/search-pieces.js';

/** Stretches in rising order that do not touch, from gaps and lengths. */
const stretches = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 1, max: 1e6 })), { maxLength: 6 })
  .map((list) => {
    let at = 0;
    return list.map(([gap, length]): Stretch => {
      const from = at + gap;
      at = from + length;
      return { from, to: at };
    });
  });
const path = fc.constantFrom('kernel', 'design');

describe('pieces of a search', () => {
  it('are all of it, each candidate once and in order, whoever takes the next', () => {
    fc.assert(
      fc.property(stretches, path, fc.integer({ min: 1, max: 64 }), fc.array(fc.boolean()), (list, way, crew, own) => {
        // Whole designs are few; so many pieces of two would take long.
        const scaled = way === 'design' ? list.map(({ from, to }) => ({ from, to: Math.min(to, from + 500) })) : list;
        const cut = cutter(scaled, way, crew);
        const joined: Stretch[] = [];
        for (let i = 0; ; i++) {
          const piece = own[i % Math.max(1, own.length)] === true ? cut.own() : cut.other();
          if (piece === undefined) break;
          const last = joined.at(-1);
          expect(piece.to).toBeGreaterThan(piece.from);
          if (last?.to === piece.from) joined[joined.length - 1] = { from: last.from, to: piece.to };
          else joined.push(piece);
        }
        expect(joined).toEqual(scaled);
      }),
    );
  });

  it('of other threads are larger than those of this one, and shrink until all end together', () => {
    const cut = cutter([{ from: 0, to: 1_000_000 }], 'kernel', 2);
    const size = ({ from, to }: Stretch) => to - from;
    const own = size(cut.own()!);
    const others: number[] = [];
    for (let piece = cut.other(); piece !== undefined; piece = cut.other()) others.push(size(piece));
    expect(others[0]).toBeGreaterThan(10 * own);
    expect(others).toEqual([...others].sort((a, b) => b - a));
    expect(others.at(-1)).toBeLessThanOrEqual(own);
  });

  it('of this thread alone are larger than where others wait for it', () => {
    const piece = (crew: number) => cutter([{ from: 0, to: 1_000_000 }], 'kernel', crew).own()!.to;
    expect(piece(1)).toBeGreaterThan(piece(2));
  });
});
