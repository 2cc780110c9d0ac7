import { roomFor } from './lettering.js';
import { coordinate, element, label, line } from './markup.js';
import { type Distance, distances, levelsHeight } from './specimen-dimensions.js';
import { actingRows, loadPlaces, type SpecimenFigureInput } from './specimen-input.js';
import {
  armLabels,
  arrowLength,
  loadArrow,
  rowLabel,
  rowLines,
  sizeOf,
  support,
  thicknessFactor,
} from './specimen-parts.js';

/** A drawing with its size and how much its thickness is exaggerated. */
export interface SpecimenDrawing {
  readonly markup: readonly string[];
  readonly height: number;
  readonly factor: number;
}

export const sheetWidth = 484;
const right = 350;
const margin = 8;

/** The faces of the arms along the specimen, px: straight, or held open at the mouth. */
interface Faces {
  readonly upper: (x: number) => number;
  readonly lower: (x: number) => number;
}

/** Opening over that of the mouth of arms that are clamped at the end of the split: 1 - 3/2 s + s³/2. */
const shape = (share: number): number => (share >= 1 ? 0 : 1 - 1.5 * share + share ** 3 / 2);

const curvePoints = 24;

/** One arm as a shape: its face at the crack, and the other a thickness away. */
function arm(
  face: (place: number) => number,
  input: SpecimenFigureInput,
  at: { x: (place: number) => number; thickness: number },
): string {
  const { length, crackLength } = input;
  const bent =
    input.kind === 'wedge' ? Array.from({ length: curvePoints }, (_, i) => (crackLength * i) / curvePoints) : [0];
  const places = [...bent, crackLength, length];
  const point = (place: number, off: number): string => `${coordinate(at.x(place))} ${coordinate(face(place) + off)}`;
  const inner = places.map((place) => point(place, 0));
  const outer = [...places].reverse().map((place) => point(place, at.thickness));
  return element('path', { class: 'sv-arm sv-cloth sv-outline', d: `M${inner.join('L')}L${outer.join('L')}Z` });
}

function above(input: SpecimenFigureInput): readonly { from: number; to: number; text: string }[] {
  const { kind, crackLength } = input;
  const size = (value: number): string => sizeOf(value, input);
  const [first, second] = actingRows(input);
  const wedge = kind === 'wedge';
  const start = wedge ? 0 : crackLength;
  return [
    ...(crackLength > 0
      ? [{ from: 0, to: crackLength, text: `${wedge ? 'split stops at' : 'starting crack'} ${size(crackLength)}` }]
      : []),
    ...(first !== undefined && first > start ? [{ from: start, to: first, text: size(first - start) }] : []),
    ...(first !== undefined && second !== undefined ? [{ from: first, to: second, text: size(second - first) }] : []),
  ];
}

function below(input: SpecimenFigureInput): readonly { from: number; to: number; text: string }[] {
  const { kind, length, crackLength, span = 0, loadSpan = 0 } = input;
  const size = (value: number): string => sizeOf(value, input);
  if (kind === 'wedge') return [{ from: 0, to: length, text: `depth of the bond ${size(length)}` }];
  if (kind === 'dcb') {
    return [
      { from: 0, to: length, text: `to the end of the bond ${size(length)}` },
      { from: crackLength, to: length, text: `bond ${size(length - crackLength)}` },
    ];
  }
  const [one, two] = loadPlaces(input);
  return [
    { from: 0, to: span, text: `span ${size(span)}` },
    ...(length - span > 1e-9 ? [{ from: span, to: length, text: size(length - span) }] : []),
    ...(one !== undefined && two !== undefined ? [{ from: one, to: two, text: `loads ${size(loadSpan)} apart` }] : []),
  ];
}

/** Arrows of the loads, and supports. */
function loads(input: SpecimenFigureInput, x: (place: number) => number, faces: readonly [number, number]): string[] {
  const [top, bottom] = faces;
  const places = loadPlaces(input).map(x);
  if (input.kind === 'dcb') {
    const [at = 0] = places;
    return [
      ...loadArrow(at, top, 'up'),
      ...loadArrow(at, bottom, 'down'),
      label('load', at - 8, top - 14, '', 'end'),
      label('load', at - 8, bottom + 22, '', 'end'),
    ];
  }
  if (input.kind !== 'enf') return [];
  const text = places.length > 1 ? 'half the load' : 'load';
  return [
    ...places.flatMap((at) => loadArrow(at, top - arrowLength, 'down')),
    ...places
      .slice(0, 1)
      .map((at) =>
        at - 8 - roomFor(text) > margin
          ? label(text, at - 8, top - 14, 'sv-halo', 'end')
          : label(text, at + 8, top - 14, 'sv-halo'),
      ),
    ...[0, input.span ?? 0].flatMap((place) => support(x(place), bottom)),
  ];
}

/** What holds the mouth of an edge open, and how far. */
function wedgeMouth(input: SpecimenFigureInput, x: number, { upper, lower }: Faces): string[] {
  if (input.kind !== 'wedge') return [];
  const [top, bottom] = [upper(0), lower(0)];
  const at = x - 12;
  return [
    element('path', {
      class: 'sv-wedge sv-dot',
      d: `M${coordinate(x - 4)} ${coordinate(top)}L${coordinate(x - 4)} ${coordinate(bottom)}L${coordinate(x + 14)} ${coordinate((top + bottom) / 2)}Z`,
    }),
    line(at, top, at, bottom, 'sv-axis'),
    line(at - 4, top, at + 4, top, 'sv-axis'),
    line(at - 4, bottom, at + 4, bottom, 'sv-axis'),
    label('mouth', at - 8, (top + bottom) / 2 - 2, '', 'end'),
    label(sizeOf(input.opening ?? 0, input), at - 8, (top + bottom) / 2 + 14, '', 'end'),
  ];
}

/** A specimen whose arms lie straight: opened by loads at its end, bent over supports, or wedged open at its edge. */
export function straightSpecimen(input: SpecimenFigureInput): SpecimenDrawing {
  const { kind, length, crackLength, thickness } = input;
  const left = kind === 'wedge' ? 96 : 48;
  const scale = (right - left) / length;
  const factor = thicknessFactor(input, scale);
  const x = (place: number): number => left + place * scale;
  const [t1, t2] = [thickness[0] * scale * factor, thickness[1] * scale * factor];
  const mouth = kind === 'wedge' ? (input.opening ?? 0) * scale * factor : 0;
  const sheet = { left: margin, right: sheetWidth - margin };
  const rows = actingRows(input).map(x);

  const over = above(input);
  const arrowRoom = kind === 'wedge' ? 8 : arrowLength + 6;
  // Levels are counted first, on a sheet of their own, so that the drawing knows where it begins.
  const measure = (all: readonly { from: number; to: number; text: string }[], reach: number): Distance[] =>
    all.map((one) => ({ ...one, from: x(one.from), to: x(one.to), reach: [reach, reach] }));
  const levels = distances(measure(over, 0), { ...sheet, first: 0, way: 'up' }).levels;
  // The thinner arm gives way more, as the cube of the thicknesses tells.
  const given = thickness[1] ** 3 / (thickness[0] ** 3 + thickness[1] ** 3);
  const [up, down] = [mouth * given, mouth * (1 - given)];
  const middle = 20 + levelsHeight(levels) + arrowRoom + t1 + up;
  const split = (place: number): number => (crackLength > 0 ? shape(place / crackLength) : 0);
  const faces: Faces = {
    upper: (place) => middle - up * split(place),
    lower: (place) => middle + down * split(place),
  };
  const [top, bottom] = [middle - t1 - up, middle + t2 + down];
  const firstAbove = top - arrowRoom;
  const labelLine = bottom + arrowLength + 10;
  const firstBelow = labelLine + 28;
  const upper = distances(measure(over, top - 2), { ...sheet, first: firstAbove, way: 'up' });
  const lower = distances(measure(below(input), bottom + 2), { ...sheet, first: firstBelow, way: 'down' });
  return {
    factor,
    height: firstBelow + levelsHeight(lower.levels),
    markup: [
      ...upper.markup,
      ...lower.markup,
      arm(faces.upper, input, { x, thickness: -t1 }),
      arm(faces.lower, input, { x, thickness: t2 }),
      line(x(crackLength), middle, x(length), middle, 'sv-bond sv-axis'),
      ...(kind !== 'wedge' && crackLength > 0
        ? [line(x(0), middle, x(crackLength), middle, 'sv-crack sv-ink sv-thick')]
        : []),
      ...rowsAlong(input, x, faces, [t1, t2]),
      ...loads(input, x, [top, bottom]),
      ...wedgeMouth(input, left, faces),
      ...armLabels(input, right + 12, middle),
      ...rowLabel(input, rows, labelLine, [left, right]),
    ],
  };
}

/** Rows from face to face; where the arms stand apart, further. */
function rowsAlong(
  input: SpecimenFigureInput,
  x: (place: number) => number,
  { upper, lower }: Faces,
  [t1, t2]: readonly [number, number],
): string[] {
  const places = actingRows(input);
  if (input.kind !== 'wedge') return rowLines(places.map(x), upper(input.length) - t1, lower(input.length) + t2);
  return places.flatMap((place) => rowLines([x(place)], upper(place) - t1, lower(place) + t2));
}
