import type { StitchFigureInput } from './stitch-input.js';

/** A row of needle holes as a drawing needs it; lengths in m. */
export interface DrawnRow {
  readonly row: number;
  /** Mean distance from the lower side of the field. */
  readonly y: number;
  /** Ascending. */
  readonly x: readonly number[];
}

/** The holes of the first set gathered by row, the row nearest the lower side first. */
export function rowsOf(holes: StitchFigureInput['penetrations']): DrawnRow[] {
  const byRow = new Map<number, { x: number[]; y: number[] }>();
  for (const hole of holes) {
    if ((hole.set ?? 0) !== 0) continue;
    const row = byRow.get(hole.row) ?? { x: [], y: [] };
    row.x.push(hole.x);
    row.y.push(hole.y);
    byRow.set(hole.row, row);
  }
  return [...byRow]
    .map(([row, { x, y }]) => ({ row, y: y.reduce((sum, v) => sum + v, 0) / y.length, x: x.sort((a, b) => a - b) }))
    .sort((a, b) => a.y - b.y);
}

/** The first two neighbouring holes of a row that stand one pitch apart (within 1 %), or undefined. */
export function onePitch({ x }: DrawnRow, pitch: number): readonly [number, number] | undefined {
  for (const [i, here] of x.entries()) {
    const next = x[i + 1];
    if (next !== undefined && Math.abs(next - here - pitch) <= 0.01 * pitch) return [here, next];
  }
  return undefined;
}
