import {
  type BridgingFailure,
  type BridgingParameters,
  bridgingModel,
  bridgingPriors,
  givingWay,
  openingAt,
  openingWork,
  type PenetrationInput,
  type SamplingOptions,
  samplePrior,
  specimenPriors,
  startSampling,
} from '../../stitch/index.js';

/** 95 % point of the normal distribution. */
const z95 = 1.6448536269514722;

/** What is drawn for one sample: the same for every coupon, whatever of it that uses. */
export interface Draw {
  readonly parameters: BridgingParameters;
  readonly bondToughnessFactor: number;
  readonly armStrengthFactor: number;
  readonly armStiffnessFactor: number;
  /** Logarithm of the force of measured stitches over its median, in standard deviations. */
  readonly measuredDeviation: number;
  /** Place of the bond within its range, 0 to 1, where one is given. */
  readonly bondPlace: number;
}

/** A sample of the standard normal distribution: ln of a lognormal of median 1 whose logarithm has that deviation. */
const standardNormal = (random: () => number): number =>
  Math.log(samplePrior({ value: 1, low: Math.exp(-z95), high: Math.exp(z95), distribution: 'lognormal' }, random));

const names = Object.keys(bridgingPriors) as readonly (keyof BridgingParameters)[];

/** Draws all samples: sample i of a seed has the same stitch, bond and arms in all coupons. @throws out-of-range see `startSampling` */
export function drawSamples(options: SamplingOptions): readonly Draw[] {
  const { samples, random } = startSampling(options);
  return Array.from({ length: samples }, () => {
    const parameters: Partial<Record<keyof BridgingParameters, number>> = {};
    for (const name of names) parameters[name] = samplePrior(bridgingPriors[name], random);
    return {
      parameters: parameters as BridgingParameters,
      bondToughnessFactor: samplePrior(specimenPriors.bondToughnessFactor, random),
      armStrengthFactor: samplePrior(specimenPriors.armStrengthFactor, random),
      armStiffnessFactor: samplePrior(specimenPriors.armStiffnessFactor, random),
      bondPlace: random(),
      measuredDeviation: standardNormal(random),
    };
  });
}

/** Parameters of a penetration with what is given kept, and without what its bends do not use. */
export function parametersWith(
  drawn: BridgingParameters,
  { parameters, bends }: PenetrationInput,
): Partial<BridgingParameters> {
  if (bends !== 'yielding') return { ...drawn, ...parameters };
  const { beddingIn: _, ...rest } = drawn;
  return { ...rest, ...parameters };
}

/** Straight opening of one penetration: N, m, J. */
export interface OpeningNumbers {
  readonly force: number;
  readonly opening: number;
  readonly work: number;
  readonly failure: BridgingFailure;
}

/** Peak, opening there and work of a penetration that opens straight, without its curve. */
export function openingNumbers(penetration: PenetrationInput): OpeningNumbers {
  const { model } = bridgingModel(penetration);
  const way = givingWay(model);
  const { force, failure } = way;
  return { force, opening: openingAt(model, force), work: openingWork(model, way), failure };
}

/** Middle of some draws: geometric means, arithmetic where a parameter may be 0. */
export function middleOf(draws: readonly Draw[]): Draw {
  const over = (of: (draw: Draw) => number): number => {
    const values = draws.map(of);
    const log = values.every((value) => value > 0);
    const sum = values.reduce((total, value) => total + (log ? Math.log(value) : value), 0);
    return log ? Math.exp(sum / values.length) : sum / values.length;
  };
  const parameters: Partial<Record<keyof BridgingParameters, number>> = {};
  for (const name of names) parameters[name] = over((draw) => draw.parameters[name]);
  return {
    parameters: parameters as BridgingParameters,
    bondToughnessFactor: over((draw) => draw.bondToughnessFactor),
    armStrengthFactor: over((draw) => draw.armStrengthFactor),
    armStiffnessFactor: over((draw) => draw.armStiffnessFactor),
    bondPlace: over((draw) => draw.bondPlace),
    measuredDeviation: draws.reduce((sum, draw) => sum + draw.measuredDeviation, 0) / draws.length,
  };
}

/** The single values of everything that is drawn. */
export function singleValues({ low, high }: { readonly low: number; readonly high: number }, bond: number): Draw {
  const parameters: Partial<Record<keyof BridgingParameters, number>> = {};
  for (const name of names) parameters[name] = bridgingPriors[name].value;
  return {
    parameters: parameters as BridgingParameters,
    bondToughnessFactor: 1,
    armStrengthFactor: 1,
    armStiffnessFactor: 1,
    bondPlace: high > low ? (bond - low) / (high - low) : 0,
    measuredDeviation: 0,
  };
}
