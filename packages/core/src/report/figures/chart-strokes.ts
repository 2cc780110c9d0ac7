import { seriesLine, seriesLook } from './look/index.js';
import { coordinate, element } from './markup.js';

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
  const d = `M${points.join('L')}${closed && points.length > 2 ? 'Z' : ''}`;
  return [element('path', { class: `${hook} ${seriesLine(index)}`, d })];
}

/** The sign of a series at a place, filled with paper unless another sign is to be seen through it. */
export function strokeSign(index: number, place: Place, filled = true): string {
  const { dye, sign } = seriesLook(index);
  return element('path', {
    class: filled ? `sv-sign sv-${dye} sv-paper` : `sv-sign sv-${dye}`,
    d: `M${written(place)}${sign}`,
  });
}
