import type { ResistancePoint, SpecimenState } from '../types.js';

/** Growth between two points of the curve at least, as a share of all growth. */
const apart = 1 / 400;

/**
 * Toughness against growth, piece by piece. By load: what beam theory makes of load and crack length where a piece of growth begins. By area: the work of the
 * piece less what unloading straight back would return, over the area grown: what a tester reads off the record of load and displacement.
 * A jump is a piece of its own.
 */
export function resistanceOf(
  states: readonly SpecimenState[],
  width: number,
  byLoad: (load: number, crackLength: number) => number,
): ResistancePoint[] {
  const first = states[0]?.crackLength ?? 0;
  const least = ((states.at(-1)?.crackLength ?? 0) - first) * apart;
  const points: ResistancePoint[] = [];
  let from = states[0];
  states.forEach((state, i) => {
    const next = states[i + 1];
    if (from === undefined) return;
    const growth = state.crackLength - from.crackLength;
    const jumps =
      next !== undefined &&
      next.crackLength - state.crackLength >= least &&
      (next.released ?? 0) > (state.released ?? 0);
    if (growth > 0 && (growth >= least || jumps || next === undefined)) {
      const spent = state.work - from.work - (state.load * state.displacement - from.load * from.displacement) / 2;
      points.push({
        growth: from.crackLength - first,
        byLoad: byLoad(from.load, from.crackLength),
        byArea: spent / (width * growth),
      });
      from = state;
    }
    // A piece begins at the last state before the crack moves.
    if (next !== undefined && next.crackLength > state.crackLength && state.crackLength === from.crackLength)
      from = state;
  });
  return points;
}
