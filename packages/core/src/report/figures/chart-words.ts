import { displayNumber, formatQuantity } from '../../quantity/index.js';
import type { ChartAxis } from './chart-axes.js';
import { type ChartInput, type ChartQuantity, type ChartSeries, isClosed } from './chart-input.js';
import { crossingWords } from './crossings.js';

/** More bands than this are counted, not named. */
const mostBands = 24;

const extremes = (values: readonly number[]): [number, number] =>
  values.reduce<[number, number]>(([a, b], value) => [Math.min(a, value), Math.max(b, value)], [Infinity, -Infinity]);

/** "force from 0 to 14 N": an axis and its ends. */
function axisWords({ label }: ChartQuantity, { low, high, unit, written }: ChartAxis): string {
  const joint = unit === '' || unit === '°' ? '' : unit.startsWith('10') ? '·' : ' ';
  return `${label} from ${written(low)} to ${written(high)}${joint}${unit}`;
}

/** The chart in words: its axes and their ends, the extremes of every series, what crosses what, the marks and bands, then the summary. */
export function chartWords(input: ChartInput, x: ChartAxis, y: ChartAxis): string {
  const { series, marks = [], bands = [], columns = [], units, summary } = input;
  const number = (value: number, { kind }: ChartQuantity): string => displayNumber(value, kind, { units, digits: 3 });
  const size = (value: number, { kind }: ChartQuantity): string =>
    value === 0 && kind === 'strain' ? '0' : formatQuantity(value, kind, { units, digits: 3 });
  const range = (axis: 'x' | 'y', [low, high]: [number, number]): string => {
    const [first, last] = [number(low, input[axis]), number(high, input[axis])];
    const values = first === last ? `at ${size(high, input[axis])}` : `from ${first} to ${size(high, input[axis])}`;
    return `${values} ${axis === 'x' ? 'to the right' : 'upward'}`;
  };
  // Over bands the reader asks where in height a quantity is greatest, else where along x.
  const [along, measured] = bands.length > 0 ? (['y', 'x'] as const) : (['x', 'y'] as const);
  const seriesWords = (one: ChartSeries): string => {
    const { label, points } = one;
    const values = points.map((point) => point[measured]);
    const [low, high] = extremes(values);
    const at = (value: number): string => size(points[values.indexOf(value)]?.[along] ?? 0, input[along]);
    const flat = number(low, input[measured]) === number(high, input[measured]);
    const where = isClosed(one) || flat ? '' : ` (least at ${at(low)}, greatest at ${at(high)})`;
    const span = range(along, extremes(points.map((point) => point[along])));
    return `${label}: ${span}, ${range(measured, [low, high])}${where}.`;
  };
  const rangeWords = ({ label, range = [] }: ChartSeries): string[] => {
    if (range.length === 0) return [];
    const [least] = extremes(range.map(({ low }) => low));
    const [, most] = extremes(range.map(({ high }) => high));
    return [`Shaded about ${label}: between ${number(least, input.y)} and ${size(most, input.y)} in all.`];
  };
  const lines = series.filter((one) => one.apart === undefined && !isClosed(one));
  const placeWords = (place: { x: number; y: number }): string =>
    `${size(place.x, input.x)}, ${size(place.y, input.y)}`;
  const columnWords = columns.map(
    ({ label, from, to }) => `${label} from ${number(from, input.x)} to ${size(to, input.x)}`,
  );
  const bandWords =
    bands.length > mostBands ? `${bands.length} bands.` : `Bands: ${bands.map(({ label }) => label).join(', ')}.`;
  return [
    `Chart with ${axisWords(input.y, y)} upward and ${axisWords(input.x, x)} to the right.`,
    ...series.flatMap((one) => [seriesWords(one), ...rangeWords(one)]),
    ...crossingWords(lines, placeWords),
    ...marks.map((mark) => `Marked: ${mark.label} at ${size(mark.x, input.x)}, ${size(mark.y, input.y)}.`),
    ...(bands.length === 0 ? [] : [bandWords]),
    ...(columns.length === 0 ? [] : [`To the right in turn: ${columnWords.join(', ')}.`]),
    ...(summary === undefined ? [] : [summary]),
  ].join(' ');
}
