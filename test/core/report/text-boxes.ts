import { named, readMarkup } from './markup.js';

/** A line of lettering by the room that it may take in the widest of usual faces. */
export interface TextBox {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const decoded = (text: string): string => text.replace(/&(amp|lt|gt|quot|#39);/g, 'x');

/** The boxes of all words of a drawing; 0.61 of its size is the width of a character, as measured for the widest of usual faces. */
export function textBoxes(svg: string): TextBox[] {
  return named(readMarkup(svg), 'text').map(({ attributes, text }) => {
    const size = 13;
    const width = 0.61 * size * [...decoded(text)].length;
    const x = Number(attributes.x);
    const left = { middle: x - width / 2, end: x - width }[attributes['text-anchor'] ?? ''] ?? x;
    const y = Number(attributes.y);
    return { text, left, right: left + width, top: y - 0.74 * size, bottom: y + 0.22 * size };
  });
}

/** Pairs of words that touch. */
export function overlaps(svg: string): string[] {
  const boxes = textBoxes(svg);
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.text} / ${b.text}`),
  );
}

/** Words that run out of the frame. */
export function outside(svg: string): string[] {
  const [, , width = 0, height = 0] = (/viewBox="([^"]*)"/.exec(svg)?.[1] ?? '').split(' ').map(Number);
  return textBoxes(svg)
    .filter(({ left, right, top, bottom }) => left < 0 || right > width || top < 0 || bottom > height)
    .map(({ text }) => text);
}
