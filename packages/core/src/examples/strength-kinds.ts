import {
  type Criterion,
  failure,
  laminate,
  progressiveFailure,
  respond,
  strengthRatio,
  tsaiWuCoefficients,
  type Vector3,
} from '../laminate/index.js';
import type { Ply, Strengths } from '../material/index.js';
import {
  type Given,
  type GivenVector,
  isotropicPly,
  type PlyInputs,
  plyAt,
  type StackInputs,
  si,
  siVector,
} from './inputs.js';
import { namedVector } from './names.js';
import type { ComputedValues } from './types.js';

type StrengthInputs = Readonly<Record<keyof Strengths, Given>>;

const strengthsOf = ({ Xt, Xc, Yt, Yc, S }: StrengthInputs): Strengths => ({
  Xt: si(Xt, 'stress'),
  Xc: si(Xc, 'stress'),
  Yt: si(Yt, 'stress'),
  Yc: si(Yc, 'stress'),
  S: si(S, 'stress'),
});

/** Stress in ply axes under a stress in axes at the ply's angle. */
function plyStress(ply: Ply, stress: GivenVector): Vector3 {
  const { plies } = respond(laminate([{ ...ply, thickness: 1 }]), { N: siVector(stress, 'stress') });
  return plies[0]?.middle.stress12 ?? [Number.NaN, Number.NaN, Number.NaN];
}

const plyStressNames = ['s1', 's2', 't12'] as const;

const ratioOf = (ply: Ply, stress: Vector3, criterion: Criterion): number =>
  strengthRatio(ply, stress, criterion).ratio ?? Number.NaN;

interface OffAxisStrength {
  readonly ply: PlyInputs;
  readonly strengths: StrengthInputs;
  readonly angle: number;
  readonly stress: GivenVector;
}

/** Stress in ply axes of a ply at the angle, and how often the stress may be multiplied by three criteria. */
export function offAxisStrength({ ply, strengths, angle, stress }: OffAxisStrength): ComputedValues {
  const one = { ...plyAt(ply, angle, 1), strengths: strengthsOf(strengths) };
  const found = plyStress(one, stress);
  return {
    ...namedVector(plyStressNames, found),
    maxStress: ratioOf(one, found, 'maxStress'),
    tsaiHill: ratioOf(one, found, 'tsaiHill'),
    tsaiWu: ratioOf(one, found, 'tsaiWu'),
  };
}

/** The coefficients of the Tsai-Wu criterion with F12* = -1/2. */
export const tsaiWuOfStrengths = ({ strengths }: { strengths: StrengthInputs }): ComputedValues => ({
  ...tsaiWuCoefficients(strengthsOf(strengths)),
});

/** Stress in ply axes, which needs no ply constants, and the share of its strength that each component takes. */
export function maxStressCheck({ strengths, angle, stress }: Omit<OffAxisStrength, 'ply'>): ComputedValues {
  const one = { ...isotropicPly(1e9, 0, 1), angle, strengths: strengthsOf(strengths) };
  const [s1, s2, t12] = plyStress(one, stress);
  return {
    ...namedVector(plyStressNames, [s1, s2, t12]),
    share1: 1 / ratioOf(one, [s1, 0, 0], 'maxStress'),
    share2: 1 / ratioOf(one, [0, s2, 0], 'maxStress'),
    share12: 1 / ratioOf(one, [0, 0, t12], 'maxStress'),
  };
}

interface PlyDiscount extends StackInputs {
  readonly strengths: StrengthInputs;
  readonly N: GivenVector;
  readonly discount: 'matrix' | 'total';
  readonly factor: number;
}

/** First-ply and last-ply failure by Tsai-Wu under a pull along x, ply by ply discounted. */
export function plyDiscount(inputs: PlyDiscount): ComputedValues {
  const thickness = si(inputs.plyThickness, 'length');
  const strengths = strengthsOf(inputs.strengths);
  const stack = laminate(inputs.angles.map((angle) => ({ ...plyAt(inputs.ply, angle, thickness), strengths })));
  const load = { N: siVector(inputs.N, 'forcePerLength') };
  const { discount, factor } = inputs;
  const { firstPly, lastPly } = progressiveFailure(stack, load, { criterion: 'tsaiWu', discount, factor });
  return {
    firstRatio: firstPly.ratio,
    firstStress: (firstPly.ratio * load.N[0]) / stack.thickness,
    ratio0: failure(stack, load, 'tsaiWu').perPly[0]?.ratio ?? Number.NaN,
    lastRatio: lastPly.ratio,
    lastStrain: lastPly.before.strain[0],
  };
}
