import { type ChartSeries, isClosed, placesOf } from './chart-input.js';
import { alongLine } from './chart-marks.js';
import { tellingPlaces } from './chart-overlap.js';
import { rangeDrawing } from './chart-range.js';
import { isOnePlace, type Place, strokeLine, strokeSign } from './chart-strokes.js';

interface SeriesDrawing {
  readonly markup: readonly string[];
  /** What the legend shows of each series. */
  readonly entries: readonly {
    readonly label: string;
    readonly line: boolean;
    readonly sign: boolean;
    readonly shaded: boolean;
  }[];
  /** Places along all lines, close to each other. */
  readonly along: readonly Place[];
}

/** Foot and head of each stem. */
const pairs = (places: readonly Place[]): Place[][] =>
  places.flatMap((foot, i) => (i % 2 === 0 ? [[foot, ...places.slice(i + 1, i + 2)]] : []));

/** Signs in one of these would hide each other. */
const cell = ({ x, y }: Place): string => `${Math.round(x / 2)} ${Math.round(y / 2)}`;

/**
 * The lines of a chart, then their signs: at every point where wanted, at the only point of a series that is one place, and
 * here and there on lines that run in the same place.
 */
export function seriesDrawing(series: readonly ChartSeries[], place: (point: Place) => Place): SeriesDrawing {
  const lines = series.map(({ points }) => points.map(place));
  const apart = series.map((one) => one.apart);
  const stems = series.map((one) => pairs(placesOf(one).map(place)));
  const closed = series.map(isClosed);
  const paths = lines.map((places, i) =>
    apart[i] !== undefined ? [] : closed[i] ? [...places, ...places.slice(0, 1)] : places,
  );
  const telling = tellingPlaces(paths);
  const signs = lines.map((places, i) => {
    if (apart[i] === undefined && isOnePlace(places)) return places.slice(0, 1);
    return series[i]?.marks === true || apart[i] !== undefined ? places : (telling[i] ?? []);
  });
  return {
    markup: [
      ...series.flatMap((one, i) => rangeDrawing(i, one.range ?? [], place)),
      ...lines.flatMap((places, i) => {
        if (apart[i] === 'stems') return (stems[i] ?? []).flatMap((stem) => strokeLine(i, stem, 'sv-stem'));
        return apart[i] === 'signs' ? [] : strokeLine(i, places, 'sv-curve', closed[i]);
      }),
      ...signs.flatMap((places, i) => {
        const before = new Set(signs.slice(0, i).flat().map(cell));
        return places.map((at) => strokeSign(i, at, !before.has(cell(at))));
      }),
    ],
    entries: series.map(({ label }, i) => ({
      label,
      line: apart[i] !== 'signs' && (apart[i] === 'stems' || !isOnePlace(lines[i] ?? [])),
      sign: (signs[i] ?? []).length > 0,
      shaded: (series[i]?.range ?? []).length > 1,
    })),
    along: [...paths, ...stems.flatMap((all, i) => (apart[i] === 'stems' ? all : []))].flatMap((path) =>
      alongLine(path),
    ),
  };
}
