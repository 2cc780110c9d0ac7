import type { ResistancePoint } from '../types.js';

/** Growth between two points of the curve at least, as a share of all growth. */
const apart = 1 / 400;

/** A state on the way as the resistance sees it; SI or any units that agree. */
export interface Moment {
  readonly crackLength: number;
  /** Toughness that a tester makes of the load there. */
  readonly byLoad: number;
  readonly work: number;
  /** What unloading would return. */
  readonly stored: number;
  /** Set free in jumps so far. */
  readonly released: number;
}

/**
 * Toughness against growth, piece by piece. By load: what a tester makes of the load where a piece of growth begins. By area: the work of the
 * piece less what unloading would return, over the area grown: what a tester reads off the record of load and displacement.
 * A jump is a piece of its own. The curve ends at the last state, where an arm breaks or the test is ended; by area with the piece before. Where
 * the specimen got there in a jump, it ends where that began.
 *
 * @param settled false where the last state is pulled beyond its balance, as where growth is cut off: then there is nothing to read there
 */
export function resistanceOf(moments: readonly Moment[], width: number, settled = true): ResistancePoint[] {
  const first = moments[0]?.crackLength ?? 0;
  return piecesOf(moments, settled).map(({ from, spent, growth }) => ({
    growth: from.crackLength - first,
    byLoad: from.byLoad,
    byArea: spent / (width * growth),
  }));
}

/** A piece of growth, from a state on. */
export interface Piece<One extends Moment> {
  readonly from: One;
  /** Work of the piece, and what unloading would return more after it. */
  readonly work: number;
  readonly stored: number;
  /** Their difference. */
  readonly spent: number;
  readonly growth: number;
  /** True of the state at the end, which has the work of the piece before. */
  readonly end?: true;
}

/** The pieces of `resistanceOf`. */
export function piecesOf<One extends Moment>(moments: readonly One[], settled = true): readonly Piece<One>[] {
  const first = moments[0]?.crackLength ?? 0;
  const least = ((moments.at(-1)?.crackLength ?? 0) - first) * apart;
  const pieces: Piece<One>[] = [];
  let from = moments[0];
  moments.forEach((moment, i) => {
    const next = moments[i + 1];
    if (from === undefined) return;
    const growth = moment.crackLength - from.crackLength;
    const jumps =
      next !== undefined && next.crackLength - moment.crackLength >= least && next.released > moment.released;
    if (growth > 0 && (growth >= least || jumps || next === undefined)) {
      const [work, stored] = [moment.work - from.work, moment.stored - from.stored];
      pieces.push({ from, work, stored, spent: work - stored, growth });
      from = moment;
    }
    // A piece begins at the last state before the crack moves.
    if (next !== undefined && next.crackLength > moment.crackLength && moment.crackLength === from.crackLength)
      from = moment;
  });
  const [end, before] = [moments.at(-1), moments.at(-2)];
  const piece = pieces.at(-1);
  if (settled && end !== undefined && piece !== undefined && end.released === before?.released) {
    pieces.push({ ...piece, from: end, end: true });
  }
  return pieces;
}
