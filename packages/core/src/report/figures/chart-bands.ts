import { roomFor, shortened, withoutCollisions } from './lettering.js';
import { element, label, line } from './markup.js';

/** A band in px: `top` above `bottom`. */
export interface BandPlace {
  readonly label: string;
  readonly top: number;
  readonly bottom: number;
}

const longestLabel = 18;
/** Distance of the names of neighbouring bands, px. */
const labelGap = 14;

/** Room that the names of bands take right of the chart, px; 0 when there are none. */
export function bandRoom(labels: readonly string[]): number {
  const widest = Math.max(0, ...labels.map((text) => roomFor(shortened(text, longestLabel))));
  return widest === 0 ? 0 : widest + 10;
}

/** Every other band filled, and a hairline at every edge of a band. */
export function bandFills(bands: readonly BandPlace[], left: number, right: number): string[] {
  const edges = new Set(bands.flatMap(({ top, bottom }) => [top, bottom].map((y) => Math.round(y * 100) / 100)));
  return [
    ...bands.map(({ top, bottom }, i) => {
      const fill = i % 2 === 0 ? 'sv-cloth' : 'sv-paper';
      return element('rect', {
        class: `sv-band ${fill}`,
        x: left,
        y: top,
        width: right - left,
        height: bottom - top,
      });
    }),
    ...[...edges].map((y) => line(left, y, right, y, 'sv-hair')),
  ];
}

/** Names of the bands right of the chart; where they would touch, those of thicker bands stand. */
export function bandLabels(bands: readonly BandPlace[], right: number): string[] {
  const middles = bands.map(({ top, bottom }) => ({ at: (top + bottom) / 2, size: bottom - top }));
  return withoutCollisions(middles, labelGap).flatMap((i) => {
    const text = bands[i]?.label ?? '';
    if (text === '') return [];
    const y = (middles[i]?.at ?? 0) + 4.3;
    return [label(shortened(text, longestLabel), right + 8, y, 'sv-muted')];
  });
}
