import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rowsAcross } from '../../../../packages/core/src/fracture/index.js';
import {
  type FieldPattern,
  type Pattern,
  penetrationDensity,
  penetrations,
} from '../../../../packages/core/src/stitch/index.js';
import { codesOf, expectNear, mm } from './support.js';

const curve = { opening: [0, 1e-3], force: [0, 10] };
const met = (pattern: Pattern, growth: 'across' | 'along', from = 0, to = 20 * mm, origin = 0) =>
  rowsAcross({ pattern, growth, width: 24 * mm, from, to, origin, curve, failure: 'threadPullOut' }).map(
    ({ position, penetrations: count }) => [Number((position / mm).toFixed(6)), Number(count.toFixed(6))],
  );

const parallel = { kind: 'parallel', pitch: 4 * mm, rowSpacing: 6 * mm } as const;

describe('the rows that a crack meets in a pattern', () => {
  it('of parallel rows are the rows across, and lines of one hole per row along', () => {
    expect(met(parallel, 'across')).toEqual([0, 6, 12, 18].map((x) => [x, 6]));
    expect(met(parallel, 'along')).toEqual([0, 4, 8, 12, 16].map((x) => [x, 4]));
  });

  it('of staggered rows are half of the holes at each of two places along', () => {
    const staggered = { ...parallel, kind: 'staggered' } as const;
    expect(met(staggered, 'across')).toEqual(met(parallel, 'across'));
    expect(met(staggered, 'along', 0, 8 * mm)).toEqual([0, 2, 4, 6].map((x) => [x, 2]));
    expect(met({ ...staggered, shift: 0.25 }, 'along', 0, 8 * mm)).toEqual([0, 1, 4, 5].map((x) => [x, 2]));
  });

  it('of zigzag rows are two sub-rows a swing apart', () => {
    const zigzag = { ...parallel, kind: 'zigzag', swing: 2 * mm } as const;
    expect(met(zigzag, 'across', 0, 12 * mm)).toEqual([1, 5, 7, 11].map((x) => [x, 3]));
    expect(met(zigzag, 'along')).toEqual(met(parallel, 'along'));
  });

  it('of crossing rows are those of both sets, together where they fall on one line', () => {
    const crossing = { ...parallel, kind: 'crossing', second: { pitch: 3 * mm, rowSpacing: 8 * mm } } as const;
    expect(met(crossing, 'across', 0, 7 * mm)).toEqual([
      [0, 9],
      [3, 3],
      [6, 9],
    ]);
    expect(met(crossing, 'along', 0, 9 * mm)).toEqual([
      [0, 12],
      [4, 4],
      [8, 12],
    ]);
  });

  it('of rows along an edge lie at their offsets', () => {
    const rows = [
      { offset: 6 * mm, length: 120 * mm, pitch: 4 * mm },
      { offset: 11 * mm, length: 120 * mm, pitch: 4 * mm, stagger: 2 * mm },
    ];
    expect(met({ kind: 'rows', rows }, 'across')).toEqual([
      [6, 6],
      [11, 6],
    ]);
    expect(met({ kind: 'rows', rows }, 'along', 0, 7 * mm)).toEqual([0, 2, 4, 6].map((x) => [x, 1]));
  });

  it('start from the pattern’s origin', () => {
    expect(met(parallel, 'across', 50 * mm, 60 * mm, 52 * mm)).toEqual([
      [52, 6],
      [58, 6],
    ]);
    expect(met(parallel, 'across', 50 * mm, 60 * mm, 70 * mm)).toEqual([
      [52, 6],
      [58, 6],
    ]);
  });

  it('include a row at the start of the stretch, not at its end', () => {
    expect(met(parallel, 'across', 6 * mm, 12 * mm)).toEqual([[6, 6]]);
  });

  it('hold as many penetrations as the pattern has on the area', () => {
    const patterns: readonly Pattern[] = [
      parallel,
      { ...parallel, kind: 'staggered' },
      { ...parallel, kind: 'zigzag', swing: 2 * mm },
      { ...parallel, kind: 'crossing', second: { pitch: 3 * mm, rowSpacing: 7 * mm } },
      { ...parallel, kind: 'crossing', second: { pitch: 3 * mm, rowSpacing: 7 * mm }, angle: 60 },
    ];
    for (const pattern of patterns) {
      for (const growth of ['across', 'along'] as const) {
        const all = rowsAcross({ pattern, growth, width: 0.5, from: 0, to: 0.5, curve, failure: 'threadPullOut' });
        const count = all.reduce((sum, row) => sum + row.penetrations, 0);
        expectNear(count, penetrationDensity(pattern) * 0.25, 0.03);
      }
    }
  });

  it('lie where the holes of the pattern lie', () => {
    const length = fc.double({ min: 2, max: 9, noNaN: true }).map((value) => value * mm);
    const pattern = fc.oneof(
      fc.record({ kind: fc.constant('parallel' as const), pitch: length, rowSpacing: length }),
      fc.record({
        kind: fc.constant('staggered' as const),
        pitch: length,
        rowSpacing: length,
        shift: fc.double({ min: 0, max: 0.9, noNaN: true }),
      }),
      fc.record({ kind: fc.constant('zigzag' as const), pitch: length, rowSpacing: length, swing: length }),
      fc.record({
        kind: fc.constant('crossing' as const),
        pitch: length,
        rowSpacing: length,
        second: fc.record({ pitch: length, rowSpacing: length }),
        angle: fc.constantFrom(90, 45),
      }),
    );
    fc.assert(
      fc.property(pattern, fc.constantFrom('across' as const, 'along' as const), (one: FieldPattern, growth) => {
        const lines = rowsAcross({
          pattern: one,
          growth,
          width: 0.2,
          from: -1 * mm,
          to: 41 * mm,
          curve,
          failure: 'threadPullOut',
        });
        const field = growth === 'across' ? { length: 0.2, width: 40 * mm } : { length: 40 * mm, width: 0.2 };
        for (const { x, y } of penetrations(one, field)) {
          const place = growth === 'across' ? y : x;
          const nearest = Math.min(...lines.map(({ position }) => Math.abs(position - place)));
          expect(nearest).toBeLessThan(2e-9);
        }
      }),
      { numRuns: 40 },
    );
  });

  it.each([
    ['width', { width: 0 }],
    ['stretch', { to: -1 }],
    ['endless stretch', { to: Number.POSITIVE_INFINITY }],
    ['origin', { origin: Number.NaN }],
    ['pitch', { pattern: { ...parallel, pitch: 0 } }],
    ['number', { pattern: { ...parallel, rowSpacing: 1e-9 } }],
  ])('are refused for their %s', (_, change) => {
    const input = {
      pattern: parallel,
      growth: 'across',
      width: 24 * mm,
      from: 0,
      to: 20 * mm,
      curve,
      failure: 'threadPullOut',
    } as const;
    expect(codesOf(() => rowsAcross({ ...input, ...change }))).toEqual(['out-of-range']);
  });
});
