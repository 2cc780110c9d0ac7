import { quantile, uniformRandom } from '../../numeric/index.js';
import { demandConfidence, demandSeed, demandWhole } from './check.js';

/** A number with the range in which the true one lies with the stated confidence. */
export interface RangedEstimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface BootstrapOptions {
  /** Whole, 50 to 100 000; 500 when not given. */
  readonly resamples?: number;
  /** Whole; 1 when not given. */
  readonly seed?: number;
  /** Share of true values that ranges hold, 0.5 to 0.9999; 0.95 when not given. */
  readonly confidence?: number;
}

/** A seed that keeps the numbers that draw rows apart from those that made the samples: its lowest 32 bits changed, those above as they are. */
const apart = (seed: number): number => Math.trunc(seed / 2 ** 32) * 2 ** 32 + ((seed ^ 0x5bd1e995) >>> 0);

/**
 * The middle ranges of what a statistic gives on resamples of `samples` rows, drawn with replacement.
 *
 * @param samples rows
 * @param statistic the numbers of interest, from the rows drawn
 * @returns for each number [low, high, mean] over the resamples
 * @throws out-of-range
 * @source Efron & Tibshirani 1993 (percentile interval)
 */
export function bootstrap(
  samples: number,
  statistic: (rows: Int32Array) => readonly number[],
  { resamples = 500, seed = 1, confidence = 0.95 }: BootstrapOptions,
): readonly { readonly low: number; readonly high: number; readonly mean: number }[] {
  demandWhole('resamples', resamples, 50, 100_000);
  demandSeed(seed);
  demandConfidence(confidence);
  const random = uniformRandom(apart(seed));
  const rows = new Int32Array(samples);
  const columns: Float64Array[] = [];
  for (let r = 0; r < resamples; r++) {
    for (let j = 0; j < samples; j++) rows[j] = Math.floor(random() * samples);
    statistic(rows).forEach((value, k) => {
      columns[k] ??= new Float64Array(resamples);
      const column = columns[k];
      column[r] = value;
    });
  }
  return columns.map((column) => {
    column.sort();
    return {
      low: quantile(column, (1 - confidence) / 2),
      high: quantile(column, (1 + confidence) / 2),
      mean: column.reduce((sum, value) => sum + value, 0) / resamples,
    };
  });
}
