import { fail } from '../problem/index.js';
import { inMillimetres, requireNotNegative, requirePositive } from './check.js';
import type { EdgeRow, Pattern } from './types.js';

/**
 * Checks a pattern's physical sense; returns nothing.
 * @throws out-of-range a pitch, spacing, swing, length or offset not above 0, a shift outside 0 to 1, an angle outside 0 to 180,
 * a row shorter than its pitch, rows not in order of their offset, or a band narrower than its rows
 */
export function checkPattern(pattern: Pattern): void {
  if (pattern.kind === 'rows') {
    checkRows(pattern.rows, pattern.bandWidth);
    return;
  }
  length('pitch', pattern.pitch);
  length('rowSpacing', pattern.rowSpacing);
  if (pattern.kind === 'zigzag') length('swing', pattern.swing);
  if (pattern.kind === 'staggered') {
    const shift = pattern.shift ?? 0.5;
    if (!(shift >= 0 && shift < 1)) {
      fail({
        code: 'out-of-range',
        message: `shift = ${shift}, must be at least 0 and below 1`,
        allowed: 'a fraction of the pitch, 0 to below 1',
        hint: 'one half puts the holes of a row midway between those of its neighbours',
      });
    }
  }
  if (pattern.kind === 'crossing') {
    length('pitch of the second set', pattern.second.pitch);
    length('rowSpacing of the second set', pattern.second.rowSpacing);
    const angle = pattern.angle ?? 90;
    if (!(angle > 0 && angle < 180)) {
      fail({
        code: 'out-of-range',
        message: `angle = ${angle} deg between the sets, must be above 0 and below 180 deg`,
        allowed: 'above 0, below 180 deg',
        hint: 'two sets in the same direction are one set with closer rows',
      });
    }
    for (const [axis, value] of Object.entries(pattern.offset ?? {})) {
      if (!Number.isFinite(value)) {
        fail({
          code: 'out-of-range',
          message: `offset ${axis} = ${value}, must be finite`,
          allowed: 'a finite length',
        });
      }
    }
  }
}

const length = (name: string, value: number) => requirePositive(name, value, inMillimetres);

function checkRows(rows: readonly EdgeRow[], bandWidth: number | undefined): void {
  if (rows.length === 0) {
    fail({ code: 'out-of-range', message: 'rows = 0, a pattern needs at least 1 row', allowed: 'one row or more' });
  }
  let last = 0;
  rows.forEach((row, index) => {
    const of = (what: string) => `${what} of row ${index + 1}`;
    length(of('offset'), row.offset);
    length(of('pitch'), row.pitch);
    length(of('length'), row.length);
    if (row.length < row.pitch) {
      fail({
        code: 'out-of-range',
        message: `${of('length')} = ${inMillimetres(row.length)}, must be at least its pitch of ${inMillimetres(row.pitch)}`,
        allowed: 'a row of one stitch or more',
      });
    }
    const stagger = row.stagger ?? 0;
    requireNotNegative(of('stagger'), stagger, inMillimetres);
    if (stagger >= row.pitch) {
      fail({
        code: 'out-of-range',
        message: `${of('stagger')} = ${inMillimetres(stagger)}, must be below its pitch of ${inMillimetres(row.pitch)}`,
        allowed: '0 to below one pitch',
      });
    }
    if (row.offset <= last) {
      fail({
        code: 'out-of-range',
        message: `${of('offset')} = ${inMillimetres(row.offset)}, must be above the ${inMillimetres(last)} of the row before`,
        allowed: 'rows in order of their distance from the edge',
      });
    }
    last = row.offset;
  });
  if (bandWidth !== undefined) {
    length('bandWidth', bandWidth);
    const first = rows[0]?.offset ?? 0;
    if (bandWidth < last - first) {
      fail({
        code: 'out-of-range',
        message: `bandWidth = ${inMillimetres(bandWidth)}, must be at least the ${inMillimetres(last - first)} from first to last row`,
        allowed: 'a band that holds all rows',
      });
    }
  }
}
