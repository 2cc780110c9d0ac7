import { fail } from '../../problem/index.js';
import { formatQuantity } from '../../quantity/index.js';
import type { FigureBlock } from '../blocks.js';
import { scaleBar } from './dimension.js';
import { frame } from './frame.js';
import { element, label, line } from './markup.js';
import { stitchDimensions } from './stitch-dimensions.js';
import type { StitchFigureInput } from './stitch-input.js';
import { rowsOf } from './stitch-rows.js';
import { stitchText } from './stitch-text.js';
import { legendWidth, threadLegend, threadLines } from './stitch-threads.js';

const left = 62;
const top = 46;
const rightMargin = 92;
const widest = 330;
const tallest = 380;
/** More rows than this are not listed one by one. */
const mostRows = 6;

function check({ id, field, pitch, needleDiameter, penetrations, threads }: StitchFigureInput): void {
  const sizes = { 'field.width': field.width, 'field.height': field.height, pitch, needleDiameter };
  for (const [name, value] of Object.entries(sizes)) {
    if (!(value > 0 && Number.isFinite(value))) {
      fail({
        code: 'not-computable',
        message: `figure \`${id}\`: ${name} = ${value} m cannot be drawn`,
        allowed: 'above 0',
      });
    }
  }
  const points = [...penetrations, ...threads.flatMap(({ from, to }) => [from, to])];
  if (points.some(({ x, y }) => !Number.isFinite(x) || !Number.isFinite(y))) {
    fail({ code: 'not-computable', message: `figure \`${id}\`: a hole or thread end has no finite place` });
  }
}

function sentence(input: StitchFigureInput): string {
  const { field, edge, pitch, rowSpacing, needleDiameter, penetrations, threads, units } = input;
  const size = (value: number): string => formatQuantity(value, 'length', { units, digits: 3 });
  const rows = rowsOf(penetrations);
  const crossed = penetrations.some((hole) => (hole.set ?? 0) !== 0);
  const count = `${rows.length} ${rows.length === 1 ? 'row' : 'rows'}${crossed ? ' crossed by others' : ''}`;
  const places = rows.map((row) => size(row.y)).join(', ');
  const where = !edge || rows.length === 0 || rows.length > mostRows ? '' : `, ${places} from the edge`;
  const spacing = rowSpacing === undefined || where !== '' ? '' : `, row spacing ${size(rowSpacing)}`;
  const runs = (face: 'top' | 'bottom'): number => threads.filter((thread) => thread.face === face).length;
  return [
    `Stitch pattern seen from above over a field of ${size(field.width)} by ${size(field.height)}${edge ? ' along the edge' : ''}:`,
    `${penetrations.length} needle holes of ${size(needleDiameter)} in ${count}${where}, pitch ${size(pitch)}${spacing};`,
    `${runs('top')} thread runs lie on the top face and ${runs('bottom')} on the bottom face.`,
  ].join(' ');
}

/**
 * Draws a stitch pattern to scale, seen from above: needle holes, thread on both faces (solid on top, dashed below), the
 * edge of the part, pitch and spacing as dimensions, and a scale bar.
 *
 * @throws not-computable when a size is not positive and finite, or a place not finite
 */
export function stitchFigure(input: StitchFigureInput): FigureBlock {
  check(input);
  const { id, title, penetrations, threads, field, edge, needleDiameter, units } = input;
  const scale = Math.min(widest / field.width, tallest / field.height);
  const right = left + field.width * scale;
  const bottom = top + field.height * scale;
  const x = (at: number): number => left + at * scale;
  const y = (at: number): number => bottom - at * scale;
  const area = { x: left, y: top, width: right - left, height: bottom - top };
  const radius = (needleDiameter / 2) * scale;
  const alt = sentence(input);
  const bar = bottom + (edge ? 44 : 26);
  const legend = bar + 26;
  const hole = formatQuantity(needleDiameter, 'length', { units, digits: 3 });
  const width = Math.max(right + rightMargin, left + legendWidth(hole));
  const svg = frame(
    {
      id,
      title,
      description: alt,
      width,
      height: legend + 16,
      definitions: [element('clipPath', { id: `${id}-field` }, element('rect', area))],
    },
    element('rect', { class: 'sv-cloth', ...area }),
    ...stitchDimensions(input, { right, top, bottom, x, y }),
    element(
      'g',
      { 'clip-path': `url(#${id}-field)` },
      ...threadLines(threads, { x, y }),
      ...penetrations.map((hole) => element('circle', { class: 'sv-hole', cx: x(hole.x), cy: y(hole.y), r: radius })),
    ),
    ...rowsOf(penetrations).map((row, i) => label(`row ${i + 1}`, left - 10, y(row.y) + 4.5, 'sv-muted', 'end')),
    ...(edge
      ? [
          line(left, bottom, right, bottom, 'sv-edge'),
          label('edge of the part', (left + right) / 2, bottom + 20, 'sv-muted', 'middle'),
        ]
      : []),
    ...scaleBar(left, bar, scale, right - left, units),
    ...threadLegend(left, legend, hole),
  );
  return { kind: 'figure', id, caption: title, alt, svg, text: stitchText(input) };
}
