import type { Working } from '../../working/index.js';
import type { Arm } from '../types.js';
import { openingCompliance, openingRelease } from './beam-toughness.js';
import { type HeldRow, showRowsHold } from './bend-steps.js';
import type { State } from './model.js';
import { bedStiffness, rootLength } from './opening-pair.js';

/** Takes down how far an edge splits without rows: the length at which the opening of its mouth releases the toughness of the bond. */
export function showNaturalSplit(
  pair: Arm,
  {
    width: b,
    opening: Delta,
    bondToughness: G_0,
    length: a_s,
  }: {
    readonly width: number;
    readonly opening: number;
    readonly bondToughness: number;
    readonly length: number;
  },
  working: Working,
): void {
  if (!(a_s > 0)) return;
  const C_n = openingCompliance(pair, a_s) / b;
  const P_ns = Delta / C_n;
  const G_ns = openingRelease(pair, b, P_ns, a_s);
  const beam = { chi: rootLength(pair), D_p: pair.bendingStiffness, k_b: bedStiffness(pair) };
  working.step('splitRoot', { ...beam, Delta, G_0, a_s });
  working.step('splitWithoutStitches', { a_s, ...beam, b, Delta, C_n, P_ns, G_ns });
}

/** Takes down the state in which a split stops: the moment at its tip that the rows behind it leave, and the tip. */
export function showSplit(
  { pair, width: b, bondToughness: G_0 }: SplitOf,
  { crackLength: a, load: P_m, tip: w_t }: State,
  rows: readonly HeldRow[],
  working: Working,
): void {
  const [k_b, D_p, chi] = [bedStiffness(pair), pair.bendingStiffness, rootLength(pair)];
  working.step('splitStops', { G_0, a, P_m });
  showRowsHold(rows, working);
  const behind = rows.map(({ position: x_r, force: F_r }) => ({ x_r, F_r, M_r: F_r * (a - x_r), F_R: F_r }));
  const M_r = behind.reduce((sum, row) => sum + row.M_r, 0);
  const F_R = behind.reduce((sum, row) => sum + row.F_R, 0);
  const [M_t, V_t] = [(P_m * a - M_r) / b, (P_m - F_R) / b];
  if (behind.length === 0) working.step('splitMomentAlone', { a, P_m, b, M_t, V_t });
  else working.step('splitMoment', { a, P_m, M_r, F_R, b, M_t, V_t }, behind);
  const w_c = (M_t + chi * V_t) / Math.sqrt(k_b * D_p);
  working.step('splitTip', { M_t, V_t, chi, k_b, D_p, w_c, w_t, G_t: (k_b * w_t * w_t) / 2 });
}

interface SplitOf {
  readonly pair: Arm;
  readonly width: number;
  readonly bondToughness: number;
}
