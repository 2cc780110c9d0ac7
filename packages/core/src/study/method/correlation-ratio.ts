import { fail } from '../../problem/index.js';
import { demandFiniteResults, demandWhole } from './check.js';
import { type BootstrapOptions, bootstrap, type RangedEstimate } from './estimate.js';

export interface CorrelationRatioOptions extends BootstrapOptions {
  /** Groups of neighbouring inputs, whole, 2 to half the samples; the square root of the samples when not given. */
  readonly groups?: number;
}

/**
 * The share of an output's variance that one input explains by itself, from plain samples: what Sobol's first-order index is, at no further
 * evaluations.
 *
 * Samples are sorted by the input into groups of equal size, equal inputs together. With SW the sum of squares within the groups and S that about the
 * mean, η² = 1 - (SW/(n - groups))/(S/(n - 1)), which is 0 on average where the input does nothing and may then come out below 0. The
 * range is the bootstrap's, moved by as much as the bootstrap overrates on average.
 *
 * @param inputs samples of the input, at least 10
 * @param outputs as many, at the same points
 * @returns 0 with a range of 0 where the outputs are alike
 * @throws contradiction for different lengths; out-of-range; not-computable for numbers that are not finite
 * @source Pearson 1905 (ratio), pearson-1905; Kelley 1935 (correction for the number of groups), kelley-1935
 */
export function correlationRatio(
  inputs: ArrayLike<number>,
  outputs: ArrayLike<number>,
  options: CorrelationRatioOptions = {},
): RangedEstimate {
  const n = inputs.length;
  if (outputs.length !== n) {
    fail({ code: 'contradiction', message: `${n} inputs and ${outputs.length} outputs`, allowed: 'as many of either' });
  }
  demandWhole('the number of samples', n, 10, 10_000_000);
  const { groups = Math.floor(Math.sqrt(n)) } = options;
  demandWhole('groups', groups, 2, Math.floor(n / 2));
  demandFiniteResults('input', inputs);
  demandFiniteResults('output', outputs);
  const group = groupsOf(inputs, groups);
  const ratio = (rows: Int32Array): number => corrected(outputs, group, groups, rows);
  const value = ratio(Int32Array.from({ length: n }, (_, j) => j));
  const [range] = bootstrap(n, (rows) => [ratio(rows)], options);
  const moved = value - (range?.mean ?? 0);
  return { value, low: (range?.low ?? 0) + moved, high: (range?.high ?? 0) + moved };
}

/** The group of each sample: by its place among the sorted inputs, equals in the group of the first of them. */
function groupsOf(inputs: ArrayLike<number>, groups: number): Int32Array {
  const n = inputs.length;
  const order = Int32Array.from({ length: n }, (_, j) => j);
  order.sort((i, j) => (inputs[i] ?? 0) - (inputs[j] ?? 0));
  const out = new Int32Array(n);
  let previous = Number.NaN;
  let current = 0;
  order.forEach((j, place) => {
    const value = inputs[j] ?? 0;
    if (value !== previous) current = Math.floor((place * groups) / n);
    previous = value;
    out[j] = current;
  });
  return out;
}

/** η² over some of the rows, each as often as it is listed. */
function corrected(y: ArrayLike<number>, group: Int32Array, groups: number, rows: Int32Array): number {
  const n = rows.length;
  // From the first output on, so that outputs alike have a variance of exactly 0.
  const origin = y[0] ?? 0;
  let sum = 0;
  for (const j of rows) sum += (y[j] ?? 0) - origin;
  const mean = origin + sum / n;
  const counts = new Int32Array(groups);
  const sums = new Float64Array(groups);
  let squares = 0;
  for (const j of rows) {
    const [g, apart] = [group[j] ?? 0, (y[j] ?? 0) - mean];
    counts[g] = (counts[g] ?? 0) + 1;
    sums[g] = (sums[g] ?? 0) + apart;
    squares += apart * apart;
  }
  let between = 0;
  let used = 0;
  counts.forEach((count, g) => {
    if (count === 0) return;
    used++;
    between += (sums[g] ?? 0) ** 2 / count;
  });
  if (!(squares > 0) || used === 1) return 0;
  return 1 - (squares - between) / (n - used) / (squares / (n - 1));
}
