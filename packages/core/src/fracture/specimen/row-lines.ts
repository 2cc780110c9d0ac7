import type { Laid } from './chain.js';
import { firmAgain } from './firm-again.js';
import type { ModelRow } from './model.js';
import { forceAfter, leftAt, type RowLaw, slopeAfter, steepestFrom } from './row-law.js';

/** How well line and curve agree at the end: as a share of the force, of the terms of the line (rounding), of the greatest force. */
const exact = 1e-9;
const rounding = 1e-13;
const tiny = 1e-18;

/** Rows as straight lines F = stiffness w + constant, in arrays that are rewritten. */
export interface RowLines {
  readonly stiffness: Float64Array;
  readonly constant: Float64Array;
  /**
   * Draws the lines at openings w of the rows of a chain, `largest` being what they have seen: tangents, or secants. `changed` is told each row
   * whose stiffness is another than before. Says whether any constant differs from 0.
   */
  draw(w: Float64Array, largest: Float64Array, way: Way, chain: Stretch, changed: (row: number) => void): boolean;
  /** Whether all lines meet their curves at openings w. */
  meet(w: Float64Array, largest: Float64Array, chain: Stretch): boolean;
}

/** Tangents, at first held back where they tell too little, or secants. */
export type Way = 'careful' | 'tangent' | 'secant';

/** Rows of a chain: from the first up to that before `beyond`. */
type Stretch = Pick<Laid, 'first' | 'beyond'>;

/**
 * Lines in place of the curves of rows.
 *
 * Secants from nothing on the curve; in a toe, where a row is closed or stiffens again, where those would not do, lines as steep as the row may become. The energy of
 * a row stays below that of such a line on either side of where they meet.
 */
export function rowLines(rows: readonly ModelRow[]): RowLines {
  const count = rows.length;
  const stiffness = new Float64Array(count);
  const constant = new Float64Array(count);
  const soft = new Uint8Array(count);
  const laws = rows.map(({ law }) => law);
  const nothing = Float64Array.from(laws, (law) => tiny * Math.max(...law.force));
  const firm = Float64Array.from(laws, (law) => law.firm);
  const elastic = Float64Array.from(laws, (law) => law.stiffness);
  /** Whether a row is on a line from nothing that only what it has seen decides on. */
  const onLine = (j: number, wj: number, m: number): boolean =>
    wj > 0 && wj <= m && (wj > (firm[j] as number) || (laws[j] as RowLaw).straight);

  const draw: RowLines['draw'] = (w, largest, way, { first, beyond }, changed) => {
    const secant = way === 'secant';
    let constants = false;
    for (let j = first; j < beyond; j++) {
      const wj = w[j] as number;
      const m = firmAgain((laws[j] as RowLaw).firmer, largest[j] as number);
      let k = 0;
      let c = 0;
      // The line of a row that was closed or in its toe does not tell how far it opens: on the way it first comes to what it has seen.
      const opens = way === 'careful' && wj > m && soft[j] === 1;
      soft[j] = wj > 0 && onLine(j, Math.min(wj, m), m) ? 0 : 1;
      if (opens || (onLine(j, wj, m) && (secant || wj < m || m === firm[j]))) {
        k = (elastic[j] as number) * (m > (firm[j] as number) ? leftAt(laws[j] as RowLaw, m) : 1);
      } else if (secant || wj > 0) {
        const law = laws[j] as RowLaw;
        const again = secant && wj > m && law.firmer.some(({ to }) => to > m);
        if (secant && wj > m && !again) k = forceAfter(law, wj, m) / wj;
        else {
          k = again ? steepestFrom(law, wj, m) : secant ? leftAt(law, m) * law.steepest : slopeAfter(law, wj, m);
          c = forceAfter(law, wj, m) - k * wj;
        }
      }
      if (k !== stiffness[j]) changed(j);
      stiffness[j] = k;
      constant[j] = c;
      if (c !== 0) constants = true;
    }
    return constants;
  };

  const meet: RowLines['meet'] = (w, largest, { first, beyond }) => {
    for (let j = first; j < beyond; j++) {
      const wj = w[j] as number;
      const m = firmAgain((laws[j] as RowLaw).firmer, largest[j] as number);
      if (m === firm[j] && stiffness[j] === elastic[j] && constant[j] === 0 && onLine(j, wj, m)) continue;
      const F = forceAfter(laws[j] as RowLaw, wj, m);
      const rise = (stiffness[j] as number) * wj;
      const c = constant[j] as number;
      const allowed = exact * F + rounding * (Math.abs(rise) + Math.abs(c)) + (nothing[j] as number);
      if (!(Math.abs(F - rise - c) <= allowed)) return false;
    }
    return true;
  };
  return { stiffness, constant, draw, meet };
}
