import { flatEdgeRelease, laminate, parseOrientationCode } from '../laminate/index.js';
import { type Given, type PlyInputs, plyAt, si } from './inputs.js';
import type { ComputedValues } from './types.js';

interface EdgeDelaminationOnset {
  readonly ply: PlyInputs;
  readonly stack: string;
  readonly plyThickness: Given;
  readonly strain: number;
  /** Plies between the tool side and the lower of the two mirror interfaces. */
  readonly pliesBelow: number;
}

/** Energy release rate of two mirror interfaces by the formula as printed, flat parts and one of the two surfaces counted; moduli before and after. */
export function edgeDelaminationOnset(inputs: EdgeDelaminationOnset): ComputedValues {
  const thickness = si(inputs.plyThickness, 'length');
  const plies = parseOrientationCode(inputs.stack).map(({ angle }) => plyAt(inputs.ply, angle, thickness));
  const { modulus, partedModulus, perSquare } = flatEdgeRelease(laminate(plies), inputs.pliesBelow);
  const G = perSquare * inputs.strain ** 2;
  return { G, GMetric: G, modulus, partedModulus };
}
