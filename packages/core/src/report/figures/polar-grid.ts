import { element, label, line } from './markup.js';

/** Centre and outer radius of a polar plot, px. */
export interface PolarPlace {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

const degree = Math.PI / 180;
/** Rings are numbered along this ray, between the spokes. */
const numbered = 45;

/** Rings at the given values. */
export function rings(place: PolarPlace, radiusOf: (value: number) => number, values: readonly number[]): string[] {
  return values.map((value) => element('circle', { class: 'sv-hair', cx: place.x, cy: place.y, r: radiusOf(value) }));
}

/** The numbers of the rings, the outermost with the unit and outside; drawn last, so that no curve crosses them. */
export function ringNumbers(
  place: PolarPlace,
  radiusOf: (value: number) => number,
  values: readonly number[],
  unit: string,
): string[] {
  const along = { x: Math.cos(numbered * degree), y: -Math.sin(numbered * degree) };
  return values.map((value, i) => {
    const last = i === values.length - 1;
    const r = radiusOf(value) + (last ? 10 : 0);
    const words = last && unit !== '' ? `${value} ${unit}` : String(value);
    const anchor = last ? undefined : 'middle';
    return label(words, place.x + r * along.x, place.y + r * along.y + 4, 'sv-muted sv-halo', anchor);
  });
}

/** A spoke every 30 degrees with its angle; the laminate's axes x and y are named. */
export function spokes(place: PolarPlace): string[] {
  return Array.from({ length: 12 }, (_, i) => i * 30).flatMap((angle) => {
    const x = Math.cos(angle * degree);
    const y = -Math.sin(angle * degree);
    const words = angle === 0 ? '0° x' : angle === 90 ? '90° y' : `${angle}°`;
    const anchor = Math.abs(x) < 0.3 ? 'middle' : x < 0 ? 'end' : undefined;
    return [
      line(
        place.x,
        place.y,
        place.x + place.radius * x,
        place.y + place.radius * y,
        angle % 90 === 0 ? 'sv-axis' : 'sv-hair',
      ),
      label(words, place.x + (place.radius + 8) * x, place.y + (place.radius + 13) * y + 4, 'sv-muted', anchor),
    ];
  });
}
