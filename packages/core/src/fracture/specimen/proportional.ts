import { firmAgain } from './firm-again.js';
import type { Model, State } from './model.js';

/**
 * Factor by which displacement can grow while everything grows with it: up to the tip's limit, the strain limit of an arm, or an opening
 * of a row beyond what it has seen. For rows whose elastic part is straight. 1 or less where something gives way already; infinite where nothing would.
 */
export function proportionalLimit(model: Model, state: State): number {
  let factor = Number.POSITIVE_INFINITY;
  if (state.tip > 0) factor = model.tipLimit / state.tip;
  const strain = model.strain(state);
  if (strain > 0) factor = Math.min(factor, model.strainLimit / strain);
  for (let j = 0; j < state.opening.length; j++) {
    const w = state.opening[j] as number;
    const law = model.rows[j]?.law;
    if (law === undefined || w <= 0 || w > law.end) continue;
    factor = Math.min(factor, firmAgain(law.firmer, state.largest[j] as number) / w);
  }
  return factor;
}
