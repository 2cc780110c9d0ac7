import { shadedSample } from './chart-range.js';
import { strokeLine, strokeSign } from './chart-strokes.js';
import { brokenLines, charactersIn, roomFor } from './lettering.js';
import { label } from './markup.js';

interface Entry {
  readonly label: string;
  readonly line: boolean;
  readonly sign: boolean;
  readonly shaded: boolean;
}

interface Legend {
  readonly markup: readonly string[];
  /** px */
  readonly height: number;
}

const sample = 46;
const gap = 10;
const between = 24;
const lineHeight = 17;
const rowGap = 6;

/** Samples of the strokes with their names in as many columns as there is room for; long names are broken. */
export function chartLegend(entries: readonly Entry[], left: number, top: number, room: number): Legend {
  const widest = Math.max(...entries.map(({ label }) => roomFor(label)));
  const most = Math.max(1, Math.floor((room + between) / (sample + gap + widest + between)));
  const rows = Math.ceil(entries.length / most);
  const columns = Math.ceil(entries.length / rows);
  const width = columns === 1 ? room : sample + gap + widest + between;
  const longest = columns === 1 ? charactersIn(room - sample - gap) : Number.POSITIVE_INFINITY;
  const markup: string[] = [];
  let y = top;
  for (let row = 0; row < rows; row++) {
    const here = entries.slice(row * columns, (row + 1) * columns);
    const words = here.map((entry) => brokenLines(entry.label, longest));
    here.forEach((entry, column) => {
      const x = left + column * width;
      const index = row * columns + column;
      const middle = { x: x + sample / 2, y };
      const ends = [
        { x, y },
        { x: x + sample, y },
      ];
      markup.push(
        ...(entry.shaded ? [shadedSample(index, x, y, sample)] : []),
        ...(entry.line ? strokeLine(index, ends, 'sv-sample') : []),
        ...(entry.sign ? [strokeSign(index, middle)] : []),
        ...(words[column] ?? []).map((text, i) => label(text, x + sample + gap, y + 4.5 + i * lineHeight)),
      );
    });
    y += Math.max(...words.map(({ length }) => length)) * lineHeight + rowGap;
  }
  return { markup, height: y - top - lineHeight - rowGap };
}
