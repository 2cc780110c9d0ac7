import { courses } from './density.js';
import { closeRow } from './edge-rows.js';
import { countInField } from './positions.js';
import type { Field, Pattern } from './types.js';

/** Rows sewn alike: one edge row, or all rows of one set of a field pattern. */
export interface SewnRows {
  /** How many rows. */
  readonly rows: number;
  /** Stitches of all of them. */
  readonly stitches: number;
  /** Holes made, the closing hole of an edge row included. */
  readonly penetrations: number;
  /** Advance along the row per stitch, m. */
  readonly pitch: number;
  /** From hole to hole along the thread, m. */
  readonly run: number;
  /** Length of all of them, m. */
  readonly length: number;
}

/**
 * The rows to be sewn: each edge row, or the sets of a field pattern in its field.
 * @returns undefined for a field pattern without a field
 * @throws out-of-range see {@link checkPattern}, {@link countInField}
 */
export function sewnRows(pattern: Pattern, field?: Field): readonly SewnRows[] | undefined {
  if (pattern.kind === 'rows') {
    return pattern.rows.map((row) => {
      const { stitches, pitch, penetrations } = closeRow(row);
      return { rows: 1, stitches, penetrations, pitch, run: pitch, length: row.length };
    });
  }
  if (field === undefined) return undefined;
  const { sets } = countInField(pattern, field);
  return courses(pattern).map(({ pitch, run }, index) => {
    const { penetrations, rows } = sets[index] ?? { penetrations: 0, rows: 0 };
    return { rows, stitches: penetrations, penetrations, pitch, run, length: penetrations * pitch };
  });
}
