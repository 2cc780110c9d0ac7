import { demandWhole } from './check.js';
import { type Distribution, quantileFunction } from './distributions.js';

/** Evaluates points: reads `count` rows of inputs, writes one output per row; all must be finite. */
export type EvaluatePoints = (inputs: Float64Array, count: number, outputs: Float64Array) => void;

/** Most inputs of a study. */
export const mostInputs = 1000;

/**
 * Rows of independent samples, one column per distribution.
 *
 * @param samples rows, whole, 1 or more
 * @param random gives numbers above 0 and below 1; rows are drawn one after the other, columns from left to right
 * @returns flat, row-major
 * @throws out-of-range
 */
export function sampleRows(
  distributions: readonly Distribution[],
  samples: number,
  random: () => number,
): Float64Array {
  demandWhole('the number of inputs', distributions.length, 1, mostInputs);
  demandWhole('samples', samples, 1, 10_000_000);
  const columns = distributions.map(quantileFunction);
  const out = new Float64Array(samples * columns.length);
  let at = 0;
  for (let row = 0; row < samples; row++) {
    for (const quantile of columns) out[at++] = quantile(random());
  }
  return out;
}

/**
 * Rows of samples by a Latin hypercube: of each input, one sample from each of as many equally likely ranges as there are rows.
 *
 * Means of what depends on the inputs one by one settle much sooner than with plain samples; standard errors that suppose plain samples are
 * then too large.
 *
 * @returns flat, row-major
 * @throws out-of-range
 * @source McKay, Beckman & Conover 1979, mckay-1979
 */
export function latinHypercube(
  distributions: readonly Distribution[],
  samples: number,
  random: () => number,
): Float64Array {
  demandWhole('the number of inputs', distributions.length, 1, mostInputs);
  demandWhole('samples', samples, 1, 10_000_000);
  const width = distributions.length;
  const out = new Float64Array(samples * width);
  distributions.map(quantileFunction).forEach((quantile, column) => {
    const ranges = shuffled(samples, random);
    for (let row = 0; row < samples; row++) {
      out[row * width + column] = quantile(((ranges[row] ?? 0) + random()) / samples);
    }
  });
  return out;
}

/** 0 to n - 1 in random order, by Fisher and Yates. */
function shuffled(n: number, random: () => number): Int32Array {
  const out = new Int32Array(n);
  for (let i = 0; i < n; i++) {
    const j = Math.floor(random() * (i + 1));
    out[i] = out[j] ?? 0;
    out[j] = i;
  }
  return out;
}
