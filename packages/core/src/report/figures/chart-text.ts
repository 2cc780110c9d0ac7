import type { ChartAxis } from './chart-axes.js';
import { columnLetter } from './chart-columns.js';
import { type ChartInput, placesOf } from './chart-input.js';
import { brokenLines, shortened, withoutCollisions } from './lettering.js';
import { seriesLook } from './look/index.js';
import { withoutControls } from './markup.js';

const rows = 18;
const mostColumns = 64;
const lineWidth = 76;
const longestBand = 18;
const letters = 'ABCDEFGHIJKLMNPQRSTUVWYZ';

const widthOf = (text: string): number => [...text].length;
const letterOf = (index: number): string => letters[index] ?? '@';

/** The cell of a value among `count` along an axis. */
const cellOf = (value: number, { low, high }: ChartAxis, count: number): number =>
  Math.round(((value - low) / (high - low)) * (count - 1));

/** The cells of the drawing, the upper row first: zero lines, then every series, then the letters of the marks. */
function cells(input: ChartInput, x: ChartAxis, y: ChartAxis, columns: number): string[][] {
  const grid = Array.from({ length: rows }, () => new Array<string>(columns).fill(' '));
  const put = (column: number, row: number, character: string): void => {
    const line = grid[row];
    if (line) line[column] = character;
  };
  const column = (value: number): number => cellOf(x.shown(value), x, columns);
  const row = (value: number): number => rows - 1 - cellOf(y.shown(value), y, rows);
  const upright = x.low < 0 && x.high > 0 ? cellOf(0, x, columns) : undefined;
  const level = y.low < 0 && y.high > 0 ? rows - 1 - cellOf(0, y, rows) : undefined;
  if (level !== undefined) for (let i = 0; i < columns; i++) put(i, level, '-');
  if (upright !== undefined) for (let i = 0; i < rows; i++) put(upright, i, i === level ? '+' : '|');

  input.series.forEach(({ range = [] }) => {
    range.forEach((from, i) => {
      const to = range[i + 1] ?? from;
      const [c, dc] = [column(from.x), column(to.x)];
      for (let k = 0; k <= dc - c; k++) {
        const share = dc === c ? 0 : k / (dc - c);
        put(c + k, row(from.low + (to.low - from.low) * share), '.');
        put(c + k, row(from.high + (to.high - from.high) * share), '.');
      }
    });
  });

  // Where series share a cell they take turns from cell to cell, so that none is hidden.
  const taken = new Map<number, Set<number>>();
  input.series.forEach((one, index) => {
    const { points, closed = false, apart } = one;
    const ends = closed ? [...points, ...points.slice(0, 1)] : placesOf(one);
    ends.forEach((point, i) => {
      const joined = apart === undefined || (apart === 'stems' && i % 2 === 0);
      const next = (joined ? ends[i + 1] : undefined) ?? point;
      const [c, r, dc, dr] = [column(point.x), row(point.y), column(next.x), row(next.y)];
      const steps = Math.max(1, Math.abs(dc - c), Math.abs(dr - r));
      for (let k = 0; k <= steps; k++) {
        const key = Math.round(r + ((dr - r) * k) / steps) * columns + Math.round(c + ((dc - c) * k) / steps);
        taken.set(key, (taken.get(key) ?? new Set()).add(index));
      }
    });
  });
  for (const [key, set] of taken) {
    const [c, r] = [key % columns, Math.floor(key / columns)];
    put(c, r, seriesLook([...set][(c + r) % set.size] ?? 0).character);
  }
  input.marks?.forEach((mark, i) => {
    put(column(mark.x), row(mark.y), letterOf(i));
  });
  return grid;
}

/** The letters of columns over the middle of each, one that would meet another left out. */
function columnLetters({ columns = [] }: ChartInput, x: ChartAxis, count: number): string[] {
  if (columns.length === 0) return [];
  const middles = columns.map(({ from, to }) => ({
    at: cellOf(x.shown((from + to) / 2), x, count),
    size: Math.abs(to - from),
  }));
  const line = new Array<string>(count).fill(' ');
  for (const i of withoutCollisions(middles, 2)) line[middles[i]?.at ?? 0] = columnLetter(i);
  return [line.join('')];
}

/** Names of bands by the row in which they stand. */
function bandNames({ bands = [] }: ChartInput, y: ChartAxis): Map<number, string> {
  const middles = bands.map(({ from, to }) => ({
    at: rows - 1 - cellOf(y.shown((from + to) / 2), y, rows),
    size: Math.abs(to - from),
  }));
  return new Map(
    withoutCollisions(middles, 1).map((i) => [
      middles[i]?.at ?? 0,
      shortened(withoutControls(bands[i]?.label ?? ''), longestBand),
    ]),
  );
}

/** Entries beside each other, as many as fit a line. */
function legendLines(entries: readonly string[]): string[] {
  const lines: string[] = [];
  for (const entry of entries) {
    const together = `${lines.at(-1) ?? ''}   ${entry}`;
    if (lines.length > 0 && widthOf(together) <= lineWidth) lines[lines.length - 1] = together;
    else lines.push(...brokenLines(entry, lineWidth - 2).map((text, i) => (i === 0 ? text : `  ${text}`)));
  }
  return lines;
}

/** The chart in characters for a terminal of 80 columns: its own character for every series, a letter for every mark. */
export function chartText(input: ChartInput, x: ChartAxis, y: ChartAxis): string {
  const names = bandNames(input, y);
  const zero = y.low < 0 && y.high > 0 ? rows - 1 - cellOf(0, y, rows) : -1;
  const beside = new Map([
    [zero, '0'],
    [0, y.written(y.high)],
    [rows - 1, y.written(y.low)],
  ]);
  const left = Math.max(...[...beside.values()].map(widthOf));
  const right = Math.max(0, ...[...names.values()].map((name) => widthOf(name) + 2));
  const columns = Math.min(mostColumns, lineWidth - left - 2 - right);
  const indent = ' '.repeat(left + 2);
  const drawn = cells(input, x, y, columns).map((line, row) => {
    const name = names.get(row);
    return `${(beside.get(row) ?? '').padStart(left)} |${line.join('')}${name === undefined ? '' : `  ${name}`}`;
  });
  const ends = [x.written(x.low), x.written(x.high)] as const;
  const below = ends[0] + ends[1].padStart(columns - widthOf(ends[0]));
  const middle = x.low < 0 && x.high > 0 ? cellOf(0, x, columns) : 0;
  const free = middle > widthOf(ends[0]) && middle < columns - widthOf(ends[1]) - 1;
  const numbers = free ? `${below.slice(0, middle)}0${below.slice(middle + 1)}` : below;
  const title = brokenLines(withoutControls(x.title), columns);
  return [
    ...brokenLines(withoutControls(y.title), lineWidth),
    ...columnLetters(input, x, columns).map((text) => indent + text),
    ...drawn,
    `${' '.repeat(left)} +${'-'.repeat(columns)}`,
    indent + numbers,
    ...title.map((text) => indent + text.padStart(columns)),
    '',
    ...legendLines([
      ...input.series.map(({ label }, i) => `${seriesLook(i).character} ${withoutControls(label)}`),
      ...(input.marks ?? []).map(({ label }, i) => `${letterOf(i)} ${withoutControls(label)}`),
      ...(input.series.some(({ range = [] }) => range.length > 0) ? ['. ends of a range'] : []),
      ...(input.columns ?? []).map(({ label }, i) => `${columnLetter(i)} ${withoutControls(label)}`),
    ]),
  ]
    .map((text) => text.trimEnd())
    .join('\n');
}
