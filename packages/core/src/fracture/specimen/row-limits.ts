import { fail } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import type { BridgingRow } from '../types.js';

/**
 * Rows that a crack may meet where no other number is given, so that one simulation stays within some three seconds: it takes steps for each row,
 * and each step costs the bridged zone.
 */
export const mostRowsOf = { dcb: 600, enf: 300, wedge: 250, peel: 150 } as const;

/** Stops where a crack would meet more rows than can be followed. @throws out-of-range */
export function checkRowsMet(places: readonly { readonly place: number }[], to: number, most: number): void {
  const met = places.filter(({ place }) => place < to).length;
  if (met <= most) return;
  fail({
    code: 'out-of-range',
    message: `rows = ${met} met by the crack, at most ${most}`,
    allowed: `at most ${most} rows up to where the test ends`,
    hint: 'shorten the bond, or stitch less of it',
  });
}

/** Penetrations a row below which what a single specimen has is far from the average. */
const few = 1.5;

/** Warns where rows hold so few penetrations that no single specimen is like the average; whole numbers are taken as counted. */
export function fewPenetrationsNote(rows: readonly BridgingRow[]): readonly Note[] {
  if (rows.length === 0 || rows.every(({ penetrations }) => Number.isInteger(penetrations))) return [];
  const mean = rows.reduce((sum, { penetrations }) => sum + penetrations, 0) / rows.length;
  if (mean >= few) return [];
  const one = mean < 1 ? 'none or one' : 'one or two';
  const text = `${Number(mean.toPrecision(2))} stitches a row across the width: the average of many specimens, a single one has ${one}.`;
  return [{ level: 'warning', text }];
}
