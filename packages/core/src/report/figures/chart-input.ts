import { fail } from '../../problem/index.js';
import { inDisplayUnit, type KindName, type UnitSystem } from '../../quantity/index.js';
import { mostSeries } from './look/index.js';

/** A line through its points in their order. Coordinates in SI, angles in degrees. */
export interface ChartSeries {
  readonly label: string;
  readonly points: readonly { readonly x: number; readonly y: number }[];
  /** A mark at each point. */
  readonly marks?: boolean;
  /** The last point is joined to the first. */
  readonly closed?: boolean;
  /** For points that are no line: signs alone, or each on a stem from x = 0. */
  readonly apart?: 'signs' | 'stems';
  /** Shaded between two values of y, for example where nine in ten lie. */
  readonly range?: readonly { readonly x: number; readonly low: number; readonly high: number }[];
}

/** A single point with its name beside it, for example the load within an envelope. */
export interface ChartMark {
  readonly label: string;
  readonly x: number;
  readonly y: number;
  /** The name may be left out where it would cover another name or mark. */
  readonly spare?: true;
}

/** A horizontal band between two values of y, for example a layer between two heights. */
export interface ChartBand {
  readonly label: string;
  readonly from: number;
  readonly to: number;
}

/** What is counted along an axis. */
export interface ChartQuantity {
  readonly label: string;
  readonly kind: KindName;
}

export interface ChartInput {
  /** Unique in the report; lower case with hyphens. */
  readonly id: string;
  readonly title: string;
  readonly x: ChartQuantity;
  readonly y: ChartQuantity;
  /** One to six. */
  readonly series: readonly ChartSeries[];
  readonly marks?: readonly ChartMark[];
  readonly bands?: readonly ChartBand[];
  /** Upright bands between two values of x, told by letters. */
  readonly columns?: readonly ChartBand[];
  readonly units: UnitSystem;
  /** What the reader should see in it; ends the description in words. */
  readonly summary?: string;
}

/** The points of a series, and the feet of its stems. */
export const placesOf = ({ points, apart }: ChartSeries): readonly { readonly x: number; readonly y: number }[] =>
  apart === 'stems' ? points.flatMap((point) => [{ x: 0, y: point.y }, point]) : points;

/** Whether a line ends where it begins, by its own points or by being closed. */
export function isClosed({ points, closed = false, apart }: ChartSeries): boolean {
  if (apart !== undefined) return false;
  const [first, last] = [points[0], points.at(-1)];
  return closed || (points.length > 2 && first?.x === last?.x && first?.y === last?.y);
}

/** Beyond this the distance of two numbers may be none. */
const largest = 1e300;

/** Refuses a chart without series or with too many, a series without points, and numbers that have no place on paper. */
export function checkChart({ id, x, y, series, marks = [], bands = [], columns = [], units }: ChartInput): void {
  if (series.length === 0 || series.length > mostSeries) {
    fail({
      code: 'out-of-range',
      message: `figure \`${id}\` has ${series.length} series`,
      allowed: `1 to ${mostSeries}`,
    });
  }
  const place = (label: string, axis: ChartQuantity, value: number): void => {
    if (Number.isFinite(value) && Math.abs(inDisplayUnit(value, axis.kind, units)) <= largest) return;
    fail({
      code: 'not-computable',
      message: `figure \`${id}\`: ${label} has ${axis.label} = ${value}, which has no place on a chart`,
      allowed: 'finite numbers',
    });
  };
  for (const { label, points, range = [] } of series) {
    if (points.length === 0) {
      fail({
        code: 'out-of-range',
        message: `figure \`${id}\`: the series ${label} has 0 points`,
        allowed: '1 or more',
      });
    }
    for (const point of points) {
      place(label, x, point.x);
      place(label, y, point.y);
    }
    for (const point of range) {
      place(label, x, point.x);
      place(label, y, point.low);
      place(label, y, point.high);
    }
  }
  for (const mark of marks) {
    place(mark.label, x, mark.x);
    place(mark.label, y, mark.y);
  }
  for (const band of bands) {
    place(band.label, y, band.from);
    place(band.label, y, band.to);
  }
  for (const column of columns) {
    place(column.label, x, column.from);
    place(column.label, x, column.to);
  }
}
