import type { FigureBlock } from '../blocks.js';
import { frame } from './frame.js';
import { label } from './markup.js';
import { actingRows, checkSpecimen, type SpecimenFigureInput } from './specimen-input.js';
import { sizeOf } from './specimen-parts.js';
import { peelSpecimen } from './specimen-peel.js';
import { sheetWidth, straightSpecimen } from './specimen-straight.js';
import { specimenText } from './specimen-text.js';

const origins = { dcb: 'the load line', enf: 'the left support', peel: 'the grips', wedge: 'the edge' } as const;
const names = {
  dcb: 'Two arms pulled apart at their end',
  enf: 'A bar with a crack in its middle plane, bent over two supports',
  peel: 'Two thin arms peeled apart into a T',
  wedge: 'An edge wedged open',
} as const;

function rowWords(input: SpecimenFigureInput): string {
  const rows = actingRows(input);
  const [first, second] = rows;
  if (first === undefined) return 'no stitches';
  const size = (value: number): string => sizeOf(value, input);
  const from = origins[input.kind];
  if (second === undefined) return `one row of stitches ${size(first)} from ${from}`;
  return `${rows.length} rows of stitches from ${size(first)} to ${size(rows.at(-1) ?? first)} from ${from}, the first two ${size(second - first)} apart`;
}

function sentence(input: SpecimenFigureInput, factor: number): string {
  const { kind, thickness, length, crackLength, span, loadSpan, opening } = input;
  const size = (value: number): string => sizeOf(value, input);
  const [upper, lower] = thickness;
  const parts = [
    upper === lower ? `arms of ${size(upper)}` : `upper arm ${size(upper)}, lower arm ${size(lower)}`,
    ...(opening === undefined ? [] : [`mouth held open ${size(opening)}`]),
    kind === 'wedge'
      ? `split ${size(crackLength)} from the edge`
      : `starting crack ${size(crackLength)} from ${origins[kind]}`,
    ...(span === undefined ? [] : [`span ${size(span)}`]),
    ...(loadSpan === undefined || !(loadSpan > 0) ? [] : [`two loads ${size(loadSpan)} apart`]),
    `end of the bond at ${size(length)}`,
    rowWords(input),
  ];
  return `${names[kind]}, seen from the side to scale${factor === 1 ? '' : `, thickness drawn ${factor} times`}: ${parts.join(', ')}.`;
}

/**
 * Draws a specimen from the side: arms, crack and bond along its length to scale, rows of stitches at their places, loads and supports, and its sizes as
 * dimensions. Thin arms are drawn thicker by a factor that the drawing names.
 *
 * @throws not-computable a size that is not above 0, a place outside the specimen, or either not finite
 */
export function specimenFigure(input: SpecimenFigureInput): FigureBlock {
  checkSpecimen(input);
  const { id, title, kind } = input;
  const { markup, height, factor } = kind === 'peel' ? peelSpecimen(input) : straightSpecimen(input);
  const alt = sentence(input, factor);
  const note =
    factor === 1
      ? 'to scale'
      : `lengths to scale, thickness${kind === 'wedge' ? ' and mouth' : ''} drawn ${factor} times`;
  const svg = frame(
    { id, title, description: alt, width: sheetWidth, height: height + 24 },
    ...markup,
    label(note, sheetWidth - 8, height + 12, 'sv-muted', 'end'),
  );
  return { kind: 'figure', id, caption: title, alt, svg, text: specimenText(input) };
}
