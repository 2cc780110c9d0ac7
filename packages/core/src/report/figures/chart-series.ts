import { type ChartSeries, isClosed } from './chart-input.js';
import { alongLine } from './chart-marks.js';
import { tellingPlaces } from './chart-overlap.js';
import { isOnePlace, type Place, strokeLine, strokeSign } from './chart-strokes.js';

interface SeriesDrawing {
  readonly markup: readonly string[];
  /** What the legend shows of each series. */
  readonly entries: readonly { readonly label: string; readonly line: boolean; readonly sign: boolean }[];
  /** Places along all lines, close to each other. */
  readonly along: readonly Place[];
}

/** Signs in one of these would hide each other. */
const cell = ({ x, y }: Place): string => `${Math.round(x / 2)} ${Math.round(y / 2)}`;

/**
 * The lines of a chart, then their signs: at every point where wanted, at the only point of a series that is one place, and
 * here and there on lines that run in the same place.
 */
export function seriesDrawing(series: readonly ChartSeries[], place: (point: Place) => Place): SeriesDrawing {
  const lines = series.map(({ points }) => points.map(place));
  const closed = series.map(isClosed);
  const paths = lines.map((places, i) => (closed[i] ? [...places, ...places.slice(0, 1)] : places));
  const telling = tellingPlaces(paths);
  const signs = lines.map((places, i) => {
    if (isOnePlace(places)) return places.slice(0, 1);
    return series[i]?.marks === true ? places : (telling[i] ?? []);
  });
  return {
    markup: [
      ...lines.flatMap((places, i) => strokeLine(i, places, 'sv-curve', closed[i])),
      ...signs.flatMap((places, i) => {
        const before = new Set(signs.slice(0, i).flat().map(cell));
        return places.map((at) => strokeSign(i, at, !before.has(cell(at))));
      }),
    ],
    entries: series.map(({ label }, i) => ({
      label,
      line: !isOnePlace(lines[i] ?? []),
      sign: (signs[i] ?? []).length > 0,
    })),
    along: paths.flatMap((path) => alongLine(path)),
  };
}
