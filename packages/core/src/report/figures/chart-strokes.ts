import { coordinate, element } from './markup.js';

/** How the series of a chart are told apart in black and white: by stroke, by sign, and by character in a terminal. */
interface Stroke {
  readonly colour: string;
  readonly classes?: string;
  readonly dashes?: string;
  /** The sign at a point, drawn around 0 0. */
  readonly sign: string;
  readonly character: string;
}

const strokes: readonly Stroke[] = [
  { colour: 'sv-cool', sign: 'm-3.8 0a3.8 3.8 0 1 0 7.6 0a3.8 3.8 0 1 0 -7.6 0Z', character: '*' },
  { colour: 'sv-warm', classes: 'sv-stitched', sign: 'm-3.5 -3.5h7v7h-7Z', character: 'o' },
  { colour: 'sv-ink', classes: 'sv-dotted', sign: 'm0 -4.8l4.4 7.6h-8.8Z', character: 'x' },
  { colour: 'sv-ink', classes: 'sv-dashdot', sign: 'm0 -5l4.4 5l-4.4 5l-4.4 -5Z', character: '#' },
  { colour: 'sv-cool', dashes: '17 6', sign: 'm0 4.8l4.4 -7.6h-8.8Z', character: '%' },
  { colour: 'sv-warm', dashes: '10 5 0.1 5 0.1 5', sign: 'm-3.6 -3.6l7.2 7.2m0 -7.2l-7.2 7.2', character: '~' },
];

const strokeOf = (index: number): Stroke => strokes[index] ?? { colour: 'sv-ink', sign: 'm0 0', character: '*' };

/** The character that draws a series in a terminal. */
export function characterOf(index: number): string {
  return strokeOf(index).character;
}

/** The colour and dashes of a series. */
export function looksOf(index: number): Pick<Stroke, 'colour' | 'classes' | 'dashes'> {
  return strokeOf(index);
}

/** A place on the drawing, px. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

const written = ({ x, y }: Place): string => `${coordinate(x)} ${coordinate(y)}`;

/** The places of a line as they are written, those equal to the one before left out. */
function distinct(places: readonly Place[], closed: boolean): string[] {
  const all = places.map(written);
  const different = all.filter((place, i) => i === 0 || place !== all[i - 1]);
  return closed && different.length > 1 && different.at(-1) === different[0] ? different.slice(0, -1) : different;
}

/** Whether a line through the places would be a point. */
export function isOnePlace(places: readonly Place[]): boolean {
  return new Set(places.map(written)).size < 2;
}

/** A line through places in the stroke of a series; nothing when all places are one. */
export function strokeLine(index: number, places: readonly Place[], hook: string, closed = false): string[] {
  if (isOnePlace(places)) return [];
  const points = distinct(places, closed);
  const { colour, classes = '', dashes } = strokeOf(index);
  const name = [hook, colour, 'sv-thick', classes].filter((part) => part !== '').join(' ');
  const d = `M${points.join('L')}${closed && points.length > 2 ? 'Z' : ''}`;
  return [element('path', { class: name, 'stroke-dasharray': dashes, d })];
}

/** The sign of a series at a place, filled with paper unless another sign is to be seen through it. */
export function strokeSign(index: number, place: Place, filled = true): string {
  const { colour, sign } = strokeOf(index);
  return element('path', {
    class: filled ? `sv-sign ${colour} sv-paper` : `sv-sign ${colour}`,
    style: 'stroke-width:1.6px',
    d: `M${written(place)}${sign}`,
  });
}
