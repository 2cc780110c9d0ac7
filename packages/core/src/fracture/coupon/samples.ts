import {
  type BridgingFailure,
  type BridgingParameters,
  bridgingModel,
  bridgingPriors,
  givingWay,
  openingAt,
  openingWork,
  type PenetrationInput,
  type Prior,
  type SamplingOptions,
  samplePrior,
  specimenPriors,
  standardNormal,
  startSampling,
} from '../../stitch/index.js';

/** What is drawn for one sample: the same for every coupon, whatever of it that uses. */
export interface Draw {
  readonly parameters: BridgingParameters;
  readonly bondToughnessFactor: number;
  readonly armStrengthFactor: number;
  readonly armStiffnessFactor: number;
  /** Logarithm of the force of measured stitches over its median, in standard deviations. */
  readonly measuredDeviation: number;
  /** Place of the bond within its range, 0 to 1, where one is given; its value when there is no place. */
  readonly bondPlace?: number;
}

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

/**
 * Weighted middle of some draws: geometric means, arithmetic ones of parameters that may be 0 and of the place of the bond.
 * @param weights of the draws; alike when not given
 */
export function middleOf(draws: readonly Draw[], weights: readonly number[] = draws.map(() => 1)): Draw {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = (of: (draw: Draw) => number): number =>
    draws.reduce((sum, draw, i) => sum + (weights[i] as number) * of(draw), 0) / total;
  const geometric = (of: (draw: Draw) => number): number => Math.exp(mean((draw) => Math.log(of(draw))));
  const parameters: Partial<Record<keyof BridgingParameters, number>> = {};
  for (const name of names) {
    parameters[name] = (bridgingPriors[name].low > 0 ? geometric : mean)((draw) => draw.parameters[name]);
  }
  return {
    parameters: parameters as BridgingParameters,
    bondToughnessFactor: geometric((draw) => draw.bondToughnessFactor),
    armStrengthFactor: geometric((draw) => draw.armStrengthFactor),
    armStiffnessFactor: geometric((draw) => draw.armStiffnessFactor),
    bondPlace: mean((draw) => draw.bondPlace ?? 0.5),
    measuredDeviation: mean((draw) => draw.measuredDeviation),
  };
}

/** The middle of the priors: the median of each; the bond as given, arms and measured stitch as they are. */
export function middleOfPriors(): Draw {
  const parameters: Partial<Record<keyof BridgingParameters, number>> = {};
  for (const name of names) parameters[name] = medianOf(bridgingPriors[name]);
  return {
    parameters: parameters as BridgingParameters,
    bondToughnessFactor: 1,
    armStrengthFactor: 1,
    armStiffnessFactor: 1,
    measuredDeviation: 0,
  };
}

/** Lognormal: its value; triangular: half of the area on either side. */
function medianOf(prior: Prior): number {
  return prior.distribution === 'lognormal' ? prior.value : samplePrior(prior, () => 0.5);
}

/** The draws with the arms, or the bond, of other samples: what says nothing of theirs. Half of all further on, round the end. */
export function withOther(
  draws: readonly Draw[],
  { arms, bond }: { readonly arms: boolean; readonly bond: boolean },
): readonly Draw[] {
  if (!arms && !bond) return draws;
  const half = Math.floor(draws.length / 2);
  return draws.map((draw, i) => {
    const other = draws[(i + half) % draws.length] as Draw;
    const { armStrengthFactor, armStiffnessFactor } = arms ? other : draw;
    const { bondToughnessFactor } = bond ? other : draw;
    const place = (bond ? other : draw).bondPlace;
    const { bondPlace: _, ...rest } = draw;
    return {
      ...rest,
      armStrengthFactor,
      armStiffnessFactor,
      bondToughnessFactor,
      ...(place !== undefined && { bondPlace: place }),
    };
  });
}
