import type { Box } from './chart-marks.js';
import { brokenLines, charactersIn, withoutCollisions } from './lettering.js';
import { element, label, line } from './markup.js';

/** An upright band in px. */
interface ColumnPlace {
  readonly label: string;
  readonly left: number;
  readonly right: number;
}

/** Room that the letters of columns take at the top of the chart, px. */
export const columnHead = 22;
const lineHeight = 17;
const letterRoom = 20;
const letterGap = 14;

/** The letter of a column: a, b, c and so on. */
export const columnLetter = (index: number): string => 'abcdefghijklmnpqrstuvwyz'[index] ?? '+';

/** Every other column filled, a hairline at every edge, and the letters at the top, those of narrow neighbours left out. */
export function columnFills(columns: readonly ColumnPlace[], { top, bottom }: Box): string[] {
  const edges = new Set(columns.flatMap(({ left, right }) => [left, right].map((x) => Math.round(x * 100) / 100)));
  const middles = columns.map(({ left, right }) => ({ at: (left + right) / 2, size: right - left }));
  return [
    ...columns.map(({ left, right }, i) =>
      element('rect', {
        class: `sv-column ${i % 2 === 0 ? 'sv-cloth' : 'sv-paper'}`,
        x: left,
        y: top,
        width: right - left,
        height: bottom - top,
      }),
    ),
    ...[...edges].map((x) => line(x, top, x, bottom, 'sv-hair')),
    ...withoutCollisions(middles, letterGap).map((i) =>
      label(columnLetter(i), middles[i]?.at ?? 0, top + 15, 'sv-strong sv-muted', 'middle'),
    ),
  ];
}

/** What the letters stand for, one below the other. */
export function columnLegend(
  labels: readonly string[],
  left: number,
  top: number,
  room: number,
): { markup: string[]; height: number } {
  const lines = labels.flatMap((text, i) =>
    brokenLines(text, charactersIn(room - letterRoom)).map((words, k) => ({
      words,
      letter: k === 0 ? columnLetter(i) : '',
    })),
  );
  return {
    markup: lines.flatMap(({ words, letter }, i) => {
      const y = top + i * lineHeight + 4.5;
      return [
        ...(letter === '' ? [] : [label(letter, left, y, 'sv-strong sv-muted')]),
        label(words, left + letterRoom, y),
      ];
    }),
    height: lines.length * lineHeight,
  };
}
