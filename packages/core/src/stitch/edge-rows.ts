import { fail } from '../problem/index.js';
import { inMillimetres, requireNotNegative, requirePositive } from './check.js';
import { checkPattern } from './check-pattern.js';
import type { EdgeRow, RowsPattern } from './types.js';

/**
 * Length of a row set further in than a row of known length, inside a convex outline: L' = L - turn * distance (turn in radians).
 * Exact for any smooth convex path as long as the distance stays below its smallest radius of curvature.
 * @param length m, of the outer row, above 0
 * @param distance m, between the two rows, 0 or more
 * @param turn degrees, by which the path turns between the ends of the row, 0 or more (a half-turn tip: 180)
 * @returns m
 * @throws out-of-range an argument outside its range, or nothing left of the row
 */
export function offsetRowLength(length: number, distance: number, turn: number): number {
  requirePositive('length', length, inMillimetres);
  requireNotNegative('distance', distance, inMillimetres);
  requireNotNegative('turn', turn, (angle) => `${angle} deg`);
  const inner = length - (turn * Math.PI * distance) / 180;
  if (inner <= 0) {
    const largest = (length * 180) / (Math.PI * turn);
    fail({
      code: 'out-of-range',
      message: `distance = ${inMillimetres(distance)} leaves no row, must be below ${inMillimetres(largest)}`,
      allowed: `below length / turn = ${inMillimetres(largest)}`,
    });
  }
  return inner;
}

/** A row divided into a whole number of stitches. */
export interface ClosedRow {
  readonly stitches: number;
  /** Pitch that closes the row, length / stitches, m. */
  readonly pitch: number;
  /** Distance of the first hole from the start, m. */
  readonly start: number;
  /** Holes of the row: one more than stitches when the first hole lies at the start, else as many. */
  readonly penetrations: number;
}

/**
 * Divides a row into n = round(L/p) stitches of the closed pitch p' = L/n.
 * A row that starts with a hole also ends with one: n + 1 holes. A staggered row keeps its stagger as a share of the pitch;
 * its n holes lie at start + k p', the last p' - start before the end.
 * @throws out-of-range see `checkPattern`
 */
export function closeRow(row: EdgeRow): ClosedRow {
  checkPattern({ kind: 'rows', rows: [row] });
  const stitches = Math.max(1, Math.round(row.length / row.pitch));
  const pitch = row.length / stitches;
  const start = ((row.stagger ?? 0) / row.pitch) * pitch;
  return { stitches, pitch, start, penetrations: start > 0 ? stitches : stitches + 1 };
}

/**
 * Width over which the rows of an edge are counted, m: `bandWidth` when given, else rows times the mean distance between them
 * (cells of pitch by row distance); for a single row twice its offset, the strip whose middle it is.
 * @throws out-of-range see `checkPattern`
 */
export function countedWidth(pattern: RowsPattern): number {
  checkPattern(pattern);
  if (pattern.bandWidth !== undefined) return pattern.bandWidth;
  const first = pattern.rows[0]?.offset ?? 0;
  const last = pattern.rows.at(-1)?.offset ?? 0;
  const rows = pattern.rows.length;
  return rows === 1 ? 2 * first : (rows * (last - first)) / (rows - 1);
}

/** Length of all rows together, m, and the area over which they are counted: counted width times their mean length, m^2. */
export function countedArea(pattern: RowsPattern): { readonly length: number; readonly area: number } {
  const length = pattern.rows.reduce((sum, row) => sum + row.length, 0);
  return { length, area: (countedWidth(pattern) * length) / pattern.rows.length };
}
