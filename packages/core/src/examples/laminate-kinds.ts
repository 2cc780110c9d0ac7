import {
  engineeringConstants,
  type Laminate,
  laminate,
  respond,
  stiffness,
  thermalExpansionOf,
} from '../laminate/index.js';
import { type Given, type GivenVector, isotropicPly, type StackInputs, si, siVector, stackOf } from './inputs.js';
import { namedMatrix, namedVector } from './names.js';
import type { ComputedValues } from './types.js';

const strainNames = ['eps0x', 'eps0y', 'gamma0xy'] as const;
const curvatureNames = ['kappax', 'kappay', 'kappaxy'] as const;

function matrices(stack: Laminate): ComputedValues {
  const { A, B, D } = stiffness(stack);
  return { ...namedMatrix('A', A), ...namedMatrix('B', B), ...namedMatrix('D', D) };
}

/** A, B and D. */
export const laminateStiffness = (inputs: StackInputs): ComputedValues => matrices(stackOf(inputs));

/** Deformation, and stress and strain of every ply in laminate axes, under forces and moments. */
export function laminateResponse(inputs: StackInputs & { N: GivenVector; M: GivenVector }): ComputedValues {
  const { strain, curvature, plies } = respond(stackOf(inputs), {
    N: siVector(inputs.N, 'forcePerLength'),
    M: siVector(inputs.M, 'momentPerLength'),
  });
  const states = plies.flatMap((one, k) =>
    (
      [
        ['top', one.top],
        ['mid', one.middle],
        ['bot', one.bottom],
      ] as const
    ).map(([face, point]) => {
      const at = `ply${k + 1}.${face}`;
      return {
        ...namedVector([`${at}.sx`, `${at}.sy`, `${at}.txy`], point.stress),
        ...namedVector([`${at}.epsx`, `${at}.epsy`, `${at}.gammaxy`], point.strain),
      };
    }),
  );
  return Object.assign({ ...namedVector(strainNames, strain), ...namedVector(curvatureNames, curvature) }, ...states);
}

/** Stiffness, thermal resultants and free deformation; the resultants are the reactions of the laminate held flat, reversed. */
export function thermalResponse(inputs: StackInputs & { temperatureChange: Given }): ComputedValues {
  const stack = stackOf(inputs);
  const temperatureChange = si(inputs.temperatureChange, 'temperatureChange');
  const free = respond(stack, { temperatureChange });
  const held = respond(stack, { temperatureChange, strain: [0, 0, 0], curvature: [0, 0, 0] });
  return {
    ...matrices(stack),
    NTx: -held.N[0],
    NTy: -held.N[1],
    MTx: -held.M[0],
    MTy: -held.M[1],
    ...namedVector(strainNames, free.strain),
    ...namedVector(curvatureNames, free.curvature),
  };
}

/** Thermal expansion coefficients of a laminate. */
export const laminateExpansion = (inputs: StackInputs): ComputedValues =>
  namedVector(['alphax', 'alphay', 'alphaxy'], thermalExpansionOf(stackOf(inputs)).strain);

/** Stiffness, ply stresses in laminate axes and resultants under a prescribed deformation. */
export function prescribedStrain(
  inputs: StackInputs & { strain: GivenVector; curvature: GivenVector },
): ComputedValues {
  const stack = stackOf(inputs);
  const { plies, N } = respond(stack, {
    strain: siVector(inputs.strain, 'strain'),
    curvature: siVector(inputs.curvature, 'curvature'),
  });
  const stresses = plies.map(({ angle, middle }) => ({
    [`sx_${angle}`]: middle.stress[0],
    [`sy_${angle}`]: middle.stress[1],
  }));
  return Object.assign({ ...matrices(stack), Nx: N[0], Ny: N[1] }, ...stresses);
}

/** In-plane constants, and strains and ply stresses under a mean stress. */
export function laminateModuli(inputs: StackInputs & { stress: GivenVector }): ComputedValues {
  const stack = stackOf(inputs);
  const [sx, sy, txy] = siVector(inputs.stress, 'stress');
  const h = stack.thickness;
  const { strain, plies } = respond(stack, { N: [sx * h, sy * h, txy * h] });
  const { Ex, Ey, Gxy, nuxy, nuyx } = engineeringConstants(stiffness(stack)).inPlane;
  const stresses = plies.map(({ angle, middle }) =>
    namedVector([`angle${angle}.sx`, `angle${angle}.sy`, `angle${angle}.txy`], middle.stress),
  );
  const strains = { epsx: strain[0], absEpsy: Math.abs(strain[1]), absGammaxy: Math.abs(strain[2]) };
  return Object.assign({ Ex, Ey, Gxy, nuxy, nuyx, ...strains }, ...stresses);
}

interface Bimetal {
  readonly alpha1: Given;
  readonly alpha2: Given;
  readonly temperatureChange: Given;
  readonly thickness: Given;
  /** E1/E2 and t1/t2; layer 1 lies at z < 0. */
  readonly modulusRatio: number;
  readonly thicknessRatio: number;
  readonly nu: number;
}

interface BimetalLayer {
  readonly E: number;
  readonly thickness: number;
}

/** E, Pa, and thickness, m, of the two layers of a strip, the lower one first. */
export function bimetalLayers(inputs: Bimetal): readonly [BimetalLayer, BimetalLayer] {
  const h = si(inputs.thickness, 'length');
  const upper = h / (1 + inputs.thicknessRatio);
  const modulus = 1e9; // only the ratio of the moduli matters
  return [
    { E: modulus * inputs.modulusRatio, thickness: h - upper },
    { E: modulus, thickness: upper },
  ];
}

/** Curvature of a heated strip of two isotropic layers, as a multiple of (alpha2 - alpha1) dT / h. */
export function bimetalCurvature(inputs: Bimetal): ComputedValues {
  const [alpha1, alpha2] = [si(inputs.alpha1, 'expansion'), si(inputs.alpha2, 'expansion')];
  const temperatureChange = si(inputs.temperatureChange, 'temperatureChange');
  const [lower, upper] = bimetalLayers(inputs);
  const strip = laminate([
    isotropicPly(lower.E, inputs.nu, lower.thickness, alpha1),
    isotropicPly(upper.E, inputs.nu, upper.thickness, alpha2),
  ]);
  const { curvature } = respond(strip, { temperatureChange });
  return { coefficient: (curvature[0] * strip.thickness) / ((alpha2 - alpha1) * temperatureChange) };
}
