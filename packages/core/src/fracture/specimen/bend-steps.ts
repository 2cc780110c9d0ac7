import type { Working } from '../../working/index.js';
import type { Arm, BridgingRow } from '../types.js';
import { type Bending, momentAt } from './bending.js';
import { breakingStrain } from './check.js';
import type { ModelRow, State } from './model.js';
import { sharpestMoment } from './opening-strain.js';
import { forceAfter } from './row-law.js';
import type { SlidingPair } from './sliding-pair.js';
import type { SharpestBend } from './sliding-strain.js';

/** A row that holds: its place and opening, m, its stitches, and their force together, N. */
export interface HeldRow {
  readonly position: number;
  readonly opening: number;
  readonly penetrations: number;
  readonly force: number;
}

/** The rows behind the tip of a state that hold, in order of place. */
export function heldRows(
  rows: readonly ModelRow[],
  given: readonly BridgingRow[],
  { crackLength, opening, largest }: State,
): readonly HeldRow[] {
  return rows
    .map(({ place: position, law, index }, j): HeldRow => {
      const [w, m] = [opening[j] as number, largest[j] as number];
      return { position, opening: w, penetrations: given[index]?.penetrations ?? 1, force: forceAfter(law, w, m) };
    })
    .filter(({ position, force }) => position < crackLength && force !== 0);
}

/** Takes down what each row holds. */
export function showRowsHold(rows: readonly HeldRow[], working: Working): void {
  if (rows.length === 0) return;
  const list = rows.map(({ position: x_r, opening: w_r, penetrations: n_r, force: F_r }) => {
    return { x_r, w_r, n_r, F_w: F_r / n_r, F_r };
  });
  working.step('rowsHold', {}, list);
}

interface Opened {
  readonly arms: readonly [Arm, Arm];
  readonly width: number;
  readonly rows: readonly BridgingRow[];
}

/** Takes down the sharpest bend of opened arms in a state, and how near the arm comes to breaking there. */
export function showSharpestBend(
  { arms, width: b, rows: given }: Opened,
  rows: readonly ModelRow[],
  state: State,
  working: Working,
  rowsToo = true,
): void {
  const share = (arm: Arm): number => arm.thickness / arm.bendingStiffness / breakingStrain(arm);
  const arm = share(arms[1]) > share(arms[0]) ? arms[1] : arms[0];
  const eps_f = breakingStrain(arm);
  if (!Number.isFinite(eps_f)) return;
  const { place: x_m, moment } = sharpestMoment(state, rows);
  const { load: P, crackLength: a } = state;
  const [h_w, D_w] = [arm.thickness, arm.bendingStiffness];
  const M_b = Math.abs(moment) / b;
  const eps_m = (M_b * h_w) / (2 * D_w);
  const held = heldRows(rows, given, state);
  if (rowsToo) showRowsHold(held, working);
  const before = held
    .filter(({ position }) => position < x_m)
    .map(({ position: x_r, force: F_r }) => ({ x_r, F_r, M_k: F_r * (x_m - x_r) }));
  const bend = { a, P, b, x_m, h_w, D_w };
  if (before.length === 0) working.step('armBends', { ...bend, M_b, eps_m });
  else {
    const M_k = before.reduce((sum, row) => sum + row.M_k, 0);
    working.step('armBendsBetweenRows', { ...bend, M_k, M_b, eps_m }, before);
  }
  working.step('armShare', { eps_m, eps_f, x_a: eps_m / eps_f });
}

/** Takes down the sharpest bend of arms that slide on each other, behind the tip or in the bond, and how near the arm comes to breaking there. */
export function showSlidingBend(
  { arms, width: b }: Pick<Opened, 'arms' | 'width'>,
  { H: H_p, D: D_u, bonded: D_b }: SlidingPair,
  bending: Bending,
  { load: P, crackLength: a }: State,
  { place: x_m, force: N_row, arm: i, bonded }: SharpestBend,
  working: Working,
): void {
  const [arm, other] = i === 0 ? arms : [arms[1], arms[0]];
  const eps_f = breakingStrain(arm);
  if (!Number.isFinite(eps_f)) return;
  const m_x = momentAt(bending, x_m);
  const place = { a, P, b, x_m, x_P: bending.loads[0]?.place ?? 0, m_x, h_w: arm.thickness };
  let eps_m: number;
  if (bonded) {
    const [A_w, A_o] = [arm.axialStiffness, other.axialStiffness];
    const x_o = H_p * (A_o / (A_w + A_o)) + arm.thickness / 2;
    eps_m = ((P * m_x) / (D_b * b)) * x_o;
    working.step('slidingBendsInBond', { ...place, H_p, A_w, A_o, D_b, x_o, eps_m });
  } else {
    const A_w = arm.axialStiffness;
    eps_m = (Math.abs(P * m_x - H_p * N_row) * arm.thickness) / (2 * D_u * b) + N_row / (A_w * b);
    working.step('slidingBends', { ...place, H_p, N_row, D_u, A_w, eps_m });
  }
  working.step('armShare', { eps_m, eps_f, x_a: eps_m / eps_f });
}
