import type { Interval } from '../../stitch/index.js';

/**
 * The value below which a share of weighted values lies, straight lines between neighbours: value k of n at S_k/S_n, S_k = k w_k + (n - 1) Σ_(i<k) w_i, k from 0.
 * With equal weights the same as `quantile`; what weighs nothing has next to no effect.
 * @param order indices by rising value
 */
function weightedQuantile(
  values: readonly number[],
  weights: readonly number[],
  order: readonly number[],
  share: number,
): number {
  const at = (list: readonly number[], k: number): number => list[order[k] as number] as number;
  const last = order.length - 1;
  let before = 0;
  const places = order.map((i, k) => {
    const place = k * (weights[i] as number) + last * before;
    before += weights[i] as number;
    return place;
  });
  const wanted = share * (places[last] as number);
  const next = places.findIndex((place) => place > wanted);
  if (next <= 0) return at(values, next < 0 ? last : 0);
  const [from, to] = [places[next - 1] as number, places[next] as number];
  const low = at(values, next - 1);
  return low + ((wanted - from) / (to - from)) * (at(values, next) - low);
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
