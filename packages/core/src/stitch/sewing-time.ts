import { requireNotNegative, requirePositive } from './check.js';

/** What the time to sew a part follows from. */
export interface SewingTimeInput {
  /** Stitches of all rows, 0 or more. */
  readonly stitches: number;
  readonly rows: number;
  /** Stitches per second, above 0. */
  readonly rate: number;
  /** s, for each row: placing, start and stop; 0 when not given. */
  readonly setup?: number;
  /** s, once for each part: loading, threads, unloading; 0 when not given. */
  readonly handling?: number;
}

/**
 * Sewing time of one part, s: stitches/rate + rows x setup + handling.
 * @throws out-of-range rate not above 0, another argument below 0
 */
export function sewingTime({ stitches, rows, rate, setup = 0, handling = 0 }: SewingTimeInput): number {
  requirePositive('rate', rate, (r) => `${r * 60} stitches per minute`);
  requireNotNegative('stitches', stitches);
  requireNotNegative('rows', rows);
  requireNotNegative('setup', setup, (t) => `${t} s`);
  requireNotNegative('handling', handling, (t) => `${t} s`);
  return stitches / rate + rows * setup + handling;
}
