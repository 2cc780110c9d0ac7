import { factorBanded, solveBanded } from '../../numeric/index.js';
import { fail } from '../../problem/index.js';
import type { Laid } from './chain.js';
import type { Model, State } from './model.js';
import { rowLines } from './row-lines.js';

/** Finds equilibrium at a crack length and displacement; `largest` are the openings that rows have seen, `guess` where to start from. */
export type Equilibrium = (
  crackLength: number,
  displacement: number,
  largest: Float64Array,
  guess: Float64Array,
) => State;

/** Rounds of tangents at a time; of secants in the first turn, one more such lot in each further turn. */
const tangents = 8;
const secants = 24;
const mostTurns = 40;

/**
 * Equilibrium of a chain with rows that never recover, at a given displacement.
 *
 * Rows are straight lines F = κ w + c; the chain is then linear: u = P x + z, and Δ = direct P + drive u gives P. Tangents of the
 * curves find the lines exactly in a few rounds. Where they would lead to an unstable balance or go around in circles, secants do: as F/w never
 * rises, the energy at the secants lies nowhere below the true one, so that each round goes down in energy at constant displacement, and what is
 * reached is the nearest stable state, into which a row that jumps open falls.
 *
 * @throws not-computable when no equilibrium is found
 */
export function equilibriumOf(model: Model): Equilibrium {
  const { chain, rows } = model;
  const { K, band, load, drive, row, rubs } = chain;
  const work = new Float64Array(K.length);
  const byLoad = new Float64Array(load.length);
  const byRows = new Float64Array(load.length);
  const count = rows.length;
  const { stiffness, constant, draw, meet } = rowLines(rows);

  /** Solves with the lines as they are; the load, or not a number when the balance is not a stable one. */
  const solve = (laid: Laid, displacement: number, constants: boolean): number => {
    const n = laid.unknowns;
    const length = (n + band) * (band + 1);
    for (let i = 0; i < length; i++) work[i] = K[i] as number;
    for (let j = 0; j < count; j++) {
      const at = (row[j] as number) * (band + 1);
      work[at] = (work[at] as number) + (stiffness[j] as number);
    }
    const negative = factorBanded(work, n, band);
    if (negative < 0 || negative > 1) return Number.NaN;
    for (let i = 0; i < n + band; i++) byLoad[i] = i < n ? (load[i] as number) : 0;
    solveBanded(work, n, band, byLoad);
    let flexibility = laid.direct;
    for (let i = 0; i < n; i++) flexibility += (drive[i] as number) * (byLoad[i] as number);
    // Held at its displacement a structure is stable with no negative eigenvalue, or with one that the flexibility shares.
    if (flexibility > 0 !== (negative === 0)) return Number.NaN;
    if (!constants) return displacement / flexibility;
    byRows.fill(0, 0, n + band);
    for (let j = 0; j < count; j++) {
      const at = row[j] as number;
      byRows[at] = (byRows[at] as number) - (constant[j] as number);
    }
    for (let i = n; i < n + band; i++) byRows[i] = 0;
    solveBanded(work, n, band, byRows);
    let moved = displacement;
    for (let i = 0; i < n; i++) moved -= (drive[i] as number) * (byRows[i] as number);
    return moved / flexibility;
  };

  return (crackLength, displacement, largest, guess) => {
    const laid = chain.lay(crackLength);
    let w = guess.slice();
    let constants = false;
    let P = 0;
    const at = (unknown: number) => P * (byLoad[unknown] as number) + (constants ? (byRows[unknown] as number) : 0);

    /** One round; true when lines and curves then meet. */
    const round = (secant: boolean): boolean => {
      constants = draw(w, largest, secant);
      P = solve(laid, displacement, constants);
      if (!Number.isFinite(P)) return false;
      for (let j = 0; j < count; j++) w[j] = at(row[j] as number);
      return meet(w, largest);
    };
    const rounds = (most: number, secant: boolean): boolean => {
      for (let i = 0; i < most; i++) {
        if (round(secant)) return true;
        if (!Number.isFinite(P)) return false;
      }
      return false;
    };

    for (let turn = 1; turn <= mostTurns; turn++) {
      const before = w.slice();
      let found = rounds(tangents, false);
      if (!found) {
        w = before;
        found = rounds(secants * turn, true);
      }
      if (found) {
        const rubbed = rubs.map(({ unknown, perLoad }) => ({ slid: at(unknown), force: perLoad * P }));
        return { crackLength, displacement, load: P, tip: at(laid.tip), opening: w, largest, rubbed };
      }
    }
    return fail({
      code: 'not-computable',
      message: `no equilibrium found at displacement ${displacement} m and crack length ${crackLength} m`,
      hint: 'check the curves of the rows for forces or openings far outside those of the arms',
    });
  };
}
