import type { ChartSeries } from './chart-input.js';
import type { Place } from './chart-strokes.js';
import { seriesLook } from './look/index.js';
import { coordinate, element } from './markup.js';

/** The area between the low and the high values in the colour of the series, with a thin line along both. */
export function rangeDrawing(
  index: number,
  range: NonNullable<ChartSeries['range']>,
  place: (point: Place) => Place,
): string[] {
  if (range.length < 2) return [];
  const edge = (pick: 'low' | 'high'): string[] =>
    range.map((point) => {
      const { x, y } = place({ x: point.x, y: point[pick] });
      return `${coordinate(x)} ${coordinate(y)}`;
    });
  const [low, high] = [edge('low'), edge('high')];
  const { dye } = seriesLook(index);
  return [
    element('path', { class: `sv-range sv-tint-${dye}`, d: `M${low.join('L')}L${[...high].reverse().join('L')}Z` }),
    ...[low, high].map((points) => element('path', { class: `sv-limit sv-${dye} sv-thin`, d: `M${points.join('L')}` })),
  ];
}

/** What stands behind the sample of a series with a range. */
export function shadedSample(index: number, x: number, y: number, width: number): string {
  const { dye } = seriesLook(index);
  return element('rect', { class: `sv-shade sv-tint-${dye}`, x, y: y - 7, width, height: 14 });
}
