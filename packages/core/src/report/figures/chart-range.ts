import type { ChartSeries } from './chart-input.js';
import { looksOf, type Place } from './chart-strokes.js';
import { coordinate, element } from './markup.js';

const shades: Readonly<Record<string, string>> = {
  'sv-cool': 'fill:var(--sv-cool,#2f4486);fill-opacity:.14',
  'sv-warm': 'fill:var(--sv-warm,#a23a2c);fill-opacity:.14',
};
const grey = 'fill:var(--sv-muted,#59606d);fill-opacity:.14';
const shadeOf = (index: number): string => shades[looksOf(index).colour] ?? grey;

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
  const { colour } = looksOf(index);
  return [
    element('path', {
      class: 'sv-range',
      style: shadeOf(index),
      d: `M${low.join('L')}L${[...high].reverse().join('L')}Z`,
    }),
    ...[low, high].map((points) => element('path', { class: `sv-limit ${colour} sv-thin`, d: `M${points.join('L')}` })),
  ];
}

/** What stands behind the sample of a series with a range. */
export function shadedSample(index: number, x: number, y: number, width: number): string {
  return element('rect', { class: 'sv-shade', style: shadeOf(index), x, y: y - 7, width, height: 14 });
}
