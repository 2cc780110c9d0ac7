import { formatQuantity } from '../../quantity/index.js';
import { roomFor } from './lettering.js';
import { coordinate, element, label, line } from './markup.js';
import { actingRows, type SpecimenFigureInput } from './specimen-input.js';

/** Length of the arrow of a load, px. */
export const arrowLength = 28;
const head = 8;

/** The arrow of a load from a place, up or down, its point at the far end. */
export function loadArrow(x: number, from: number, way: 'up' | 'down', length = arrowLength): string[] {
  const sign = way === 'up' ? -1 : 1;
  const end = from + sign * length;
  return [
    line(x, from, x, end - sign * head, 'sv-load sv-ink sv-thick'),
    element('path', {
      class: 'sv-solid',
      d: `M${coordinate(x)} ${coordinate(end)}l-4 ${-sign * head}h8Z`,
    }),
  ];
}

/** A support under a place: a triangle on a ground line. */
export function support(x: number, y: number): string[] {
  return [
    element('path', { class: 'sv-support sv-paper sv-outline', d: `M${coordinate(x)} ${coordinate(y)}l-8 14h16Z` }),
    line(x - 12, y + 14, x + 12, y + 14, 'sv-ink'),
  ];
}

/** Rows nearer than this are drawn thin, px. */
const near = 7;
/** Rows stand out of the faces by this much, px. */
const over = 4;

/** Rows of thread across both arms at their places. */
export function rowLines(places: readonly number[], top: number, bottom: number): string[] {
  const gaps = places.slice(1).map((place, i) => place - (places[i] ?? 0));
  const thin = Math.min(Number.POSITIVE_INFINITY, ...gaps) < near;
  return places.map((x) => line(x, top - over, x, bottom + over, `sv-row sv-madder ${thin ? 'sv-thin' : 'sv-thick'}`));
}

const factors = [1, 2, 3, 5, 10, 20, 50, 100];
/** No arm is drawn thinner than this, px. */
const thinnest = 6;
/** Nor is one drawn thicker than to scale beyond this, px. */
const thickest = 30;

/** How many times the thickness is drawn for it to be seen at a scale in px/m. */
export function thicknessFactor({ thickness }: SpecimenFigureInput, scale: number): number {
  const [least, most] = [Math.min(...thickness) * scale, Math.max(...thickness) * scale];
  const fitting = factors.filter((factor) => factor === 1 || most * factor <= thickest);
  return fitting.find((factor) => least * factor >= thinnest) ?? fitting.at(-1) ?? 1;
}

/** The thickness of the arms, right of their end. */
export function armLabels({ thickness, units }: SpecimenFigureInput, x: number, middle: number): string[] {
  const size = (value: number): string => formatQuantity(value, 'length', { units, digits: 3 });
  const [upper, lower] = thickness;
  const texts = upper === lower ? ['arms', `${size(upper)} each`] : [`upper ${size(upper)}`, `lower ${size(lower)}`];
  return texts.map((text, i) => label(text, x, middle + (i === 0 ? -4 : 12), 'sv-muted'));
}

function rowCount(input: SpecimenFigureInput): string {
  const { length } = actingRows(input);
  return length === 0 ? 'no rows' : length === 1 ? '1 row' : `rows 1 to ${length}`;
}

/** The words "rows 1 to 12" under the stitched stretch, kept inside the drawing. */
export function rowLabel(
  input: SpecimenFigureInput,
  places: readonly number[],
  y: number,
  sides: readonly [number, number],
): string[] {
  const [first, last] = [places[0], places.at(-1)];
  if (first === undefined || last === undefined) return [];
  const text = rowCount(input);
  const half = roomFor(text) / 2;
  const middle = Math.max(sides[0] + half, Math.min(sides[1] - half, (first + last) / 2));
  return [label(text, middle, y, 'sv-muted', 'middle')];
}

export const sizeOf = (value: number, { units }: SpecimenFigureInput): string =>
  formatQuantity(value, 'length', { units, digits: 3 });
