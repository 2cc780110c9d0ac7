import { quantile, uniformRandom } from '../../numeric/index.js';
import { fail } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { BridgingFailure, Interval } from '../bridging-types.js';
import { bridgingPriors } from '../priors.js';
import { samplePrior } from '../sample-prior.js';
import { furtherSources } from './assumptions.js';
import type { BridgingInput } from './bridging-input.js';
import { lawOf } from './bridging-law.js';
import { bridgingModel, type PenetrationInput } from './bridging-model.js';
import { type BridgingParameters, bridgingParameterNames, yieldingParameterNames } from './bridging-parameters.js';
import { givingWay } from './failure-sites.js';
import { openingWork } from './opening-law.js';
import { sampleRod } from './rod.js';
import { openingAt } from './slip.js';

/** How many samples are drawn, and from which seed. */
export interface SamplingOptions {
  /** Whole, 10 to 100 000; 1000 when not given. */
  readonly samples?: number;
  /** Whole; 1 when not given. */
  readonly seed?: number;
}

/** One sample of the uncertain parameters and what follows from it; N, m, J. */
export interface BridgingSample {
  readonly peak: number;
  readonly opening: number;
  readonly work: number;
  readonly failure: BridgingFailure;
}

/** The law of a penetration with its uncertainty. */
export interface BridgingInterval {
  /** N */
  readonly peak: Interval;
  /** Opening (or length of path) at the peak, m. */
  readonly opening: Interval;
  /** J */
  readonly work: Interval;
  /** Share of the samples in which each gives way first; they add up to 1. */
  readonly failures: Readonly<Record<BridgingFailure, number>>;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** Median and the range of nine in ten. */
export function intervalOf(values: Iterable<number>): Interval {
  const sorted = Float64Array.from(values).sort();
  return { median: quantile(sorted, 0.5), low: quantile(sorted, 0.05), high: quantile(sorted, 0.95) };
}

/** Samples and generator of a run. @throws out-of-range samples or seed not whole or outside their range */
export function startSampling({ samples = 1000, seed = 1 }: SamplingOptions): {
  readonly samples: number;
  readonly random: () => number;
} {
  if (!(Number.isInteger(samples) && samples >= 10 && samples <= 100_000)) {
    fail({
      code: 'out-of-range',
      message: `samples = ${samples}, must be whole, 10 to 100000`,
      allowed: '10 to 100000',
    });
  }
  if (!Number.isSafeInteger(seed)) {
    fail({ code: 'out-of-range', message: `seed = ${seed}, must be a whole number`, allowed: 'a whole number' });
  }
  return { samples, random: uniformRandom(seed) };
}

/** Parameters that the model of the bends uses, in the order in which they are drawn. */
const drawnNames = {
  rigid: bridgingParameterNames.filter((name) => !yieldingParameterNames.includes(name)),
  yielding: bridgingParameterNames.filter((name) => name !== 'beddingIn'),
} as const;

function sampleThread(input: PenetrationInput, random: () => number): PenetrationInput {
  const parameters: Partial<Record<keyof BridgingParameters, number>> = {};
  for (const name of drawnNames[input.bends ?? 'rigid']) parameters[name] = samplePrior(bridgingPriors[name], random);
  return { ...input, parameters: { ...parameters, ...input.parameters } };
}

/** One sample: parameters given stay as they are, the others are drawn, always in the same order. */
export function sampleBridging(input: BridgingInput, random: () => number): BridgingSample {
  const { model } = bridgingModel('kind' in input ? sampleRod(input, random) : sampleThread(input, random));
  if (input.path !== undefined) {
    const { peak, work, failure } = lawOf(model, input.path);
    return { peak: peak.force, opening: peak.opening, work, failure };
  }
  const way = givingWay(model);
  return {
    peak: way.force,
    opening: openingAt(model, way.force),
    work: openingWork(model, way),
    failure: way.failure,
  };
}

/**
 * Peak, opening at the peak and work of a penetration with their uncertainty: parameters not given are drawn from the priors
 * (reference-data/stitch-priors.json), seeded; the same input and seed give the same bits.
 * @returns median and the range of nine in ten samples; share of each failure
 * @throws out-of-range samples or seed outside their range; see bridgingLaw
 * @source generator: Blackman and Vigna 2021
 */
export function bridgingInterval(input: BridgingInput, options: SamplingOptions = {}): BridgingInterval {
  const { model, notes } = bridgingModel(input);
  const nominal = lawOf(model, input.path, notes);
  const { samples, random } = startSampling(options);
  const drawn = Array.from({ length: samples }, () => sampleBridging(input, random));
  const share = (failure: BridgingFailure) => drawn.filter((sample) => sample.failure === failure).length / samples;
  return {
    peak: intervalOf(drawn.map((sample) => sample.peak)),
    opening: intervalOf(drawn.map((sample) => sample.opening)),
    work: intervalOf(drawn.map((sample) => sample.work)),
    failures: {
      threadAtCrack: share('threadAtCrack'),
      threadAtAnchor: share('threadAtAnchor'),
      threadPullOut: share('threadPullOut'),
    },
    notes: uniqueNotes([
      ...nominal.notes,
      {
        level: 'assumption',
        text: `range of nine in ten of ${samples} samples of the parameters not given, by the priors of stitching`,
        source: 'common-practice',
      },
    ]),
    sources: uniqueSources(nominal.sources, furtherSources(input)),
  };
}
