import { fail } from '../../problem/index.js';
import type { Note, SourceKey } from '../../provenance/index.js';
import { demandBetween, demandFiniteResults, demandWhole } from './check.js';
import type { Moments } from './distribution-moments.js';
import { type EvaluatePoints, mostInputs } from './sampled-model.js';

/** What one input does to the output, to first order. */
export interface InputEffect {
  /** Change of the output per change of the input. */
  readonly derivative: number;
  /** Derivative times the standard deviation of the input: signed, in the unit of the output. */
  readonly effect: number;
  /** Share of the output's variance; the shares add up to 1. */
  readonly share: number;
}

/** Mean and standard deviation of an output, and what each input contributes. */
export interface LinearMoments extends Moments {
  /** The mean with the bend of the response in each input counted in. */
  readonly secondOrderMean: number;
  /** One per input, in their order. */
  readonly effects: readonly InputEffect[];
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

export interface LinearMomentsOptions {
  /** Step of the differences as a share of each input's standard deviation, 1e-6 to 3; 1 when not given. */
  readonly step?: number;
}

/** Shift of the mean by the bend, in standard deviations, from which on it is named. */
const noticeableBend = 0.1;

/**
 * Mean and standard deviation of an output from those of its independent inputs: first order, second moments, from 2 k + 1 evaluations.
 *
 * With h = step σ_i and central differences f_i' = (f(μ + h) - f(μ - h))/(2 h): mean f(μ), variance Σ (f_i' σ_i)². The same points give
 * f_i'' = (f(μ + h) - 2 f(μ) + f(μ - h))/h² and the second-order mean f(μ) + ½ Σ f_i'' σ_i².
 * A step of one standard deviation follows the response where the inputs lie; a small one gives derivatives at the mean.
 *
 * Exact for a linear response; the derivatives for a quadratic one too. Correlated inputs are not covered.
 *
 * @param inputs mean and standard deviation of each, the latter 0 or more
 * @throws out-of-range; not-computable when the evaluation gives a number that is not finite
 * @source Ang & Tang 1975, ang-tang-1975
 */
export function linearMoments(
  inputs: readonly Moments[],
  evaluate: EvaluatePoints,
  { step = 1 }: LinearMomentsOptions = {},
): LinearMoments {
  const k = inputs.length;
  demandWhole('the number of inputs', k, 1, mostInputs);
  demandBetween('step', step, 1e-6, 3);
  demandMoments(inputs);
  const points = new Float64Array((2 * k + 1) * k);
  const means = inputs.map(({ mean }) => mean);
  for (let row = 0; row <= 2 * k; row++) points.set(means, row * k);
  inputs.forEach(({ mean, standardDeviation }, i) => {
    points[(2 * i + 1) * k + i] = mean - step * standardDeviation;
    points[(2 * i + 2) * k + i] = mean + step * standardDeviation;
  });
  const y = new Float64Array(2 * k + 1);
  evaluate(points, 2 * k + 1, y);
  demandFiniteResults('output', y);

  const middle = y[0] ?? 0;
  const slopes = inputs.map((_, i) => ((y[2 * i + 2] ?? 0) - (y[2 * i + 1] ?? 0)) / (2 * step));
  const bends = inputs.map(
    (_, i) => ((y[2 * i + 2] ?? 0) - middle + ((y[2 * i + 1] ?? 0) - middle)) / (2 * step * step),
  );
  const variance = slopes.reduce((sum, slope) => sum + slope * slope, 0);
  const shift = bends.reduce((sum, bend) => sum + bend, 0);
  const standardDeviation = Math.sqrt(variance);
  const bent: Note[] =
    Math.abs(shift) > noticeableBend * standardDeviation
      ? [
          {
            level: 'warning',
            text: `The response is bent over the scatter of the inputs: it moves the mean by ${(Math.abs(shift) / standardDeviation).toPrecision(2)} standard deviations. Samples tell more than first order here.`,
          },
        ]
      : [];
  return {
    mean: middle,
    standardDeviation,
    secondOrderMean: middle + shift,
    effects: inputs.map((input, i) => effectOf(slopes[i] ?? 0, input.standardDeviation, variance)),
    notes: [{ level: 'assumption', text: 'The inputs are independent of one another.' }, ...bent],
    sources: ['ang-tang-1975'],
  };
}

const effectOf = (effect: number, deviation: number, variance: number): InputEffect => ({
  derivative: deviation > 0 ? effect / deviation : 0,
  effect,
  share: variance > 0 ? (effect * effect) / variance : 0,
});

function demandMoments(inputs: readonly Moments[]): void {
  inputs.forEach(({ mean, standardDeviation }, i) => {
    if (!(Number.isFinite(mean) && standardDeviation >= 0 && Number.isFinite(standardDeviation))) {
      fail({
        code: 'out-of-range',
        message: `input ${i + 1} has the mean ${mean} and the standard deviation ${standardDeviation}`,
        allowed: 'finite numbers, the standard deviation 0 or more',
      });
    }
  });
}
