import { scaleLinear } from 'd3-scale';
import { fail } from '../../problem/index.js';
import { formatNumber } from '../../quantity/index.js';
import type { FigureBlock } from '../blocks.js';
import { frame } from './frame.js';
import { brokenLines, charactersIn, roomFor } from './lettering.js';
import { barLook } from './look/index.js';
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

const width = 460;
const most = 30;
const names = 8;
const field = { left: 28, right: 432, top: 10 };
const lineHeight = 16;
const bar = { height: 11, gap: 13 };
/** Columns of the drawing in characters on either side of zero, and the longest name beside it. */
const halfText = 18;
const nameText = 38;

/** Bars from a common zero, each named above it: negative ones to the left, and hollow. @throws out-of-range no bar, or more than thirty; not-computable a value that is not finite */
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
  const columns = charactersIn(width - 2 * names);
  let y = field.top;
  const rows = bars.map(({ label: name, value }) => {
    const lines = brokenLines(name, columns);
    const top = y;
    y += lines.length * lineHeight + bar.height + bar.gap;
    return { name, value, lines, top };
  });
  const bottom = y;
  const shown = (value: number): string => formatNumber(value, 3);
  const alt = `Bars of ${axis}: ${bars.map((one) => `${one.label} ${shown(one.value)}`).join('; ')}.`;
  const svg = frame(
    { id, title, description: alt, width, height: bottom + 46 },
    ...ticks.map((tick) => line(scale(tick), field.top, scale(tick), bottom, tick === 0 ? 'sv-axis' : 'sv-hair')),
    ...ticks
      .filter((_, i) => ticks.length * roomFor('-0.55') < field.right - field.left || i % 2 === 0)
      .map((tick) => label(shown(tick), scale(tick), bottom + 18, '', 'middle')),
    ...rows.flatMap(({ lines, value, top }) => [
      ...lines.map((words, i) => label(words, names, top + 12 + i * lineHeight, 'sv-halo')),
      element('rect', {
        class: value < 0 ? barLook.negative : barLook.positive,
        x: Math.min(scale(0), scale(value)),
        y: top + lines.length * lineHeight + 2,
        width: Math.max(0.5, Math.abs(scale(value) - scale(0))),
        height: bar.height,
      }),
    ]),
    label(axis, width - 8, bottom + 38, 'sv-muted', 'end'),
  );
  const text = [
    ...rows.map(({ name, value }) => {
      const length = Math.round((Math.abs(value) / largest) * halfText);
      const drawn =
        value < 0 ? `${'#'.repeat(length).padStart(halfText)}|` : `${' '.repeat(halfText)}|${'#'.repeat(length)}`;
      const short = name.length > nameText ? `…${name.slice(1 - nameText)}` : name;
      return `${short.padEnd(nameText)} ${drawn}`.trimEnd();
    }),
    `${' '.repeat(nameText + 1 + halfText)}0`,
  ].join('\n');
  return { kind: 'figure', id, caption: title, alt, svg, text };
}
