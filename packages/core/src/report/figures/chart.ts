import { scaleLinear } from 'd3-scale';
import type { FigureBlock } from '../blocks.js';
import { type ChartAxis, chartAxis } from './chart-axes.js';
import { bandFills, bandLabels, bandRoom } from './chart-bands.js';
import { columnFills, columnHead, columnLegend } from './chart-columns.js';
import { axisLettering, chartGrid, titleHeight, titleLines } from './chart-grid.js';
import { type ChartInput, checkChart, placesOf } from './chart-input.js';
import { chartLegend } from './chart-legend.js';
import { type Box, markDrawings } from './chart-marks.js';
import { seriesDrawing } from './chart-series.js';
import { chartText } from './chart-text.js';
import { chartWords } from './chart-words.js';
import { frame } from './frame.js';
import { roomFor } from './lettering.js';

const width = 460;
const margin = 8;
const plotHeight = 270;

/** Room of the widest of the numbers along an axis, px. */
const numberRoom = ({ names }: ChartAxis): number => Math.max(...names.map((name) => roomFor(name)));

/** The x axis with as many ticks as their numbers leave room for. */
function acrossAxis(input: ChartInput, values: readonly number[], room: number): ChartAxis {
  const axes = [7, 6, 5, 4, 3, 2].map((count) => chartAxis(input.x, values, { units: input.units, count }));
  const fits = (axis: ChartAxis): boolean => (axis.ticks.length - 1) * (numberRoom(axis) + 14) <= room;
  return axes.find(fits) ?? chartAxis(input.x, values, { units: input.units, count: 1 });
}

/**
 * Draws lines of y over x with round ticks in the reader's units. Series are told apart by their strokes and signs; marks
 * carry their names; bands lie behind, upright ones with letters; a range is shaded. Nothing is cut off: the axes hold every point, and zero where it is near.
 *
 * @throws out-of-range for no or more than six series, and for a series without points
 * @throws not-computable for a number that is not finite
 */
export function chartFigure(input: ChartInput): FigureBlock {
  checkChart(input);
  const { id, title, series, marks = [], bands = [], columns = [], units } = input;
  const points = [...series.flatMap(placesOf), ...marks];
  const ranges = series.flatMap(({ range = [] }) => range);
  const heights = [
    ...points.map((point) => point.y),
    ...bands.flatMap(({ from, to }) => [from, to]),
    ...ranges.flatMap(({ low, high }) => [low, high]),
  ];
  const widths = [...points, ...ranges].map((point) => point.x).concat(columns.flatMap(({ from, to }) => [from, to]));
  const banded = bands.length > 0;
  const y = chartAxis(input.y, heights, { units, count: 5, tight: banded });
  const left = Math.max(38, margin + numberRoom(y) + 10);
  const beside = bandRoom(bands.map(({ label }) => label));
  const x = acrossAxis(input, widths, width - left - Math.max(margin + beside, 28));
  const right = width - Math.max(margin + beside, 4 + roomFor(x.names.at(-1) ?? '') / 2);
  const yTitle = titleLines(y.title, width - 2 * margin);
  const xTitle = titleLines(x.title, right - margin);
  const top = 16 + titleHeight(yTitle);
  const plot: Box = { left, right, top, bottom: top + plotHeight };
  const across = scaleLinear().domain([x.low, x.high]).range([left, right]);
  const up = scaleLinear()
    .domain([y.low, y.high])
    .range([plot.bottom, plot.top + (columns.length > 0 ? columnHead : 0)]);
  const place = (point: { x: number; y: number }) => ({ x: across(x.shown(point.x)), y: up(y.shown(point.y)) });

  const named = marks.map((mark) => ({ ...mark, ...place(mark) }));
  const bandPlaces = bands.map(({ label, from, to }) => {
    const [a, b] = [up(y.shown(from)), up(y.shown(to))];
    return { label, top: Math.min(a, b), bottom: Math.max(a, b) };
  });
  const columnPlaces = columns.map(({ label, from, to }) => {
    const [a, b] = [across(x.shown(from)), across(x.shown(to))];
    return { label, left: Math.min(a, b), right: Math.max(a, b) };
  });
  const drawn = seriesDrawing(series, place);
  const below = plot.bottom + 42 + titleHeight(xTitle);
  const legend = chartLegend(drawn.entries, left, below + 8, width - left - margin);
  const letters = columns.map(({ label }) => label);
  const foot = below + 8 + legend.height + (columns.length > 0 ? 26 : 0);
  const lettered = columnLegend(letters, left, foot, width - left - margin);
  const alt = chartWords(input, x, y);
  const at = { x: across, y: up, banded };
  const svg = frame(
    { id, title, description: alt, width, height: foot + Math.max(14, lettered.height) },
    ...bandFills(bandPlaces, left, right),
    ...columnFills(columnPlaces, plot),
    ...chartGrid(plot, x, y, at),
    ...axisLettering(plot, x, y, { ...at, titleLeft: margin, xTitle, yTitle }),
    ...bandLabels(bandPlaces, right),
    ...drawn.markup,
    ...markDrawings(named, drawn.along, columns.length > 0 ? { ...plot, top: plot.top + columnHead } : plot),
    ...legend.markup,
    ...lettered.markup,
  );
  return { kind: 'figure', id, caption: title, alt, svg, text: chartText(input, x, y) };
}
