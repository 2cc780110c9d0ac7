import { checkPattern } from './check-pattern.js';
import { meetings } from './crossing.js';
import { closeRow } from './edge-rows.js';
import type { Pattern, RowsPattern, StaggeredPattern } from './types.js';

/** Distances between holes, m. */
export interface NearestNeighbour {
  /** To the nearest hole of all. */
  readonly distance: number;
  /** To the nearest hole of the same row (of a zigzag: of the same centre line). */
  readonly sameRow: number;
  /** To the nearest hole of another row or set; absent for a single row. */
  readonly otherRow?: number;
}

/**
 * Smallest distance between distinct holes of a pattern.
 * Parallel: p and s. Staggered by f p: sqrt(s^2 + (f p)^2) with f at most 1/2, for one half sqrt(s^2 + p^2/4), or 2 s if that is less.
 * Zigzag: sqrt(p^2 + v^2), or 2 p, in the row. Crossing: see `meetings`; where the sets never repeat, holes searched only.
 * Edge rows: from the places of the holes as if all rows ran straight and began level.
 * @throws out-of-range see `checkPattern`
 */
export function nearestNeighbour(pattern: Pattern): NearestNeighbour {
  checkPattern(pattern);
  if (pattern.kind === 'rows') return nearestInRows(pattern);
  const { pitch: p, rowSpacing: s } = pattern;
  switch (pattern.kind) {
    case 'parallel':
      return withNearest(p, s);
    case 'staggered':
      return withNearest(p, Math.min(staggeredDistance(pattern), 2 * s));
    case 'zigzag': {
      const v = pattern.swing;
      // Holes on the same side of two centre lines, and on facing sides one advance along, any number of centre lines away.
      const facing = Math.min(...neighbouringLines(v, s).map((k) => Math.hypot(p, k * s - v)));
      return withNearest(Math.min(Math.hypot(p, v), 2 * p), Math.min(s, facing));
    }
    case 'crossing': {
      const own = Math.min(p, pattern.second.pitch);
      const parallelRows = Math.min(s, pattern.second.rowSpacing);
      return withNearest(own, Math.min(parallelRows, meetings(pattern).closest));
    }
  }
}

/** From a hole to the nearest of the next row, rows shifted by f p: sqrt(s^2 + (f p)^2), m. */
export function staggeredDistance({ pitch, rowSpacing, shift = 0.5 }: StaggeredPattern): number {
  return Math.hypot(rowSpacing, Math.min(shift, 1 - shift) * pitch);
}

const withNearest = (sameRow: number, otherRow: number): NearestNeighbour => ({
  distance: Math.min(sameRow, otherRow),
  sameRow,
  otherRow,
});

/** Centre lines, counted from a hole's own, on which the facing side comes closest. */
function neighbouringLines(swing: number, rowSpacing: number): readonly number[] {
  const nearest = Math.floor(swing / rowSpacing);
  return [nearest, nearest + 1].filter((k) => k > 0);
}

function nearestInRows(pattern: RowsPattern): NearestNeighbour {
  const pitches = pattern.rows.map((row) => closeRow(row).pitch);
  const sameRow = Math.min(...pitches);
  const otherRow = nearestOfRows(pattern);
  return Number.isFinite(otherRow) ? withNearest(sameRow, otherRow) : { distance: sameRow, sameRow };
}

/** Two rows along an edge: their distance, the least distance of their holes along the rows, and in all, m. */
interface RowPair {
  /** Which, from 0. */
  readonly rows: readonly [number, number];
  readonly apart: number;
  readonly shift: number;
  readonly distance: number;
}

/** Every pair of rows along an edge. */
export function rowPairs({ rows }: RowsPattern): readonly RowPair[] {
  return rows.flatMap((row, i) =>
    rows.slice(i + 1).map((other, k) => {
      const [apart, shift] = [other.offset - row.offset, leastShift(row, other)];
      return { rows: [i, i + 1 + k] as const, apart, shift, distance: Math.hypot(apart, shift) };
    }),
  );
}

/** Least distance between holes of different rows along an edge, m; infinite for a single row. */
export function nearestOfRows(pattern: RowsPattern): number {
  return Math.min(...rowPairs(pattern).map(({ distance }) => distance));
}

/** Smallest distance along x between holes of two rows at their wanted pitches; rows of unequal pitch meet level somewhere. */
function leastShift(row: RowsPattern['rows'][number], other: RowsPattern['rows'][number]): number {
  if (row.pitch !== other.pitch) return 0;
  const shift = Math.abs((row.stagger ?? 0) - (other.stagger ?? 0));
  return Math.min(shift, row.pitch - shift);
}
