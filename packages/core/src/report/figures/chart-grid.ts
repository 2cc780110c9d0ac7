import type { ChartAxis } from './chart-axes.js';
import type { Box } from './chart-marks.js';
import { brokenLines, charactersIn } from './lettering.js';
import { label, line } from './markup.js';

type Scale = (shown: number) => number;

const titleLine = 17;
const nub = 5;
const inside = ({ low, high }: ChartAxis): boolean => low < 0 && high > 0;

/** Hairlines at the ticks, none across bands; the lower and left sides; darker lines through zero where it lies inside. */
export function chartGrid(
  plot: Box,
  x: ChartAxis,
  y: ChartAxis,
  at: { x: Scale; y: Scale; banded: boolean },
): string[] {
  const { left, right, top, bottom } = plot;
  return [
    ...x.ticks.flatMap((tick) => [
      line(at.x(tick), top, at.x(tick), bottom, 'sv-hair'),
      line(at.x(tick), bottom, at.x(tick), bottom + nub, 'sv-axis'),
    ]),
    ...y.ticks.flatMap((tick) => [
      ...(at.banded ? [] : [line(left, at.y(tick), right, at.y(tick), 'sv-hair')]),
      line(left - nub, at.y(tick), left, at.y(tick), 'sv-axis'),
    ]),
    line(left, top, left, bottom, 'sv-axis'),
    line(left, bottom, right, bottom, 'sv-axis'),
    ...(inside(x) ? [line(at.x(0), top, at.x(0), bottom, 'sv-zero sv-axis')] : []),
    ...(inside(y) ? [line(left, at.y(0), right, at.y(0), 'sv-zero sv-axis')] : []),
  ];
}

/** Lines that a title takes when it may be `room` px wide. */
export function titleLines(title: string, room: number): string[] {
  return brokenLines(title, charactersIn(room));
}

/** Room of that many lines of a title, px. */
export const titleHeight = (lines: readonly string[]): number => lines.length * titleLine;

/** Numbers at the ticks; the title of y above its axis, that of x below, ending where the axis ends. */
export function axisLettering(
  plot: Box,
  x: ChartAxis,
  y: ChartAxis,
  at: { x: Scale; y: Scale; titleLeft: number; xTitle: readonly string[]; yTitle: readonly string[] },
): string[] {
  const { left, right, top, bottom } = plot;
  return [
    ...x.ticks.map((tick, i) => label(x.names[i] ?? '', at.x(tick), bottom + 20, '', 'middle')),
    ...y.ticks.map((tick, i) => label(y.names[i] ?? '', left - nub - 4, at.y(tick) + 4.5, '', 'end')),
    ...at.yTitle.map((text, i) =>
      label(text, at.titleLeft, top - 16 - (at.yTitle.length - 1 - i) * titleLine, 'sv-muted'),
    ),
    ...at.xTitle.map((text, i) => label(text, right, bottom + 42 + i * titleLine, 'sv-muted', 'end')),
  ];
}
