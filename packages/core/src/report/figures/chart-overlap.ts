import { alongLine } from './chart-marks.js';
import type { Place } from './chart-strokes.js';

/** A line of which more than this share lies on another cannot be told by its stroke. */
const hidden = 0.5;

/** More rows of cells than a drawing has. */
const rows = 2 ** 16;
/** From a cell to itself and its neighbours. */
const neighbours = [-1, 0, 1].flatMap((dx) => [-1, 0, 1].map((dy) => dx * rows + dy));

/** The number of the cell of 1 px that holds a place. */
const cellOf = ({ x, y }: Place): number => Math.round(x) * rows + Math.round(y);

/**
 * For each line the names of the cells that it shares with lines in the same place; empty when neither most of it lies on
 * another line nor most of another on it.
 */
function sharedCells(paths: readonly (readonly Place[])[]): Set<number>[] {
  const cells = paths.map((path) => new Set(alongLine(path, 1).map(cellOf)));
  const near = cells.map((own) => new Set([...own].flatMap((cell) => neighbours.map((by) => cell + by))));
  const common = (line: number, on: number): number[] => [...(cells[line] ?? [])].filter((cell) => near[on]?.has(cell));
  const most = (line: number, on: number): boolean => {
    const count = cells[line]?.size ?? 0;
    return count > 1 && common(line, on).length > hidden * count;
  };
  return paths.map((_, i) => {
    const others = paths.flatMap((_, other) => (other !== i && (most(i, other) || most(other, i)) ? [other] : []));
    return new Set(others.flatMap((other) => common(i, other)));
  });
}

/** Distance of the signs along a line, px. */
const period = 96;
/** Signs nearer than this touch, px. */
const apart = 11;

/**
 * For each line the places of signs that tell it from another in the same place, taking turns with those of the others;
 * none for a line that shows for itself.
 */
export function tellingPlaces(paths: readonly (readonly Place[])[]): Place[][] {
  const shared = sharedCells(paths);
  const count = shared.filter(({ size }) => size > 0).length;
  const taken: Place[] = [];
  let turn = 0;
  return paths.map((path, i) => {
    const cells = shared[i] ?? new Set();
    if (cells.size === 0) return [];
    const own: Place[] = [];
    let left = (period * (turn + 0.5)) / count;
    turn += 1;
    const line = alongLine(path, 1);
    line.forEach((at, k) => {
      const before = line[k - 1];
      if (before === undefined || !cells.has(cellOf(at))) return;
      left -= Math.hypot(at.x - before.x, at.y - before.y);
      if (left > 0 || taken.some((other) => Math.hypot(at.x - other.x, at.y - other.y) < apart)) return;
      own.push(at);
      taken.push(at);
      left += period;
    });
    return own;
  });
}
