import {
  cylindricalBending,
  laminate,
  respond,
  shearStressDistribution,
  stiffness,
  transverseShear,
} from '../laminate/index.js';
import { type Given, type PlyInputs, plyAt, si } from './inputs.js';
import { type ModulusRatios, unitStack } from './ratio-inputs.js';
import type { ComputedValues } from './types.js';

interface ThreePointBending {
  readonly ply: PlyInputs;
  readonly G13: Given;
  readonly G23: Given;
  /** Degrees. */
  readonly angles: readonly number[];
  readonly thicknesses: readonly Given[];
  readonly span: Given;
  /** Force per width at mid-span. */
  readonly lineLoad: Given;
}

/** Deflection of a narrow strip at mid-span, stress along it at the lower face there, shear stress between its two lowest plies. */
export function threePointBending(inputs: ThreePointBending): ComputedValues {
  const [G13, G23] = [si(inputs.G13, 'modulus'), si(inputs.G23, 'modulus')];
  const stack = laminate(
    inputs.angles.map((angle, k) => ({
      ...plyAt(inputs.ply, angle, si(inputs.thicknesses[k] ?? Number.NaN, 'length')),
      G13,
      G23,
    })),
  );
  const [P, L] = [si(inputs.lineLoad, 'forcePerLength'), si(inputs.span, 'length')];
  const d11 = stiffness(stack).d[0]?.[0] ?? Number.NaN;
  const bent = respond(stack, { M: [(P * L) / 4, 0, 0] }).plies[0];
  const shear = shearStressDistribution(stack, { Vx: P / 2 }).points.find(({ ply }) => ply === 2);
  return {
    w: (P * L ** 3 * d11) / 48 + (P * L) / (4 * transverseShear(stack).H[0][0]),
    sxE: Math.abs(bent?.top.stress[0] ?? Number.NaN),
    txzD: shear?.tauXz ?? Number.NaN,
  };
}

interface StripDeflection {
  readonly ply: ModulusRatios;
  readonly stack: string;
  /** In thicknesses. */
  readonly spans: readonly number[];
}

/** Deflection of a wide strip under half a sine wave of pressure p by first-order theory: 100 E2 h^3 w/(p L^4). */
export function stripDeflection({ ply, stack, spans }: StripDeflection): ComputedValues {
  const one = unitStack(ply, stack);
  return Object.fromEntries(
    spans.map((span) => [`w${span}`, (100 * cylindricalBending(one, { span, pressure: 1 }).deflection) / span ** 4]),
  );
}
