import { formatQuantity } from '../../quantity/index.js';
import type { StitchFigureInput } from './stitch-input.js';
import { type DrawnRow, rowsOf } from './stitch-rows.js';

const fullWidth = 56;

/** One row in characters: o hole, - thread on top, . thread below, = thread on both faces. */
function rowText({ penetrations, threads, field }: StitchFigureInput, row: DrawnRow, width: number): string {
  const column = (x: number): number => Math.min(width - 1, Math.max(0, Math.round((x / field.width) * (width - 1))));
  const heights = new Set(
    penetrations.filter((hole) => hole.row === row.row && (hole.set ?? 0) === 0).map((hole) => hole.y),
  );
  const characters = new Array<string>(width).fill(' ');
  for (const { from, to, face } of threads) {
    if (from.y !== to.y || !heights.has(from.y)) continue;
    const own = face === 'top' ? '-' : '.';
    for (let i = column(Math.min(from.x, to.x)); i <= column(Math.max(from.x, to.x)); i++) {
      characters[i] = characters[i] === ' ' || characters[i] === own ? own : '=';
    }
  }
  for (const x of row.x) characters[column(x)] = 'o';
  return characters.join('').trimEnd();
}

/** The pattern in characters, to scale along the rows: one line per row, the lower side of the field at the bottom. */
export function stitchText(input: StitchFigureInput): string {
  const { field, edge, penetrations, pitch, units } = input;
  const width = Math.max(12, Math.min(fullWidth, Math.round((field.width / pitch) * 8) + 1));
  const size = (value: number): string => formatQuantity(value, 'length', { units, digits: 3 });
  const rows = rowsOf(penetrations).reverse();
  const names = rows.map((row) => `y ${size(row.y)}`);
  const left = Math.max(4, ...names.map((name) => [...name].length));
  return [
    ...rows.map((row, i) => `${(names[i] ?? '').padEnd(left)}  ${rowText(input, row, width)}`),
    ...(edge ? [`${'edge'.padEnd(left)}  ${'#'.repeat(width)}`] : []),
    `o hole   - thread on top   . thread below   = both   pitch ${size(pitch)}`,
  ].join('\n');
}
