import { scaleLinear } from 'd3-scale';
import { fail } from '../../problem/index.js';
import { formatNumber } from '../../quantity/index.js';
import type { FigureBlock } from '../blocks.js';
import { frame } from './frame.js';
import { brokenLines, charactersIn, roomFor } from './lettering.js';
import { element, label, line } from './markup.js';

/** One bar from zero. */
export interface Bar {
  readonly label: string;
  readonly value: number;
}

export interface BarsInput {
  /** Unique in the report; lower case with hyphens. */
  readonly id: string;
  readonly title: string;
  /** What is counted along the axis. */
  readonly axis: string;
  /** In the order in which they stand, the first at the top; one to thirty. */
  readonly bars: readonly Bar[];
}

const width = 560;
const most = 30;
const names = { left: 12, right: 262 };
const field = { left: 274, right: 548 };
const size = 12;
const lineHeight = 15;
const gap = 8;
/** Columns of the drawing in characters on either side of zero, and the longest name beside it. */
const halfText = 18;
const nameText = 38;

/** Bars from a common zero, each named beside it: negative ones to the left. @throws out-of-range no bar, or more than thirty; not-computable a value that is not finite */
export function barsFigure({ id, title, axis, bars }: BarsInput): FigureBlock {
  if (bars.length === 0 || bars.length > most) {
    fail({ code: 'out-of-range', message: `figure \`${id}\` has ${bars.length} bars`, allowed: `1 to ${most}` });
  }
  const wrong = bars.find(({ value }) => !Number.isFinite(value));
  if (wrong !== undefined) {
    fail({
      code: 'not-computable',
      message: `figure \`${id}\`: ${wrong.label} is ${wrong.value}`,
      allowed: 'finite numbers',
    });
  }
  const largest = Math.max(...bars.map(({ value }) => Math.abs(value))) || 1;
  const low = Math.min(0, ...bars.map(({ value }) => value));
  const high = Math.max(0, ...bars.map(({ value }) => value));
  const scale = scaleLinear()
    .domain([low, high === low ? 1 : high])
    .range([field.left, field.right])
    .nice(4);
  const ticks = scale.ticks(4);
  const columns = charactersIn(names.right - names.left, size);
  let y = 34;
  const rows = bars.map(({ label: name, value }) => {
    const lines = brokenLines(name, columns);
    const top = y;
    y += lines.length * lineHeight + gap;
    return { name, value, lines, top, middle: top + (lines.length * lineHeight) / 2 };
  });
  const bottom = y;
  const shown = (value: number): string => formatNumber(value, 3);
  const alt = `Bars of ${axis}: ${bars.map((bar) => `${bar.label} ${shown(bar.value)}`).join('; ')}.`;
  const svg = frame(
    { id, title, description: alt, width, height: bottom + 44, minWidth: 360 },
    ...ticks.map((tick) => line(scale(tick), 22, scale(tick), bottom, tick === 0 ? 'sv-axis' : 'sv-hair')),
    ...ticks
      .filter((_, i) => ticks.length * roomFor('-0.55', size) < field.right - field.left || i % 2 === 0)
      .map((tick) => label(shown(tick), scale(tick), bottom + 16, 'sv-small', 'middle')),
    ...rows.flatMap(({ lines, value, top, middle }) => [
      ...lines.map((text, i) => label(text, names.right, top + 11 + i * lineHeight, 'sv-small', 'end')),
      element('rect', {
        class: value < 0 ? 'sv-warm sv-cloth' : 'sv-cool sv-cloth',
        x: Math.min(scale(0), scale(value)),
        y: middle - 5,
        width: Math.max(0.5, Math.abs(scale(value) - scale(0))),
        height: 10,
      }),
    ]),
    label(axis, field.right, bottom + 36, 'sv-small sv-muted', 'end'),
  );
  const text = [
    ...rows.map(({ name, value }) => {
      const length = Math.round((Math.abs(value) / largest) * halfText);
      const bar =
        value < 0 ? `${'#'.repeat(length).padStart(halfText)}|` : `${' '.repeat(halfText)}|${'#'.repeat(length)}`;
      const short = name.length > nameText ? `…${name.slice(1 - nameText)}` : name;
      return `${short.padEnd(nameText)} ${bar}`.trimEnd();
    }),
    `${' '.repeat(nameText + 1 + halfText)}0`,
  ].join('\n');
  return { kind: 'figure', id, caption: title, alt, svg, text };
}
