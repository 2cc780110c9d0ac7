import type { Equilibrium } from './equilibrium.js';
import type { Model, ModelRow, State } from './model.js';

/** A row past its greatest force, and the growth at which it got there. */
export interface Passing {
  readonly row: number;
  readonly crackLength: number;
}

/** What is reached at a displacement, and what went on the way. */
export interface Settled {
  readonly state: State;
  readonly passings: readonly Passing[];
  /** False when the search was given up on the way. */
  readonly complete: boolean;
}

/** How far a step may go. */
export interface Stride {
  /** Growth tried first, m. */
  readonly first: number;
  /** Longest piece of growth at once, m. */
  readonly longest: number;
  /** Growth at which the search is given up, m. */
  readonly enough: number;
}

const onTheLimit = 1e-8;

/**
 * The state into which a specimen settles at a displacement: the crack grows as long as the bed at its tip stands beyond its limit.
 *
 * Energy release per area is k δ²/2 at the tip, exactly the loss of the chain's energy when the bed ends further on, so that growth at k δ²/2 = G0 balances
 * energy for any step. Growth goes forward piece by piece, rows taking with them what they have been through; in the last piece the place is found
 * where the tip is back at its limit. Between stable growth and a jump there is no difference but the distance.
 */
export function settle(
  model: Model,
  equilibrium: Equilibrium,
  from: State,
  displacement: number,
  stride: Stride,
): Settled {
  const limit = model.tipLimit * (1 + onTheLimit);
  const passings: Passing[] = [];
  let state = keep(model, equilibrium(from.crackLength, displacement, from.largest, from.opening), passings);
  let piece = Math.min(stride.first, stride.longest);
  while (state.tip > limit && state.crackLength < model.longest) {
    if (state.crackLength - from.crackLength > stride.enough) return { state, passings, complete: false };
    const next = Math.min(state.crackLength + piece, model.longest);
    const ahead = equilibrium(next, displacement, state.largest, state.opening);
    state = keep(model, ahead.tip > limit ? ahead : backAtLimit(model, equilibrium, state, ahead), passings);
    piece = Math.min(2 * piece, stride.longest);
  }
  return { state, passings, complete: true };
}

/**
 * Between a state beyond its limit and one short of it, the one on it: through the last three states an inverse parabola, where that leaves the bracket
 * or has brought little the middle.
 */
function backAtLimit(model: Model, equilibrium: Equilibrium, beyond: State, short: State): State {
  const over = ({ tip }: State) => tip - model.tipLimit;
  let [a, fa] = [beyond.crackLength, over(beyond)];
  let [b, fb] = [short.crackLength, over(short)];
  let [c, fc] = [a, fa];
  let found = short;
  let x = a + (fa / (fa - fb)) * (b - a);
  let last = Math.max(fa, -fb);
  for (let round = 0; round < 60; round++) {
    if (Math.abs(over(found)) <= onTheLimit * model.tipLimit || b - a <= 1e-12 * b) break;
    found = equilibrium(x, beyond.displacement, beyond.largest, found.opening);
    const f = over(found);
    const slow = Math.abs(f) > last / 2;
    last = Math.abs(f);
    if (f > 0) {
      [c, fc] = [a, fa];
      [a, fa] = [x, f];
    } else {
      [c, fc] = [b, fb];
      [b, fb] = [x, f];
    }
    const line = a + (fa / (fa - fb)) * (b - a);
    const bend = ((fa * fb) / (fc - fb)) * ((c - a) / (fc - fa) - (b - a) / (fb - fa));
    x = line + bend;
    if (!(x > a && x < b) || slow) x = (a + b) / 2;
  }
  return found;
}

/** The state with what its rows have now been through; what holds nothing any more goes through nothing. */
function keep(model: Model, state: State, passings: Passing[]): State {
  const { opening, largest: before } = state;
  let largest = before;
  for (let j = 0; j < opening.length; j++) {
    const m = before[j] as number;
    const w = opening[j] as number;
    if (w <= m) continue;
    const { peak, end } = (model.rows[j] as ModelRow).law;
    if (m > end) continue;
    if (largest === before) largest = before.slice();
    largest[j] = w;
    if (m <= peak && w > peak) passings.push({ row: j, crackLength: state.crackLength });
  }
  return largest === before ? state : { ...state, largest };
}
