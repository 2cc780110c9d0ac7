import type { Model, ModelRow, State } from './model.js';
import { forceAfter, lostAt, storedAfter } from './row-law.js';

/** Where the energy of a state is, J. */
export interface Stored {
  /** In arms, bed and threads, all of it given back when unloaded. */
  readonly elastic: number;
  /** Lost by threads so far. */
  readonly thread: number;
}

/**
 * Energy of a state. Arms and bed are linear, so theirs is half the work of all forces on them at their last size (Clapeyron):
 * (P Δ - Σ F w - Σ f s)/2. Threads have their own.
 */
export function stored(model: Model, { load, displacement, opening, largest, rubbed }: State): Stored {
  let elastic = (load * displacement) / 2;
  let thread = 0;
  for (const { slid, force } of rubbed) elastic -= (slid * force) / 2;
  for (let j = 0; j < model.rows.length; j++) {
    const { law } = model.rows[j] as ModelRow;
    const w = opening[j] as number;
    const m = largest[j] as number;
    thread += lostAt(law, m);
    elastic += storedAfter(law, w, m) - (forceAfter(law, w, m) * w) / 2;
  }
  return { elastic, thread };
}
