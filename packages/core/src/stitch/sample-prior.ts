import type { Prior } from './priors.js';

/** 95 % point of the normal distribution. */
export const z95 = 1.6448536269514722;

/** Standard deviation of the logarithm of which nine in ten lie between two ends, s = ln(high/low)/(2 z95). */
export const logDeviation = ({ low, high }: Pick<Prior, 'low' | 'high'>): number => Math.log(high / low) / (2 * z95);

/** One sample of the standard normal distribution, by Box and Muller; `random` gives numbers above 0 and below 1. */
export const standardNormal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());

/**
 * One sample of a prior.
 * Lognormal: value e^(s z) with s = ln(high/low)/(2 z95), z normal by Box and Muller. Triangular: by its inverse distribution.
 * @param random gives numbers above 0 and below 1
 */
export function samplePrior(
  { value, low, high, distribution }: Pick<Prior, 'value' | 'low' | 'high' | 'distribution'>,
  random: () => number,
): number {
  if (distribution === 'lognormal') return value * Math.exp(logDeviation({ low, high }) * standardNormal(random));
  const share = random();
  const width = high - low;
  return share * width < value - low
    ? low + Math.sqrt(share * width * (value - low))
    : high - Math.sqrt((1 - share) * width * (high - value));
}
