import { factorBanded, solveBanded } from '../../numeric/index.js';
import { fail } from '../../problem/index.js';
import type { Laid } from './chain.js';
import type { Model, State } from './model.js';
import { rowLines, type Way } from './row-lines.js';

/** Finds equilibrium at a crack length and displacement; `largest` are the openings that rows have seen, `guess` where to start from. */
export type Equilibrium = (
  crackLength: number,
  displacement: number,
  largest: Float64Array,
  guess: Float64Array,
) => State;

/** Rounds of tangents at a time, careful ones in the first turn; of secants in the first turn, one more such lot in each further turn. */
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
  const stride = band + 1;
  const work = new Float64Array(K.length);
  const byLoad = new Float64Array(load.length);
  const byRows = new Float64Array(load.length);
  const count = rows.length;
  const { stiffness, constant, draw, meet } = rowLines(rows);
  const before = new Float64Array(count);
  const ends = Float64Array.from(rows, ({ law }) => law.end);
  /** Unknowns whose factors still hold: those before the first that has changed. */
  let factored = 0;
  let settled = 0;
  let negative = 0;
  let lastCrack = Number.NaN;
  let lastSpent = 0;
  const changed = (j: number): void => {
    factored = Math.min(factored, row[j] as number);
  };

  /** Solves with the lines as they are; the load, or not a number when the balance is not a stable one. */
  const solve = (laid: Laid, displacement: number, constants: boolean): number => {
    const { unknowns: n, loaded, felt, first, beyond } = laid;
    const end = n + band;
    for (let i = factored * stride; i < end * stride; i++) work[i] = K[i] as number;
    for (let j = first; j < count; j++) {
      const at = row[j] as number;
      if (at >= factored) work[at * stride] = (work[at * stride] as number) + (stiffness[j] as number);
    }
    // Seldom anything is negative; then the factors that were kept are counted once more.
    const kept = negative > 0 ? negativeAmong(work, factored, stride) : 0;
    const more = factorBanded(work, n, band, factored);
    negative = kept + more;
    factored = more < 0 ? 0 : n;
    if (more < 0 || negative > 1) return Number.NaN;
    byLoad.fill(0, felt, end);
    for (let i = loaded; i < n; i++) byLoad[i] = load[i] as number;
    solveBanded(work, n, band, byLoad, loaded, felt);
    let flexibility = laid.direct;
    for (let i = loaded; i < n; i++) flexibility += (drive[i] as number) * (byLoad[i] as number);
    // Held at its displacement a structure is stable with no negative eigenvalue, or with one that the flexibility shares.
    if (flexibility > 0 !== (negative === 0)) return Number.NaN;
    if (!constants) return displacement / flexibility;
    byRows.fill(0, felt, end);
    let from = n;
    for (let j = first; j < beyond; j++) {
      const c = constant[j] as number;
      if (c === 0) continue;
      const at = row[j] as number;
      byRows[at] = (byRows[at] as number) - c;
      from = Math.min(from, at);
    }
    solveBanded(work, n, band, byRows, from, felt);
    let moved = displacement;
    for (let i = loaded; i < n; i++) moved -= (drive[i] as number) * (byRows[i] as number);
    return moved / flexibility;
  };

  let w = new Float64Array(count);
  let constants = false;
  let P = 0;
  const at = (unknown: number) => P * (byLoad[unknown] as number) + (constants ? (byRows[unknown] as number) : 0);

  /** Rounds of lines; true when lines and curves then meet. */
  const rounds = (most: number, way: Way, laid: Laid, displacement: number, largest: Float64Array): boolean => {
    for (let i = 0; i < most; i++) {
      constants = draw(w, largest, way, laid, changed);
      P = solve(laid, displacement, constants);
      if (!Number.isFinite(P)) return false;
      for (let j = laid.first; j < laid.beyond; j++) w[j] = at(row[j] as number);
      if (meet(w, largest, laid)) return true;
    }
    return false;
  };
  const isSpent = (j: number, largest: Float64Array): boolean => (largest[j] as number) > (ends[j] as number);

  return (crackLength, displacement, largest, guess) => {
    let spent = lastSpent;
    while (spent > 0 && !isSpent(spent - 1, largest)) spent--;
    while (spent < count && isSpent(spent, largest)) spent++;
    const laid = chain.lay(crackLength, spent);
    if (crackLength !== lastCrack || spent !== lastSpent) factored = Math.min(factored, settled, laid.settled);
    lastCrack = crackLength;
    lastSpent = spent;
    settled = laid.settled;
    w = guess.slice();
    w.fill(0, laid.beyond);
    for (let turn = 1; turn <= mostTurns; turn++) {
      before.set(w);
      let found = rounds(tangents, turn === 1 ? 'careful' : 'tangent', laid, displacement, largest);
      if (!found) {
        w.set(before);
        found = rounds(secants * turn, 'secant', laid, displacement, largest);
      }
      if (found) {
        const rubbed = rubs.map(({ unknown, perLoad }) => ({ slid: at(unknown), force: perLoad * P }));
        chain.fill(w, P, displacement, at(laid.next));
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

function negativeAmong(work: Float64Array, rows: number, stride: number): number {
  let negative = 0;
  for (let i = 0; i < rows; i++) if ((work[i * stride] as number) < 0) negative++;
  return negative;
}
