import { describe, expect, it } from 'vitest';
import {
  type CrossingPattern,
  type FieldPattern,
  nearestNeighbour,
  type Pattern,
  penetrationDensity,
  penetrations,
  rowsMetAcross,
  rowsMetAlong,
} from '../../../packages/core/src/stitch/index.js';
import { codesOf, expectNear, mm } from './support.js';

const grid: CrossingPattern = {
  kind: 'crossing',
  pitch: 4 * mm,
  rowSpacing: 10 * mm,
  second: { pitch: 6 * mm, rowSpacing: 9 * mm },
};

/** Smallest distance between any two distinct holes of a field, pair by pair. */
function bruteForce(pattern: FieldPattern): number {
  const holes = penetrations(pattern, { length: 90 * mm, width: 90 * mm });
  let least = Number.POSITIVE_INFINITY;
  holes.forEach((a, i) => {
    for (const b of holes.slice(i + 1)) {
      const distance = Math.hypot(a.x - b.x, a.y - b.y);
      if (distance > 1e-9) least = Math.min(least, distance);
    }
  });
  return least;
}

/** Distances between the distinct projections of the holes of a field on an axis, smallest and largest. */
function gaps(pattern: FieldPattern, axis: 'x' | 'y') {
  const all = penetrations(pattern, { length: 220 * mm, width: 220 * mm }).map((hole) => hole[axis]);
  const places = [...all].sort((a, b) => a - b).filter((place, i, list) => i === 0 || place - list[i - 1]! > 1e-9);
  const between = places.slice(1).map((place, i) => place - places[i]!);
  return { narrowest: Math.min(...between), widest: Math.max(...between) };
}

const patterns: readonly FieldPattern[] = [
  { kind: 'parallel', pitch: 4 * mm, rowSpacing: 5.5 * mm },
  { kind: 'parallel', pitch: 7 * mm, rowSpacing: 5.5 * mm },
  { kind: 'staggered', pitch: 4 * mm, rowSpacing: 5.5 * mm },
  { kind: 'staggered', pitch: 9 * mm, rowSpacing: 3 * mm },
  { kind: 'staggered', pitch: 20 * mm, rowSpacing: 3 * mm },
  { kind: 'staggered', pitch: 5 * mm, rowSpacing: 4 * mm, shift: 0.8 },
  { kind: 'zigzag', pitch: 3 * mm, swing: 4 * mm, rowSpacing: 9 * mm },
  { kind: 'zigzag', pitch: 3 * mm, swing: 8 * mm, rowSpacing: 9 * mm },
  { kind: 'zigzag', pitch: 3 * mm, swing: 15 * mm, rowSpacing: 8 * mm },
  { kind: 'zigzag', pitch: 2 * mm, swing: 6 * mm, rowSpacing: 9 * mm },
  grid,
  { ...grid, offset: { x: 1 * mm, y: 2.5 * mm } },
  { ...grid, angle: (Math.atan2(4, 3) * 180) / Math.PI, second: { pitch: 5 * mm, rowSpacing: 10 * mm } },
];

describe('the nearest hole', () => {
  it.each(patterns)('of %o is the one that comparing all pairs finds', (pattern) => {
    expectNear(nearestNeighbour(pattern).distance, bruteForce(pattern), 1e-9);
  });

  it('of another row in a staggered pattern is sqrt(s^2 + p^2/4) away', () => {
    const near = nearestNeighbour({ kind: 'staggered', pitch: 4 * mm, rowSpacing: 5 * mm });
    expect(near.sameRow).toBe(4 * mm);
    expectNear(near.otherRow ?? 0, Math.sqrt(25 + 4) * mm);
  });

  it('of edge rows takes their stagger into account', () => {
    const row = { length: 0.4, pitch: 4 * mm };
    const near = nearestNeighbour({
      kind: 'rows',
      rows: [
        { ...row, offset: 6 * mm },
        { ...row, offset: 9 * mm, stagger: 2 * mm },
      ],
    });
    expectNear(near.otherRow ?? 0, Math.hypot(3, 2) * mm);
    expectNear(near.distance, Math.hypot(3, 2) * mm);
  });

  it('of edge rows of unlike pitch may stand level', () => {
    const rows = [
      { offset: 6 * mm, length: 0.4, pitch: 4 * mm },
      { offset: 9 * mm, length: 0.4, pitch: 5 * mm, stagger: 1 * mm },
    ];
    expectNear(nearestNeighbour({ kind: 'rows', rows }).otherRow ?? 0, 3 * mm);
  });

  it('of a single edge row is one pitch away and no other row is named', () => {
    const near = nearestNeighbour({ kind: 'rows', rows: [{ offset: 6 * mm, length: 0.4, pitch: 4 * mm }] });
    expect(near).toEqual({ distance: 4 * mm, sameRow: 4 * mm });
  });
});

describe('the rows that a crack meets', () => {
  it.each(patterns.filter((pattern) => pattern.kind !== 'crossing' || pattern.angle === undefined))(
    'in %o are the distinct places of its holes in the direction of growth',
    (pattern) => {
      for (const [met, axis] of [
        [rowsMetAcross(pattern), 'y'],
        [rowsMetAlong(pattern), 'x'],
      ] as const) {
        const { narrowest, widest } = gaps(pattern, axis);
        expectNear(met?.narrowest ?? 0, narrowest, 1e-9);
        expectNear(met?.widest ?? 0, widest, 1e-9);
        expect(met?.repeats).toBe(true);
      }
    },
  );

  it('along staggered rows are half a pitch apart and hold half the holes each', () => {
    const size = { pitch: 4 * mm, rowSpacing: 5 * mm };
    const aligned = rowsMetAlong({ kind: 'parallel', ...size });
    const staggered = rowsMetAlong({ kind: 'staggered', ...size });
    expectNear(staggered.spacing, aligned.spacing / 2);
    expectNear(aligned.perFrontLength, 1 / (5 * mm));
    expectNear(staggered.perFrontLength, 1 / (10 * mm));
  });

  it('across staggered rows are those of aligned rows', () => {
    const size = { pitch: 4 * mm, rowSpacing: 5 * mm };
    expect(rowsMetAcross({ kind: 'staggered', ...size })).toEqual(rowsMetAcross({ kind: 'parallel', ...size }));
  });

  it('leave the wider of swing and rest free in a zigzag', () => {
    const met = rowsMetAcross({ kind: 'zigzag', pitch: 3 * mm, swing: 4 * mm, rowSpacing: 9 * mm });
    expectNear(met?.narrowest ?? 0, 4 * mm);
    expectNear(met?.widest ?? 0, 5 * mm);
    expectNear(met?.spacing ?? 0, 4.5 * mm);
  });

  it('from an edge are its rows, and between their stagger along it', () => {
    const row = { length: 0.4, pitch: 4 * mm };
    const pattern: Pattern = {
      kind: 'rows',
      rows: [
        { ...row, offset: 6 * mm },
        { ...row, offset: 11 * mm, stagger: 2 * mm },
        { ...row, offset: 17 * mm },
      ],
    };
    const across = rowsMetAcross(pattern);
    expectNear(across?.spacing ?? 0, 5.5 * mm);
    expectNear(across?.widest ?? 0, 6 * mm);
    const along = rowsMetAlong(pattern);
    expectNear(along.spacing, 2 * mm);
    expectNear(along.perFrontLength, penetrationDensity(pattern) * 2 * mm);
  });

  it('are none across a single edge row', () => {
    const rows = [{ offset: 6 * mm, length: 0.4, pitch: 4 * mm }];
    expect(rowsMetAcross({ kind: 'rows', rows })).toBeUndefined();
  });

  it('are a mean with a bound where two sets never fall into step', () => {
    const met = rowsMetAcross({ ...grid, second: { pitch: Math.SQRT2 * 10 * mm, rowSpacing: 9 * mm } });
    expect(met?.repeats).toBe(false);
    expectNear(met?.widest ?? 0, 10 * mm);
    expectNear(1 / (met?.spacing ?? 0), (1 / 10 + 1 / (10 * Math.SQRT2)) / mm);
  });

  it('are those of the first set where the second lies at an angle', () => {
    const met = rowsMetAlong({ ...grid, angle: 60 });
    expect(met.spacing).toBe(4 * mm);
    expect(met.repeats).toBe(false);
  });

  it('are not looked for in a pattern that makes no sense', () => {
    const wrong = { kind: 'parallel', pitch: 0, rowSpacing: 1 } as const;
    for (const call of [nearestNeighbour, rowsMetAcross, rowsMetAlong, penetrationDensity]) {
      expect(codesOf(() => call(wrong))).toEqual(['out-of-range']);
    }
  });
});
