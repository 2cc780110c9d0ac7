import { fail, nearestHint } from '../problem/index.js';
import { clampedCircle, stripBlisterConstants } from './blister-kinds.js';
import { expansionMicromechanics, hybridMicromechanics, micromechanics } from './constituent-kinds.js';
import { crossPlyPlateDeflection, orthotropicPlateDeflection } from './deflection-kinds.js';
import { edgeDelaminationOnset } from './edge-kinds.js';
import {
  bimetalCurvature,
  laminateExpansion,
  laminateModuli,
  laminateResponse,
  laminateStiffness,
  prescribedStrain,
  thermalResponse,
} from './laminate-kinds.js';
import { crossPlyPlate, plateBucklingByAspect, plateFrequencies } from './plate-kinds.js';
import {
  offAxisCompliance,
  offAxisExpansion,
  offAxisPlyConstants,
  offAxisStiffness,
  plyStiffness,
  quasiIsotropic,
} from './ply-kinds.js';
import { wrinklingCoefficient, wrinklingDeepCore } from './sandwich-kinds.js';
import { stripDeflection, threePointBending } from './shear-kinds.js';
import { maxStressCheck, offAxisStrength, plyDiscount, tsaiWuOfStrengths } from './strength-kinds.js';
import { curedPly, glassThicknessFormula, massFractionFromDensity, plyThickness } from './thickness-kinds.js';
import type { ComputedValues, WorkedExample } from './types.js';

/** For each kind of example what the library computes from its inputs, by the keys that reference-data/README.md names. */
const kinds = {
  'ply-stiffness': plyStiffness,
  'off-axis-stiffness': offAxisStiffness,
  'off-axis-compliance': offAxisCompliance,
  'off-axis-constants': offAxisPlyConstants,
  'off-axis-expansion': offAxisExpansion,
  'quasi-isotropic': quasiIsotropic,
  'laminate-stiffness': laminateStiffness,
  'laminate-response': laminateResponse,
  'thermal-response': thermalResponse,
  'laminate-expansion': laminateExpansion,
  'prescribed-strain': prescribedStrain,
  'laminate-moduli': laminateModuli,
  micromechanics,
  'hybrid-micromechanics': hybridMicromechanics,
  'expansion-micromechanics': expansionMicromechanics,
  'ply-thickness': plyThickness,
  'fibre-mass-fraction': massFractionFromDensity,
  'glass-thickness-formula': glassThicknessFormula,
  'bimetal-curvature': bimetalCurvature,
  'cured-ply': curedPly,
  'off-axis-strength': offAxisStrength,
  'tsai-wu-coefficients': tsaiWuOfStrengths,
  'max-stress-check': maxStressCheck,
  'ply-discount': plyDiscount,
  'three-point-bending': threePointBending,
  'strip-deflection': stripDeflection,
  'plate-deflection': crossPlyPlateDeflection,
  'orthotropic-plate-deflection': orthotropicPlateDeflection,
  'wrinkling-coefficient': wrinklingCoefficient,
  'wrinkling-deep-core': wrinklingDeepCore,
  'edge-delamination-onset': edgeDelaminationOnset,
  'plate-frequencies': plateFrequencies,
  'plate-buckling-aspect': plateBucklingByAspect,
  'cross-ply-plate': crossPlyPlate,
  'clamped-circle': clampedCircle,
  'strip-blister': stripBlisterConstants,
} as const;

export type KindName = keyof typeof kinds;

/**
 * What the library computes from the inputs of an example, SI.
 * @throws unknown-name for a kind that the library does not compute
 */
export function compute(example: Pick<WorkedExample, 'id' | 'kind' | 'inputs'>): ComputedValues {
  // The inputs are data of the repository; test/published runs every example through its kind.
  const computeKind = kinds[kindOf(example)] as (given: unknown) => ComputedValues;
  return computeKind(example.inputs);
}

/** The kind of an example. @throws unknown-name for one that the library does not compute */
export function kindOf({ id, kind }: Pick<WorkedExample, 'id' | 'kind'>): KindName {
  if (Object.hasOwn(kinds, kind)) return kind as KindName;
  return fail({
    code: 'unknown-name',
    message: `example ${id} is of the kind \`${kind}\`, which is not computed`,
    allowed: Object.keys(kinds).join(', '),
    ...nearestHint(kind, Object.keys(kinds)),
  });
}
