import { roomFor } from './lettering.js';
import { threadLook } from './look/index.js';
import { element, label, line } from './markup.js';
import type { StitchFigureInput } from './stitch-input.js';

type Thread = StitchFigureInput['threads'][number];

/** Half the distance at which thread on both faces of one run is drawn side by side, px. */
const apart = 2.6;

/** A run by its ends, whichever comes first. */
function runKey({ from, to }: Thread): string {
  return [`${from.x} ${from.y}`, `${to.x} ${to.y}`].sort().join(' ');
}

/** Runs with thread on both faces. */
function doubleRuns(threads: readonly Thread[]): Set<string> {
  const on = (face: Thread['face']) => new Set(threads.filter((thread) => thread.face === face).map(runKey));
  const below = on('bottom');
  return new Set([...on('top')].filter((key) => below.has(key)));
}

/** The same place in px. */
export interface Place {
  readonly x: (at: number) => number;
  readonly y: (at: number) => number;
}

/** Thread below dashed, then thread on top solid; side by side where both faces of a run carry thread. */
export function threadLines(threads: readonly Thread[], { x, y }: Place): string[] {
  const both = doubleRuns(threads);
  const drawn = (face: Thread['face'], classes: string): string[] =>
    threads
      .filter((thread) => thread.face === face)
      .map((thread) => {
        const [x1, y1, x2, y2] = [x(thread.from.x), y(thread.from.y), x(thread.to.x), y(thread.to.y)];
        const length = Math.hypot(x2 - x1, y2 - y1);
        if (!both.has(runKey(thread)) || length === 0) return line(x1, y1, x2, y2, classes);
        // Top thread toward the upper or left side, whichever way the run is sewn.
        const turned = x2 > x1 || (x2 === x1 && y2 < y1) ? 1 : -1;
        const side = (face === 'top' ? apart : -apart) * turned;
        const [dx, dy] = [((y2 - y1) / length) * side, (-(x2 - x1) / length) * side];
        return line(x1 + dx, y1 + dy, x2 + dx, y2 + dy, classes);
      });
  return [...drawn('bottom', threadLook.bottom), ...drawn('top', threadLook.top)];
}

const sample = 30;
const gap = 8;
const between = 18;
const names = ['thread on top', 'thread below'] as const;
/** Where each sample of the legend begins, px from its left. */
const [topAt, belowAt, holeAt] = [0, 1, 2].map((count) =>
  names.slice(0, count).reduce((sum, name) => sum + sample + gap + roomFor(name) + between, 0),
) as [number, number, number];
const holeRadius = 5;

const holeWords = (hole: string): string => `hole ${hole}`;

/** Room that the legend takes, px. */
export const legendWidth = (hole: string): number => holeAt + 2 * holeRadius + gap + roomFor(holeWords(hole));

/** Sample strokes with their names, and the size of a hole. */
export function threadLegend(left: number, y: number, hole: string): string[] {
  const words = (text: string, x: number): string => label(text, x, y + 4.5);
  const stroke = (at: number, look: string, name: string): string[] => [
    line(left + at, y, left + at + sample, y, look),
    words(name, left + at + sample + gap),
  ];
  return [
    ...stroke(topAt, threadLook.top, names[0]),
    ...stroke(belowAt, threadLook.bottom, names[1]),
    element('circle', { class: 'sv-hole', cx: left + holeAt + holeRadius, cy: y, r: holeRadius }),
    words(holeWords(hole), left + holeAt + 2 * holeRadius + gap),
  ];
}
