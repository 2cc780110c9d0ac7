import { edgeDelamination, laminate, parseOrientationCode } from '../laminate/index.js';
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

/** Energy release rate of two mirror interfaces with one of the two surfaces counted, so twice that per front; moduli before and after. */
export function edgeDelaminationOnset(inputs: EdgeDelaminationOnset): ComputedValues {
  const thickness = si(inputs.plyThickness, 'length');
  const plies = parseOrientationCode(inputs.stack).map(({ angle }) => plyAt(inputs.ply, angle, thickness));
  const { interfaces } = edgeDelamination(laminate(plies), { strain: inputs.strain });
  const pair = interfaces[inputs.pliesBelow - 1]?.pair;
  if (pair === undefined) return {};
  const { G, modulus, partedModulus } = pair;
  return { G: 2 * G, GMetric: 2 * G, modulus, partedModulus };
}
