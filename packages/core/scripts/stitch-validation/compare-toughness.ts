import { toSI } from '../../src/quantity/index.js';
import type { BridgingFailure, Interval } from '../../src/stitch/index.js';
import type { Bends } from './coupons.js';
import { type Comparison, comparisons, entry, type PrintedRow, rowOf } from './inputs.js';
import type { Column, Prediction } from './predict.js';

/** Everything foretold, by case and law. */
export type Predictions = Readonly<Record<string, Readonly<Record<Bends, Prediction>>>>;

/** One column of a comparison. */
export interface Compared extends Interval {
  /** ln(predicted median over published). */
  readonly error: number;
  /** Whether the range of nine in ten holds the published value. */
  readonly inside: boolean;
}

/** A printed toughness, or ratio of toughness, beside both predictions by one law. */
export interface ToughnessRow {
  readonly comparison: Comparison;
  readonly row: PrintedRow;
  /** In the unit of the print; the geometric mean of a printed range. */
  readonly published: number;
  readonly steady: Compared;
  readonly specimen: Compared;
  /** The same for the gain over the bond, ln of gains; absent where no ratio is printed. */
  readonly gain?: { readonly steady: number; readonly specimen: number };
  /** What gives way in most samples. */
  readonly failures: readonly BridgingFailure[];
}

/** The printed number: a value, or the geometric mean of a range. */
function publishedOf({ value, low, high }: PrintedRow): number {
  const found = value ?? (low !== undefined && high !== undefined ? Math.sqrt(low * high) : undefined);
  if (found === undefined) throw new Error('a compared row has no number');
  return found;
}

/** Several cases as one: the geometric mean of their medians, the widest range. */
function together(columns: readonly Interval[]): Interval {
  const mean = columns.reduce((sum, { median }) => sum + Math.log(median), 0) / columns.length;
  return {
    median: Math.exp(mean),
    low: Math.min(...columns.map(({ low }) => low)),
    high: Math.max(...columns.map(({ high }) => high)),
  };
}

const scaled = ({ median, low, high }: Interval, by: number): Interval => ({
  median: median / by,
  low: low / by,
  high: high / by,
});

function compared(interval: Interval, published: number): Compared {
  const inside = interval.low <= published && published <= interval.high;
  return { ...interval, error: Math.log(interval.median / published), inside };
}

const mostLikely = ({ failures }: Prediction): BridgingFailure =>
  Object.entries(failures).reduce((most, one) => (one[1] > most[1] ? one : most))[0] as BridgingFailure;

/** The printed toughnesses beside the predictions by one law, in the order of the inputs. */
export function toughnessRows(predictions: Predictions, bends: Bends): readonly ToughnessRow[] {
  return comparisons
    .filter(({ compare }) => compare === 'ratio' || compare === 'toughness')
    .map((comparison) => {
      const row = rowOf(comparison);
      const published = publishedOf(row);
      const ratio = comparison.compare === 'ratio';
      const own = (comparison.cases ?? []).map((id) => entry(predictions, id)[bends]);
      const column = (of: (one: Prediction) => Column) =>
        compared(together(own.map((one) => scaled(of(one), ratio ? one.bond : toSI(1, row.unit ?? '')))), published);
      const [steady, specimen] = [column((one) => one.steady), column((one) => one.specimen)];
      const gain = ({ median }: Interval) => Math.log((median - 1) / (published - 1));
      return {
        comparison,
        row,
        published,
        steady,
        specimen,
        ...(ratio && { gain: { steady: gain(steady), specimen: gain(specimen) } }),
        failures: [...new Set(own.map(mostLikely))],
      };
    });
}
