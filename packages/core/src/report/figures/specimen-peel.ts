import { coordinate as c, element, label, line } from './markup.js';
import { distances, levelsHeight } from './specimen-dimensions.js';
import { actingRows, type SpecimenFigureInput } from './specimen-input.js';
import { armLabels, arrowLength, loadArrow, rowLabel, rowLines, sizeOf, thicknessFactor } from './specimen-parts.js';
import { type SpecimenDrawing, sheetWidth } from './specimen-straight.js';

const front = 138;
const widest = 209;
const tallest = 250;
const margin = 8;
const mostRadius = 30;
const wordsAbove = 62;

/** An arm from the end of the bond to the front, round the bend and along to its grip; `way` is -1 for the upper one. */
function arm(
  at: { end: number; middle: number; thickness: number; radius: number; reach: number },
  way: 1 | -1,
): string {
  const { end, middle, thickness: t, radius: R, reach } = at;
  const turn = middle + way * (t / 2 + R);
  const tip = middle + way * reach;
  const [outside, inside] = way === -1 ? [1, 0] : [0, 1];
  const [r1, r2] = [R + t / 2, R - t / 2];
  const d = [
    `M${c(end)} ${c(middle)}H${c(front)}`,
    `A${c(r1)} ${c(r1)} 0 0 ${outside} ${c(front - r1)} ${c(turn)}V${c(tip)}H${c(front - r2)}V${c(turn)}`,
    `A${c(r2)} ${c(r2)} 0 0 ${inside} ${c(front)} ${c(middle + way * t)}H${c(end)}Z`,
  ].join('');
  return element('path', { class: 'sv-arm sv-cloth sv-outline', d });
}

/** How far from the middle an arm of a free length reaches when it turns by a right angle: the bend takes πR/2 of it. */
const reachOf = (free: number, radius: number, thickness: number): number =>
  thickness / 2 + radius + Math.max(0, free - (Math.PI / 2) * radius);

/** A T-peel: the bonded part to the right, both arms turned to their grips. */
export function peelSpecimen(input: SpecimenFigureInput): SpecimenDrawing {
  const { length, crackLength, thickness } = input;
  const bonded = length - crackLength;
  const scale = Math.min(widest / bonded, tallest / (2 * crackLength));
  const factor = thicknessFactor(input, scale);
  const x = (place: number): number => front + (place - crackLength) * scale;
  const free = crackLength * scale;
  const end = x(length);
  const sides = thickness.map((t) => {
    const drawn = t * scale * factor;
    const radius = Math.max(drawn / 2, Math.min(2 * drawn, free / 3, mostRadius));
    return { thickness: drawn, radius, reach: reachOf(free, radius, drawn) };
  });
  const [upper = { thickness: 0, radius: 0, reach: 0 }, lower = upper] = sides;
  // A short arm leaves less room above the bond than two levels of words need.
  const middle = Math.max(14 + arrowLength + upper.reach, upper.thickness + wordsAbove);
  const [top, bottom] = [middle - upper.thickness, middle + lower.thickness];
  const rows = actingRows(input).map(x);
  const size = (value: number): string => sizeOf(value, input);
  const [first, second] = actingRows(input);
  // Words over the bonded part stay clear of the arm that rises at the front.
  const sheet = { left: front + 6, right: sheetWidth - margin };
  const reach = [top - 2, top - 2] as const;
  const over = distances(
    [
      ...(first !== undefined && first > crackLength
        ? [{ from: front, to: x(first), text: size(first - crackLength), reach }]
        : []),
      ...(first !== undefined && second !== undefined
        ? [{ from: x(first), to: x(second), text: size(second - first), reach }]
        : []),
    ],
    { ...sheet, first: top - 18, way: 'up' },
  );
  const labelLine = bottom + 22;
  const under = distances([{ from: front, to: end, text: `bond ${size(bonded)}`, reach: [bottom + 2, bottom + 2] }], {
    ...sheet,
    first: labelLine + 30,
    way: 'down',
  });
  const [tip, foot] = [middle - upper.reach, middle + lower.reach];
  const at = front - upper.radius - upper.thickness / 2 - 18;
  return {
    factor,
    height: Math.max(foot + arrowLength + 16, labelLine + 30 + levelsHeight(under.levels)),
    markup: [
      ...over.markup,
      ...under.markup,
      arm({ end, middle, ...upper }, -1),
      arm({ end, middle, ...lower }, 1),
      line(front, middle, end, middle, 'sv-bond sv-axis'),
      ...rowLines(rows, top, bottom),
      ...loadArrow(front - upper.radius, tip, 'up'),
      ...loadArrow(front - lower.radius, foot, 'down'),
      label('load', front - upper.radius - 10, tip - 18, '', 'end'),
      label('load', front - lower.radius - 10, foot + 26, '', 'end'),
      line(at - 4, tip, front - upper.radius - upper.thickness / 2, tip, 'sv-hair'),
      line(at - 4, middle, front - upper.radius, middle, 'sv-hair'),
      line(at, tip, at, middle, 'sv-axis sv-distance'),
      label('starting', at - 8, (tip + middle) / 2 - 12, '', 'end'),
      label('crack', at - 8, (tip + middle) / 2 + 4, '', 'end'),
      label(size(crackLength), at - 8, (tip + middle) / 2 + 20, '', 'end'),
      ...armLabels(input, end + 12, middle),
      ...rowLabel(input, rows, labelLine, [front + 6, end]),
    ],
  };
}
