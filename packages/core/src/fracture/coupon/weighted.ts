import type { Interval } from '../../stitch/index.js';

/**
 * The value below which a share of weighted values lies, straight lines between neighbours; with equal weights the same as `quantile`.
 * @param order indices by rising value
 */
function weightedQuantile(
  values: readonly number[],
  weights: readonly number[],
  order: readonly number[],
  share: number,
): number {
  const at = (list: readonly number[], k: number): number => list[order[k] as number] as number;
  let total = 0;
  for (let k = 1; k < order.length; k++) total += (at(weights, k - 1) + at(weights, k)) / 2;
  let passed = 0;
  for (let k = 1; k < order.length; k++) {
    const step = (at(weights, k - 1) + at(weights, k)) / 2;
    if (step > 0 && passed + step >= share * total) {
      const t = (share * total - passed) / step;
      const from = at(values, k - 1);
      return from + t * (at(values, k) - from);
    }
    passed += step;
  }
  return at(values, order.length - 1);
}

/** Median and the range of nine in ten of weighted values, at least one. */
export function weightedInterval(values: readonly number[], weights: readonly number[]): Interval {
  const order = values.map((_, i) => i).sort((a, b) => (values[a] as number) - (values[b] as number));
  const at = (share: number) => weightedQuantile(values, weights, order, share);
  return { median: at(0.5), low: at(0.05), high: at(0.95) };
}

/** How many samples of equal weight would say as much: (Σ w)²/Σ w². */
export function effectiveSamples(weights: readonly number[]): number {
  const sum = weights.reduce((total, w) => total + w, 0);
  return sum ** 2 / weights.reduce((total, w) => total + w * w, 0);
}
