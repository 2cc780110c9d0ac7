import { formatQuantity } from '../../quantity/index.js';
import { dimensionAcross, dimensionUp } from './dimension.js';
import type { StitchFigureInput } from './stitch-input.js';
import { type DrawnRow, onePitch, rowsOf } from './stitch-rows.js';

/** Where a drawing of a field lies, px. */
export interface Sheet {
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (at: number) => number;
  readonly y: (at: number) => number;
}

/** More gaps between rows than this are shown by the first alone. */
const mostGaps = 6;

/** Pitch above the field; right of it the distance of the first row from the edge and those between rows. */
export function stitchDimensions(input: StitchFigureInput, { right, top, bottom, x, y }: Sheet): string[] {
  const { penetrations, pitch, rowSpacing, edge, units } = input;
  const rows = rowsOf(penetrations);
  const [first] = rows;
  const upper = rows.at(-1);
  const pair = upper && onePitch(upper, pitch);
  const size = (value: number): string => formatQuantity(value, 'length', { units, digits: 3 });
  const end = (row: DrawnRow): number => x(row.x.at(-1) ?? 0);
  const at = right + 16;
  const gaps = rows.slice(1).map((row, i) => ({ row, below: rows[i] ?? row }));
  const shown = rowSpacing === undefined ? [] : edge && gaps.length <= mostGaps ? gaps : gaps.slice(0, 1);
  return [
    ...(upper && pair
      ? dimensionAcross({
          from: x(pair[0]),
          to: x(pair[1]),
          at: top - 14,
          reach: y(upper.y),
          text: `pitch ${size(pitch)}`,
        })
      : []),
    ...(edge && first && first.y > 0
      ? dimensionUp({ from: bottom, to: y(first.y), at, reach: end(first), text: size(first.y) })
      : []),
    ...shown.flatMap(({ row, below }) =>
      dimensionUp({
        from: y(below.y),
        to: y(row.y),
        at,
        reach: Math.max(end(below), end(row)),
        text: size(edge ? row.y - below.y : (rowSpacing ?? 0)),
      }),
    ),
  ];
}
