import type { Place } from './chart-strokes.js';
import { brokenLines, roomFor } from './lettering.js';
import { element, label } from './markup.js';

/** A rectangle in px. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface NamedPlace extends Place {
  readonly label: string;
  readonly spare?: true;
}

const longestLine = 24;
const lineHeight = 16;
const radius = 5.5;

const around = ({ x, y }: Place, r: number): Box => ({ left: x - r, right: x + r, top: y - r, bottom: y + r });
const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
const holds = (box: Box, { x, y }: Place): boolean => x > box.left && x < box.right && y > box.top && y < box.bottom;

/** Places along a line, no further apart than a step, px. */
export function alongLine(places: readonly Place[], step = 4): Place[] {
  return places.flatMap((here, i) => {
    const next = places[i + 1];
    if (next === undefined) return [here];
    const count = Math.max(1, Math.ceil(Math.hypot(next.x - here.x, next.y - here.y) / step));
    return Array.from({ length: count }, (_, k) => ({
      x: here.x + ((next.x - here.x) * k) / count,
      y: here.y + ((next.y - here.y) * k) / count,
    }));
  });
}

/** A box of the given size beside a place, pushed into the frame: right, left, above, below, then the corners. */
function boxesBeside({ x, y }: Place, width: number, height: number, frame: Box): Box[] {
  const [reach, rise] = [radius + 5, radius + 3];
  const sides = [
    [x + reach, y - height / 2],
    [x - reach - width, y - height / 2],
    [x - width / 2, y - rise - height],
    [x - width / 2, y + rise],
    [x + reach - 4, y - rise - height + 4],
    [x - reach + 4 - width, y - rise - height + 4],
    [x + reach - 4, y + rise - 4],
    [x - reach + 4 - width, y + rise - 4],
  ] as const;
  return sides.map(([wantedLeft, wantedTop]) => {
    const left = Math.max(frame.left, Math.min(frame.right - width, wantedLeft));
    const top = Math.max(frame.top, Math.min(frame.bottom - height, wantedTop));
    return { left, top, right: left + width, bottom: top + height };
  });
}

/** For each name the box, inside the frame, that covers fewest other names, marks and lines; none for a spare name without room. */
function nameBoxes(marks: readonly NamedPlace[], lines: readonly Place[], frame: Box): (Box | undefined)[] {
  const rings = marks.map((mark) => around(mark, radius));
  const placed: (Box | undefined)[] = [];
  for (const mark of marks) {
    const words = brokenLines(mark.label, longestLine);
    const width = Math.max(...words.map((text) => roomFor(text))) + 6;
    const candidates = boxesBeside(mark, width, words.length * lineHeight, frame);
    const covered = (box: Box): number =>
      [...placed, ...rings].filter((other) => other !== undefined && overlap(box, other)).length;
    const cost = (box: Box): number => 1000 * covered(box) + lines.filter((place) => holds(box, place)).length;
    const free = mark.spare === true ? candidates.filter((box) => covered(box) === 0) : candidates;
    const costs = free.map(cost);
    placed.push(free[costs.indexOf(Math.min(...costs))]);
  }
  return placed;
}

/** Rings with a dot at the marks, and their names beside them. */
export function markDrawings(marks: readonly NamedPlace[], lines: readonly Place[], frame: Box): string[] {
  const boxes = nameBoxes(marks, lines, frame);
  return [
    ...marks.map(({ x, y }) =>
      element(
        'g',
        { class: 'sv-mark' },
        element('circle', { class: 'sv-hole sv-ring', cx: x, cy: y, r: radius }),
        element('circle', { class: 'sv-solid', cx: x, cy: y, r: 2 }),
      ),
    ),
    ...marks.flatMap((mark, i) => {
      const box = boxes[i];
      if (box === undefined) return [];
      const anchor = box.right <= mark.x ? 'end' : box.left >= mark.x - radius ? undefined : 'middle';
      const x = anchor === 'end' ? box.right - 3 : anchor === 'middle' ? (box.left + box.right) / 2 : box.left + 3;
      return brokenLines(mark.label, longestLine).map((text, row) =>
        label(text, x, box.top + row * lineHeight + 12.5, 'sv-strong sv-halo', anchor),
      );
    }),
  ];
}
