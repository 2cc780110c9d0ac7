import type { Working } from '../../working/index.js';
import type { Arm } from '../types.js';
import { openingCompliance, openingRelease } from './beam-toughness.js';
import type { State } from './model.js';
import { bedStiffness, rootLength } from './opening-pair.js';

/** Takes down how far an edge splits without rows: the length at which the opening of its mouth releases the toughness of the bond. */
export function showNaturalSplit(
  pair: Arm,
  {
    width: b,
    opening: Delta,
    length: a_s,
  }: { readonly width: number; readonly opening: number; readonly length: number },
  working: Working,
): void {
  if (!(a_s > 0)) return;
  const C_n = openingCompliance(pair, a_s) / b;
  const P_m = Delta / C_n;
  const G_t = openingRelease(pair, b, P_m, a_s);
  const beam = { chi: rootLength(pair), D_p: pair.bendingStiffness, k_b: bedStiffness(pair) };
  working.step('splitWithoutStitches', { a_s, ...beam, b, Delta, C_n, P_m, G_t });
}

/** A row after the split: its place and opening, m, and its force, N. */
interface HeldRow {
  readonly position: number;
  readonly opening: number;
  readonly force: number;
}

/** Takes down the state in which a split stops: its tip, and the moment there that the rows behind it leave. */
export function showSplit(
  pair: Arm,
  b: number,
  { crackLength: a, load: P_m, tip: w_t }: State,
  rows: readonly HeldRow[],
  working: Working,
): void {
  const k_b = bedStiffness(pair);
  working.step('splitTip', { k_b, w_t, G_t: (k_b * w_t * w_t) / 2 });
  const behind = rows
    .filter(({ position }) => position < a)
    .map(({ position: x_r, opening: w_r, force: F_r }) => ({ x_r, w_r, F_r, M_r: F_r * (a - x_r) }));
  if (behind.length === 0) return;
  const M_r = behind.reduce((sum, row) => sum + row.M_r, 0);
  working.step('splitMoment', { a, P_m, M_r, b, M_t: (P_m * a - M_r) / b }, behind);
}
