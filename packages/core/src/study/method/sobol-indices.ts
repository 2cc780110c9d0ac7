import { fail } from '../../problem/index.js';
import type { Note, SourceKey } from '../../provenance/index.js';
import { demandFiniteResults } from './check.js';
import type { Distribution } from './distributions.js';
import { type BootstrapOptions, bootstrap, type RangedEstimate } from './estimate.js';
import { saltelliDesign, saltelliPoints } from './saltelli-design.js';
import type { EvaluatePoints } from './sampled-model.js';

/** What one input does to the scatter of an output. Estimates: the first may come out a little below 0. */
export interface SobolIndex {
  /** Share of the variance that goes when this input alone becomes known. */
  readonly first: RangedEstimate;
  /** Share of the variance that is left when all other inputs are known. */
  readonly total: RangedEstimate;
}

export interface SobolIndices {
  /** One per input, in their order. */
  readonly indices: readonly SobolIndex[];
  /** Mean and variance of the output. */
  readonly mean: number;
  readonly variance: number;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

export interface SobolOptions extends BootstrapOptions {
  /** N, whole, 10 or more; 1000 when not given. The model is evaluated N (inputs + 2) times. */
  readonly samples?: number;
}

/**
 * First-order and total Sobol indices of a model of independent inputs, with bootstrap ranges.
 *
 * Seeded: the same seed gives the same bits. For several outputs of one model evaluate {@link saltelliDesign} and call {@link sobolIndicesOf} for each.
 *
 * @throws out-of-range for samples, seed, distributions; not-computable when the evaluation gives a number that is not finite
 * @source Saltelli et al. 2010; Jansen 1999
 */
export function sobolIndices(
  distributions: readonly Distribution[],
  evaluate: EvaluatePoints,
  options: SobolOptions = {},
): SobolIndices {
  const { samples = 1000, seed = 1 } = options;
  const points = saltelliPoints(samples, distributions.length);
  const outputs = new Float64Array(points);
  evaluate(saltelliDesign(distributions, samples, seed), points, outputs);
  return sobolIndicesOf(outputs, samples, options);
}

/**
 * First-order and total Sobol indices from the outputs at the points of {@link saltelliDesign}.
 *
 * With V the variance of the outputs at A and B together: S_i = 1 - Σ (f(B) - f(A_B^i))²/(2 N V), T_i = Σ (f(A) - f(A_B^i))²/(2 N V). Ranges from
 * rows drawn again with replacement.
 *
 * @param outputs N (k + 2) numbers
 * @param samples N
 * @throws contradiction for outputs that are not rows of N; out-of-range; not-computable for an output that is not finite
 * @source Jansen 1999; Saltelli et al. 2010, table 2 (c, f), saltelli-2010, jansen-1999; ranges: efron-tibshirani-1993
 */
export function sobolIndicesOf(
  outputs: ArrayLike<number>,
  samples: number,
  options: BootstrapOptions = {},
): SobolIndices {
  const inputs = outputs.length / samples - 2;
  if (!(Number.isInteger(inputs) && inputs >= 1)) {
    fail({
      code: 'contradiction',
      message: `${outputs.length} outputs for ${samples} samples`,
      allowed: 'samples × (inputs + 2) outputs',
    });
  }
  saltelliPoints(samples, inputs);
  demandFiniteResults('output', outputs);

  const all = Int32Array.from({ length: samples }, (_, j) => j);
  const { mean, variance, first, total } = jansen(outputs, samples, inputs, all);
  const ranges = bootstrap(
    samples,
    (rows) => {
      const again = jansen(outputs, samples, inputs, rows);
      return [...again.first, ...again.total];
    },
    options,
  );
  const estimate = (values: readonly number[], i: number, at: number): RangedEstimate => ({
    value: values[i] ?? 0,
    low: ranges[at]?.low ?? 0,
    high: ranges[at]?.high ?? 0,
  });
  const still: Note[] =
    variance > 0
      ? []
      : [{ level: 'warning', text: 'The output is the same at all points: no input matters, all indices are 0.' }];
  return {
    indices: first.map((_, i) => ({ first: estimate(first, i, i), total: estimate(total, i, inputs + i) })),
    mean,
    variance,
    notes: [{ level: 'assumption', text: 'The inputs are independent of one another.' }, ...still],
    sources: ['saltelli-2010', 'jansen-1999', 'efron-tibshirani-1993'],
  };
}

/** The estimators over some of the rows, each as often as it is listed; all indices 0 where the outputs are alike. */
function jansen(y: ArrayLike<number>, samples: number, inputs: number, rows: Int32Array) {
  // From the first output on, so that outputs alike have a variance of exactly 0.
  const origin = y[0] ?? 0;
  let sum = 0;
  for (const j of rows) sum += (y[j] ?? 0) - origin + ((y[samples + j] ?? 0) - origin);
  const mean = origin + sum / (2 * rows.length);
  let squares = 0;
  for (const j of rows) {
    const [a, b] = [(y[j] ?? 0) - mean, (y[samples + j] ?? 0) - mean];
    squares += a * a + b * b;
  }
  const variance = squares / (2 * rows.length);
  const first: number[] = [];
  const total: number[] = [];
  for (let i = 0; i < inputs; i++) {
    const mixed = (2 + i) * samples;
    let fromB = 0;
    let fromA = 0;
    for (const j of rows) {
      const value = y[mixed + j] ?? 0;
      const [a, b] = [(y[j] ?? 0) - value, (y[samples + j] ?? 0) - value];
      fromA += a * a;
      fromB += b * b;
    }
    // Σ (a² + b²) is 2 N V.
    first.push(squares > 0 ? 1 - fromB / squares : 0);
    total.push(squares > 0 ? fromA / squares : 0);
  }
  return { mean, variance, first, total };
}
