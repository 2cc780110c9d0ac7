import { fail } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes } from '../../provenance/index.js';
import type { BridgingInput } from '../bridging/bridging-input.js';
import { intervalOf, type SamplingOptions, sampleBridging, startSampling } from '../bridging/bridging-interval.js';
import { bridgingLaw } from '../bridging/bridging-law.js';
import type { Interval } from '../bridging-types.js';
import { requireNotNegative } from '../check.js';
import { samplePrior } from '../sample-prior.js';
import { toughness } from './toughness.js';
import type { Toughness, ToughnessInput } from './toughness-types.js';

/** A value with the ends of its range; drawn from a triangle over it. */
export interface ValueRange {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What a toughness and its uncertainty follow from: the penetration in place of its law, the bond as a value or a range. */
export interface ToughnessIntervalInput extends Omit<ToughnessInput, 'law' | 'bondToughness'> {
  readonly penetration: BridgingInput;
  /** J/m^2; a range is drawn from. */
  readonly bondToughness: number | ValueRange;
}

/** Toughness with its uncertainty; J/m^2 and m. */
export interface ToughnessInterval {
  readonly increment: Interval;
  /** Absent where the zone may not fit. */
  readonly steady?: Interval;
  readonly usable?: Interval;
  readonly bridgingLength?: Interval;
  /** Share of samples in which the arms break below the steady toughness; absent without failure strains of an arm. */
  readonly armsFirst?: number;
  /** With the single values of the parameters. */
  readonly nominal: Toughness;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/**
 * {@link toughness} with the uncertainty of the stitch's parameters, and of the bond where its range is given.
 *
 * A steady range is given only where the nominal case and every sample but one in twenty have room for their zone. The range does not hold the
 * error of the model: from yarn data alone expect a factor of 2 to 3 on the increment. With rigid bends the steady value lies below most printed
 * toughnesses and what a test is foretold to read above most of them: neither is a bound.
 * @throws out-of-range a bond range that does not rise from low over value to high; see {@link toughness}, {@link bridgingInterval}
 */
export function toughnessInterval(input: ToughnessIntervalInput, options: SamplingOptions = {}): ToughnessInterval {
  const { penetration, bondToughness, ...rest } = input;
  const bond = typeof bondToughness === 'number' ? undefined : bondToughness;
  if (bond !== undefined) checkRange(bond);
  const single = typeof bondToughness === 'number' ? bondToughness : bondToughness.value;
  const law = bridgingLaw(penetration);
  const nominal = toughness({ ...rest, law, bondToughness: single });
  const { samples, random } = startSampling(options);
  const drawn = Array.from({ length: samples }, () => {
    const { peak, opening, work } = sampleBridging(penetration, random);
    const G0 = bond === undefined ? single : samplePrior({ ...bond, distribution: 'triangular' }, random);
    const one = { peak: { force: peak, opening }, work, notes: [], sources: [] };
    return toughness({ ...rest, law: one, bondToughness: G0 });
  });
  const steady = drawn.flatMap((one) => one.steady ?? []);
  const usable = drawn.flatMap((one) => one.usable ?? []);
  const lengths = drawn.flatMap((one) => one.bridgingLength ?? []);
  const fits = nominal.steady !== undefined && steady.length >= 0.95 * samples;
  const { ceiling } = nominal;
  const armsFirst = drawn.filter((one) => one.bond + one.increment > (ceiling ?? Number.POSITIVE_INFINITY)).length;
  return {
    increment: intervalOf(drawn.map((one) => one.increment)),
    ...(fits && { steady: intervalOf(steady), usable: intervalOf(usable) }),
    ...(lengths.length > 0 && { bridgingLength: intervalOf(lengths) }),
    ...(ceiling !== undefined && { armsFirst: armsFirst / samples }),
    nominal,
    notes: uniqueNotes([...nominal.notes, ...rangeNotes(samples, fits, nominal)]),
    sources: nominal.sources,
  };
}

function checkRange({ value, low, high }: ValueRange): void {
  for (const [name, number] of Object.entries({ low, value, high }))
    requireNotNegative(`bondToughness.${name}`, number);
  if (!(low <= value && value <= high)) {
    fail({
      code: 'out-of-range',
      message: `bondToughness = ${value} in a range of ${low} to ${high} J/m^2, must lie in it`,
      allowed: 'low <= value <= high',
    });
  }
}

function rangeNotes(samples: number, fits: boolean, nominal: Toughness): readonly Note[] {
  const text = `range of nine in ten of ${samples} samples of the stitch's parameters; the error of the model itself, a factor of 2 to 3 on the increment from yarn data alone, is not in it; beside print the steady value with rigid bends is mostly too low, what a test is foretold to read mostly too high`;
  const note: Note = { level: 'assumption', text };
  if (fits || nominal.steady === undefined) return [note];
  const room = 'no steady range: in more than one sample of twenty the bridged zone may not fit';
  return [note, { level: 'warning', text: room }];
}
