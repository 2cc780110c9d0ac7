import type { BridgingFailure } from '../../stitch/index.js';
import type { Chain } from './chain.js';
import type { RowLaw } from './row-law.js';

/** A row in a model. */
export interface ModelRow {
  /** m */
  readonly place: number;
  readonly law: RowLaw;
  readonly failure: BridgingFailure;
  /** Number of the row as given. */
  readonly index: number;
}

/** A specimen made ready: structure, rows, and what it takes to grow or to break. Totals, not per width. */
export interface Model {
  readonly chain: Chain;
  readonly rows: readonly ModelRow[];
  /** Opening (or sliding) of the bed at the tip at which the bond gives way, m: √(2 G0/k). */
  readonly tipLimit: number;
  /** Work of the bond per growth, J/m: G0 b. */
  readonly bondWork: number;
  /** Growth ends here, m. */
  readonly longest: number;
  /** Largest surface strain of an arm. */
  strain(state: State): number;
  readonly strainLimit: number;
}

/** A state of a model. */
export interface State {
  readonly crackLength: number;
  readonly displacement: number;
  readonly load: number;
  /** Opening of the bed at the tip, m. */
  readonly tip: number;
  /** Opening of each row, now and at its largest, m. */
  readonly opening: Float64Array;
  readonly largest: Float64Array;
  /** Sliding where faces rub, m, and friction there, N. */
  readonly rubbed: readonly { readonly slid: number; readonly force: number }[];
}
