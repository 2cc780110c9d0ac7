import type { UnitSystem } from '../../quantity/index.js';
import type { StepBlock } from '../blocks.js';
import type { Chain } from '../formula/index.js';
import type { Paint } from './paint.js';
import { origin, type PrintedMatrix, printedStep } from './step.js';
import { padEnd, padStart, widthOf, wrap } from './wrap.js';

const indent = 2;

const gap = '\u00a0';

/** Text that breaks before a sign, or, where a product is longer than a line, also before a cross; never between a number and its unit. */
function held(text: string, room: number): string {
  const terms = text.replace(/(?<= [+/×=-]) /g, gap).replace(/(?<=\d) (?=[a-zA-Zµ°%(]|1\/)/g, gap);
  const products = terms.replace(/ (?=[×/])/g, gap);
  return products.split(' ').every((piece) => widthOf(piece) <= room) ? products : terms;
}

/** The equal signs of a chain one under the other; what does not fit goes on at the next sign or operator. */
function chainLines({ left, right }: Chain, width: number): string[] {
  const lead = `${' '.repeat(indent)}${left.text} `;
  return right.flatMap(({ text }, i) => {
    const start = `${i === 0 ? lead : ' '.repeat(widthOf(lead))}= `;
    const hanging = widthOf(lead) + 4;
    return wrap(held(text, width - hanging), width, start, hanging).map((line) => line.replaceAll(gap, ' '));
  });
}

function matrixLines({ name, unit, rows }: PrintedMatrix): string[] {
  const widths = (rows[0] ?? []).map((_, j) => Math.max(...rows.map((row) => widthOf(row[j] ?? ''))));
  const middle = Math.floor(rows.length / 2);
  return rows.map((row, i) => {
    const label = padEnd(i === middle ? `${name} =` : '', widthOf(name) + 2);
    const entries = row.map((entry, j) => padStart(entry, widths[j] ?? 0)).join('  ');
    return `${' '.repeat(indent)}${label} [ ${entries} ]${i === middle && unit !== '' ? ` ${unit}` : ''}`;
  });
}

/** A step for a terminal: title, formula lines, matrices, and where the formula is from. */
export function stepLines(step: StepBlock, units: UnitSystem, width: number, paint: Paint): string[] {
  const { chains, matrices } = printedStep(step, units);
  const title = wrap(`${step.number}  ${step.title}`, width, '', 2 + String(step.number).length).map(paint.bold);
  const about = wrap(`${step.of} [${step.part}] ${step.rule}`, width, ' '.repeat(indent)).map(paint.dim);
  const pieces = [
    ...(step.form === undefined ? [] : [[`${' '.repeat(indent)}${step.form.text}`]]),
    ...chains.map((chain) => chainLines(chain, width)),
    ...matrices.map(matrixLines),
  ];
  const apart = chains.length === 0 || matrices.length > 0;
  const remark = step.remark === undefined ? [] : wrap(step.remark, width, ' '.repeat(indent));
  return [
    ...title,
    ...about,
    '',
    ...pieces.flatMap((lines, i) => (i > 0 && apart ? ['', ...lines] : lines)),
    '',
    ...remark,
    ...wrap(`Source: ${origin(step)}`, width, ' '.repeat(indent), indent + 2).map(paint.dim),
  ];
}
