import { arrows } from './dimension.js';
import { roomFor } from './lettering.js';
import { coordinate, label, line } from './markup.js';

/** A horizontal distance that is to be written beside a drawing, px. */
export interface Distance {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** Where the line at each end begins, px from the top. */
  readonly reach: readonly [number, number];
}

interface Sheet {
  /** Height of the level nearest to the drawing, px from the top. */
  readonly first: number;
  /** Levels follow upward or downward. */
  readonly way: 'up' | 'down';
  /** Between these all words stay, px. */
  readonly left: number;
  readonly right: number;
}

const levelHeight = 24;
const gap = 8;
const tail = 12;
const roomForArrows = 18;

/**
 * Dimension lines in as many levels as it takes for none to touch another, the shortest nearest to the drawing. Lines come first, then words, which hide
 * what passes behind them.
 */
export function distances(
  all: readonly Distance[],
  { first, way, left, right }: Sheet,
): { markup: string[]; levels: number } {
  const taken: { from: number; to: number }[][] = [];
  const lines: string[] = [];
  const words: string[] = [];
  for (const one of [...all].sort((a, b) => a.to - a.from - (b.to - b.from))) {
    const room = roomFor(one.text);
    const middle = Math.max(left + room / 2, Math.min(right - room / 2, (one.from + one.to) / 2));
    const out = one.to - one.from >= roomForArrows ? 0 : tail;
    const box = {
      from: Math.min(one.from - out, middle - room / 2) - gap,
      to: Math.max(one.to + out, middle + room / 2) + gap,
    };
    const free = taken.findIndex((level) => level.every(({ from, to }) => to <= box.from || from >= box.to));
    const level = free < 0 ? taken.length : free;
    taken[level] = [...(taken[level] ?? []), box];
    const y = first + (way === 'up' ? -level : level) * levelHeight;
    const over = way === 'up' ? -4 : 4;
    lines.push(
      line(one.from, one.reach[0], one.from, y + over, 'sv-hair'),
      line(one.to, one.reach[1], one.to, y + over, 'sv-hair'),
      line(one.from - out, y, one.to + out, y, 'sv-axis sv-distance'),
      ...arrows(one.from, one.to, (along, across) => `${coordinate(along)} ${coordinate(y + across)}`),
    );
    words.push(label(one.text, middle, y - 6, 'sv-halo', 'middle'));
  }
  return { markup: [...lines, ...words], levels: taken.length };
}

/** Height of that many levels, px. */
export const levelsHeight = (levels: number): number => levels * levelHeight;
