import type { ModelRow } from './model.js';
import { forceAfter, leftAt, type RowLaw, slopeAfter } from './row-law.js';

/** How well line and curve agree at the end: as a share of the force, of the terms of the line (rounding), of the greatest force. */
const exact = 1e-9;
const rounding = 1e-13;
const tiny = 1e-18;

/** Rows as straight lines F = stiffness w + constant, in arrays that are rewritten. */
export interface RowLines {
  readonly stiffness: Float64Array;
  readonly constant: Float64Array;
  /** Draws the lines at openings w, rows having seen `largest`: tangents, or secants. Says whether any constant differs from 0. */
  draw(w: Float64Array, largest: Float64Array, secant: boolean): boolean;
  /** Whether all lines meet their curves at openings w. */
  meet(w: Float64Array, largest: Float64Array): boolean;
}

/**
 * Lines in place of the curves of rows.
 *
 * Secants from nothing on the curve; in a toe or where a row is closed, where those would not do, lines as steep as the row may become. The energy of
 * a row stays below that of such a line on either side of where they meet.
 */
export function rowLines(rows: readonly ModelRow[]): RowLines {
  const count = rows.length;
  const stiffness = new Float64Array(count);
  const constant = new Float64Array(count);
  const laws = rows.map(({ law }) => law);
  const nothing = laws.map((law) => tiny * Math.max(...law.force));

  const draw = (w: Float64Array, largest: Float64Array, secant: boolean): boolean => {
    let constants = false;
    for (let j = 0; j < count; j++) {
      const law = laws[j] as RowLaw;
      const wj = w[j] as number;
      const m = largest[j] as number;
      let k = 0;
      let c = 0;
      const fromNothing = wj > 0 && (wj > m ? secant : law.straight || wj > law.firm);
      if (fromNothing) k = forceAfter(law, wj, m) / wj;
      else if (secant || wj > 0) {
        k = secant ? leftAt(law, m) * law.steepest : slopeAfter(law, wj, m);
        c = forceAfter(law, wj, m) - k * wj;
      }
      stiffness[j] = k;
      constant[j] = c;
      if (c !== 0) constants = true;
    }
    return constants;
  };

  const meet = (w: Float64Array, largest: Float64Array): boolean => {
    for (let j = 0; j < count; j++) {
      const wj = w[j] as number;
      const F = forceAfter(laws[j] as RowLaw, wj, largest[j] as number);
      const rise = (stiffness[j] as number) * wj;
      const c = constant[j] as number;
      const allowed = exact * F + rounding * (Math.abs(rise) + Math.abs(c)) + (nothing[j] as number);
      if (!(Math.abs(F - rise - c) <= allowed)) return false;
    }
    return true;
  };
  return { stiffness, constant, draw, meet };
}
