import type { ToughnessRow } from './compare-toughness.js';

/** How a column of predictions lies to the print. */
export interface ColumnSummary {
  readonly rows: number;
  /** Geometric mean of predicted over published. */
  readonly mean: number;
  /** Scatter about it as a factor: e to the standard deviation of the logarithms. */
  readonly scatter: number;
  /** Rows within a factor of 2 and of 3. */
  readonly withinTwo: number;
  readonly withinThree: number;
  /** Rows whose published value the range of nine in ten holds. */
  readonly inside: number;
}

/** Mean and scatter of logarithmic errors. */
export function errorsOf(errors: readonly number[]): Omit<ColumnSummary, 'inside'> {
  const rows = errors.length;
  const mean = errors.reduce((sum, error) => sum + error, 0) / rows;
  const variance = errors.reduce((sum, error) => sum + (error - mean) ** 2, 0) / Math.max(1, rows - 1);
  const within = (factor: number) => errors.filter((error) => Math.abs(error) <= Math.log(factor)).length;
  return {
    rows,
    mean: Math.exp(mean),
    scatter: Math.exp(Math.sqrt(variance)),
    withinTwo: within(2),
    withinThree: within(3),
  };
}

/** One column over all its rows. */
export function columnSummary(rows: readonly ToughnessRow[], column: 'steady' | 'specimen'): ColumnSummary {
  const inside = rows.filter((row) => row[column].inside).length;
  return { ...errorsOf(rows.map((row) => row[column].error)), inside };
}

/** The same for the gain over the bond, where ratios are printed. */
export function gainSummary(
  rows: readonly ToughnessRow[],
  column: 'steady' | 'specimen',
): Omit<ColumnSummary, 'inside'> {
  return errorsOf(rows.flatMap(({ gain }) => gain?.[column] ?? []));
}

/** Rows whose published value lies between the low end of the steady range and the high end of the specimen's. */
export function bracketed(rows: readonly ToughnessRow[]): number {
  return rows.filter(({ published, steady, specimen }) => steady.low <= published && published <= specimen.high).length;
}

/** Rows whose published value lies between the medians of both columns. */
export function betweenMedians(rows: readonly ToughnessRow[]): number {
  return rows.filter(({ published, steady, specimen }) => steady.median <= published && published <= specimen.median)
    .length;
}
