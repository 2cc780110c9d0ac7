import type { Note } from '../../provenance/index.js';
import type { Interval } from '../../stitch/index.js';
import type { Verdict } from '../types.js';
import type { PulledCoupon } from './anchors.js';
import { drawByWeight } from './draw-by-weight.js';
import type { Foretold, Middle } from './foretell.js';
import type { Known } from './known.js';
import type { Draw } from './samples.js';
import { fullSimulations, simulatedSamples } from './simulated-samples.js';
import { weightedInterval } from './weighted.js';

/** How a coupon's samples scatter. */
export interface Spread {
  readonly peakForce: Interval;
  readonly toughness: Interval;
  /** What limits each sample, with its weight. */
  readonly firsts: readonly Verdict[];
  readonly weights: readonly number[];
  readonly notes: readonly Note[];
}

/** Miss of the fast model at the middle up to which its ranges are left as they are. */
const small = 0.1;

/**
 * Ranges and what limits, by the fast model; where that does not follow the simulations by some samples simulated in full, where it misses the middle by ranges widened by the miss.
 */
export function spreadOf(
  coupon: PulledCoupon,
  draws: readonly Draw[],
  { followed, values, model }: Foretold,
  { weights }: Known,
  { sample, result, reading }: Middle,
): Spread {
  if (!followed) {
    const few = drawByWeight(weights, fullSimulations).map((i) => draws[i] as Draw);
    const simulated = simulatedSamples(coupon, few);
    if (simulated.length > 0) {
      return {
        ...scatterOf(
          simulated,
          simulated.map(() => 1),
        ),
        notes: [fewNote(simulated.length)],
      };
    }
  }
  const scatter = scatterOf(values, weights);
  const middle = model(sample);
  const miss = {
    peakForce: result.peakForce / middle.peakForce,
    toughness: reading.toughness / middle.toughness,
  };
  return {
    ...scatter,
    peakForce: widened(scatter.peakForce, miss.peakForce),
    toughness: widened(scatter.toughness, miss.toughness),
    notes: [miss.peakForce, miss.toughness].some(isGreat)
      ? [missNote(Math.max(...[miss.peakForce, miss.toughness].map(offBy)))]
      : [],
  };
}

function scatterOf(
  samples: readonly { readonly peakForce: number; readonly toughness: number; readonly first: Verdict }[],
  weights: readonly number[],
): Omit<Spread, 'notes'> {
  const range = (values: readonly number[]): Interval => weightedInterval(values, weights);
  return {
    peakForce: range(samples.map(({ peakForce }) => peakForce)),
    toughness: range(samples.map(({ toughness }) => toughness)),
    firsts: samples.map(({ first }) => first),
    weights,
  };
}

const offBy = (miss: number): number => Math.max(miss, 1 / miss) - 1;
const isGreat = (miss: number): boolean => offBy(miss) > small;

function widened(interval: Interval, miss: number): Interval {
  if (!isGreat(miss)) return interval;
  return { ...interval, low: interval.low * Math.min(1, miss), high: interval.high * Math.max(1, miss) };
}

const fewNote = (samples: number): Note => ({
  level: 'warning',
  text: `The closed forms do not follow the simulation of this coupon, so that ranges and shares rest on ${samples} samples simulated in full: their ends are uncertain by some tenths. What is said of other densities is rough.`,
});

const missNote = (off: number): Note => ({
  level: 'warning',
  text: `The closed forms behind the ranges miss the simulation at the middle values by ${Math.round(100 * off)} %; the ranges are widened by that much.`,
});
