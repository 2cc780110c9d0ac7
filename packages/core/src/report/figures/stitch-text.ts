import { formatQuantity } from '../../quantity/index.js';
import type { StitchFigureInput } from './stitch-input.js';
import { rowsOf } from './stitch-rows.js';

const fullWidth = 56;
/** More lines than this are no drawing: then the second set of a crossing pattern is left to the numbers. */
const mostLines = 60;

type Holes = StitchFigureInput['penetrations'];
type Columns = (x: number) => number;

/** Distances of all holes from the lower side, each once, the highest first; rounding does not make two of one. */
function heightsOf(holes: Holes, tolerance: number): number[] {
  const heights: number[] = [];
  for (const y of holes.map((hole) => hole.y).sort((a, b) => b - a)) {
    const last = heights.at(-1);
    if (last === undefined || last - y > tolerance) heights.push(y);
  }
  return heights;
}

const draw = (width: number, put: (characters: string[]) => void): string => {
  const characters = new Array<string>(width).fill(' ');
  put(characters);
  return characters.join('').trimEnd();
};

/** Two threads in one place: on both faces. */
const over = (present: string | undefined, own: string): string => (present === ' ' || present === own ? own : '=');

/** The holes of one height with the thread that lies along it: o hole, - thread on top, . below, = on both faces. */
function heightText(
  input: StitchFigureInput,
  holes: Holes,
  y: number,
  at: { width: number; column: Columns; near: number },
): string {
  const here = (value: number): boolean => Math.abs(value - y) <= at.near;
  return draw(at.width, (characters) => {
    for (const { from, to, face } of input.threads) {
      if (!here(from.y) || !here(to.y)) continue;
      for (let i = at.column(Math.min(from.x, to.x)); i <= at.column(Math.max(from.x, to.x)); i++) {
        characters[i] = over(characters[i], face === 'top' ? '-' : '.');
      }
    }
    for (const hole of holes) if (here(hole.y)) characters[at.column(hole.x)] = 'o';
  });
}

/** Thread that climbs from one height to the next: / \\ or |; nothing when none does. */
function betweenText(
  input: StitchFigureInput,
  upper: number,
  lower: number,
  at: { width: number; column: Columns; near: number },
): string {
  const joins = (a: number, b: number): boolean => Math.abs(a - upper) <= at.near && Math.abs(b - lower) <= at.near;
  return draw(at.width, (characters) => {
    for (const { from, to } of input.threads) {
      const [top, bottom] = from.y > to.y ? [from, to] : [to, from];
      if (!joins(top.y, bottom.y)) continue;
      const lean = at.column(top.x) - at.column(bottom.x);
      characters[at.column((top.x + bottom.x) / 2)] = lean === 0 ? '|' : lean > 0 ? '/' : '\\';
    }
  });
}

/** The pattern in characters, to scale along the rows: one line per height of holes, the lower side of the field at the bottom. */
export function stitchText(input: StitchFigureInput): string {
  const { field, edge, pitch, units } = input;
  const width = Math.max(12, Math.min(fullWidth, Math.round((field.width / pitch) * 8) + 1));
  const column = (x: number): number => Math.min(width - 1, Math.max(0, Math.round((x / field.width) * (width - 1))));
  const near = 1e-6 * field.height;
  const size = (value: number): string => formatQuantity(value, 'length', { units, digits: 3 });
  const firstSet = input.penetrations.filter((hole) => (hole.set ?? 0) === 0);
  const whole = heightsOf(input.penetrations, near).length <= mostLines;
  const holes = whole ? input.penetrations : firstSet;
  const named = heightsOf(firstSet, near);
  const heights = heightsOf(holes, near);
  const name = (y: number): string => (named.some((own) => Math.abs(own - y) <= near) ? `y ${size(y)}` : '');
  const left = Math.max(4, ...heights.map((y) => [...name(y)].length));
  const at = { width, column, near };
  const lines = heights.flatMap((y, i) => {
    const next = heights[i + 1];
    const between = next === undefined ? '' : betweenText(input, y, next, at);
    const own = `${name(y).padEnd(left)}  ${heightText(input, holes, y, at)}`.trimEnd();
    return between === '' ? [own] : [own, `${' '.repeat(left)}  ${between}`];
  });
  const climbs = heights.length > rowsOf(input.penetrations).length;
  return [
    ...lines,
    ...(edge ? [`${'edge'.padEnd(left)}  ${'#'.repeat(width)}`] : []),
    `o hole   - thread on top   . thread below   = both${climbs ? '   / \\ | thread across' : ''}   pitch ${size(pitch)}`,
    ...(whole ? [] : ['the second set of rows is not drawn here']),
  ].join('\n');
}
