import { describe, expect, it } from 'vitest';
import { countInField, type FieldPattern, penetrations } from '../../../packages/core/src/stitch/index.js';
import { codesOf, expectNear, mm } from './support.js';

type Point = readonly [number, number];

/** Holes of a window of an endless pattern, written out in whole micrometres: exact, and by another way than the library's. */
function enumerate(hole: (i: number, j: number) => Point, length: number, width: number): readonly string[] {
  const found: string[] = [];
  for (let j = -60; j <= 60; j++) {
    for (let i = -200; i <= 200; i++) {
      const [x, y] = hole(i, j);
      if (x >= 0 && x < length && y >= 0 && y < width) found.push(`${x},${y}`);
    }
  }
  return found.sort();
}

const found = (pattern: FieldPattern, length: number, width: number) =>
  penetrations(pattern, { length: length * 1e-6, width: width * 1e-6 })
    .map(({ x, y }) => `${Math.round(x * 1e6) + 0},${Math.round(y * 1e6) + 0}`)
    .sort();

describe('the places of penetrations in a field', () => {
  // Sides that are whole multiples of pitch and spacing put holes exactly on the border: the hard case.
  it.each([
    [60_000, 44_000],
    [61_300, 45_900],
    [3_900, 5_400],
  ])('of parallel rows in %d x %d um are those of the lattice', (length, width) => {
    const pattern = { kind: 'parallel', pitch: 4 * mm, rowSpacing: 5.5 * mm } as const;
    expect(found(pattern, length, width)).toEqual(enumerate((i, j) => [4000 * i, 5500 * j], length, width));
  });

  it.each([undefined, 0.25])('of rows staggered by %s alternate between two places', (shift) => {
    const pattern = { kind: 'staggered', pitch: 4 * mm, rowSpacing: 5.5 * mm, ...(shift && { shift }) } as const;
    const by = (shift ?? 0.5) * 4000;
    const wanted = enumerate((i, j) => [4000 * i + (j % 2 === 0 ? 0 : by), 5500 * j], 60_000, 44_000);
    expect(found(pattern, 60_000, 44_000)).toEqual(wanted);
  });

  it('of zigzag rows alternate between the sides of a centre line', () => {
    const pattern = { kind: 'zigzag', pitch: 3 * mm, swing: 4 * mm, rowSpacing: 9 * mm } as const;
    const wanted = enumerate((i, j) => [3000 * i, 9000 * j + (i % 2 === 0 ? -2000 : 2000)], 60_000, 45_000);
    expect(found(pattern, 60_000, 45_000)).toEqual(wanted);
  });

  it('of zigzag rows follow each other along the thread', () => {
    const holes = penetrations(
      { kind: 'zigzag', pitch: 3 * mm, swing: 4 * mm, rowSpacing: 9 * mm },
      { length: 0.03, width: 9 * mm, y: -4.5 * mm },
    );
    expect(holes).toHaveLength(10);
    const path = holes.slice(1).reduce((sum, { x, y }, k) => sum + Math.hypot(x - holes[k]!.x, y - holes[k]!.y), 0);
    expectNear(path, 9 * 5 * mm);
  });

  it('of crossing rows are those of both sets, shared holes for each', () => {
    const second = { pitch: 4 * mm, rowSpacing: 8 * mm };
    const pattern = { kind: 'crossing', pitch: 4 * mm, rowSpacing: 8 * mm, second } as const;
    const first = enumerate((i, j) => [4000 * i, 8000 * j], 64_000, 48_000);
    const other = enumerate((i, j) => [8000 * i, 4000 * j], 64_000, 48_000);
    expect(found(pattern, 64_000, 48_000)).toEqual([...first, ...other].sort());
    const count = countInField(pattern, { length: 64 * mm, width: 48 * mm });
    expect(count.penetrations).toBe(first.length + other.length);
    expect(count.holes).toBe(new Set([...first, ...other]).size);
    expect(count.sets).toEqual([
      { penetrations: 96, rows: 6 },
      { penetrations: 96, rows: 8 },
    ]);
  });

  it('of a set turned by the 3-4-5 angle and moved are those of the turned lattice', () => {
    const angle = (Math.atan2(4, 3) * 180) / Math.PI;
    const offset = { x: 1 * mm, y: 0.5 * mm };
    const size = { pitch: 5 * mm, rowSpacing: 10 * mm };
    const pattern = { kind: 'crossing', ...size, second: size, angle, offset } as const;
    const wanted = enumerate((i, j) => [1000 + 3000 * i - 8000 * j, 500 + 4000 * i + 6000 * j], 60_500, 40_700);
    const set = penetrations(pattern, { length: 60.5 * mm, width: 40.7 * mm }).filter((hole) => hole.set === 1);
    const places = set.map(({ x, y }) => `${Math.round(x * 1e6)},${Math.round(y * 1e6)}`);
    expect(places.sort()).toEqual(wanted);
  });

  it('number the rows from the origin', () => {
    const holes = penetrations(
      { kind: 'staggered', pitch: 4 * mm, rowSpacing: 5 * mm },
      { length: 4 * mm, width: 15 * mm, y: -5 * mm },
    );
    expect(holes.map(({ x, y, row }) => [x / mm, y / mm, row])).toEqual([
      [2, -5, -1],
      [0, 0, 0],
      [2, 5, 1],
    ]);
  });

  it('need a field with two sides that can be listed', () => {
    const pattern = { kind: 'parallel', pitch: 4 * mm, rowSpacing: 5 * mm } as const;
    expect(codesOf(() => penetrations(pattern, { length: 0, width: 1 }))).toEqual(['out-of-range']);
    expect(codesOf(() => penetrations(pattern, { length: 1, width: -1 }))).toEqual(['out-of-range']);
    expect(codesOf(() => penetrations(pattern, { length: 10, width: 10 }))).toEqual(['out-of-range']);
    expect(codesOf(() => countInField(pattern, { length: 10, width: 10 }))).toEqual(['out-of-range']);
  });
});

describe('the places of penetrations in edge rows', () => {
  it('start and end with a hole, one more than there are stitches, at the closed pitch', () => {
    const holes = penetrations({ kind: 'rows', rows: [{ offset: 6 * mm, length: 21 * mm, pitch: 4 * mm }] });
    expect(holes.map((hole) => hole.x / mm)).toEqual([0, 4.2, 8.4, 12.6, 16.8, 21].map((x) => expect.closeTo(x, 9)));
    expect(holes.every((hole) => hole.y === 6 * mm && hole.row === 0)).toBe(true);
  });

  it('of a staggered row stand one in each stitch cell', () => {
    const rows = [{ offset: 6 * mm, length: 21 * mm, pitch: 4 * mm, stagger: 2 * mm }];
    const holes = penetrations({ kind: 'rows', rows });
    expect(holes.map((hole) => hole.x / mm)).toEqual([2.1, 6.3, 10.5, 14.7, 18.9].map((x) => expect.closeTo(x, 9)));
  });
});
