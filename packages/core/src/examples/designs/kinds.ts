import { type KindName, kindOf } from '../kinds.js';
import type { WorkedExample } from '../types.js';
import { clampedCircleDesign, stripBlisterDesign } from './blister-designs.js';
import {
  curedPlyDesign,
  expansionMicromechanicsDesign,
  massFractionDesign,
  micromechanicsDesign,
  plyThicknessDesign,
} from './constituent-designs.js';
import { edgeDelaminationDesign } from './edge-designs.js';
import {
  bimetalDesign,
  laminateExpansionDesign,
  laminateModuliDesign,
  laminateResponseDesign,
  laminateStiffnessDesign,
  prescribedStrainDesign,
  thermalResponseDesign,
} from './laminate-designs.js';
import type { DesignParts, NoDesign } from './parts.js';
import {
  crossPlyPlateDesign,
  orthotropicPlateDesign,
  plateBucklingDesign,
  plateDeflectionDesign,
  plateFrequenciesDesign,
} from './plate-designs.js';
import {
  offAxisComplianceDesign,
  offAxisConstantsDesign,
  offAxisExpansionDesign,
  offAxisStiffnessDesign,
  plyStiffnessDesign,
  quasiIsotropicDesign,
} from './ply-designs.js';
import { wrinklingCoefficientDesign, wrinklingDeepCoreDesign } from './sandwich-designs.js';
import { threePointBendingDesign } from './shear-designs.js';
import { maxStressCheckDesign, offAxisStrengthDesign, plyDiscountDesign } from './strength-designs.js';

const without = (why: string, instead: string) => (): NoDesign => ({ why, instead });

/** For each kind of example its inputs as a design file, or why a design file cannot hold it. */
const designs = {
  'ply-stiffness': plyStiffnessDesign,
  'off-axis-stiffness': offAxisStiffnessDesign,
  'off-axis-compliance': offAxisComplianceDesign,
  'off-axis-constants': offAxisConstantsDesign,
  'off-axis-expansion': offAxisExpansionDesign,
  'quasi-isotropic': quasiIsotropicDesign,
  'laminate-stiffness': laminateStiffnessDesign,
  'laminate-response': laminateResponseDesign,
  'thermal-response': thermalResponseDesign,
  'laminate-expansion': laminateExpansionDesign,
  'prescribed-strain': prescribedStrainDesign,
  'laminate-moduli': laminateModuliDesign,
  micromechanics: micromechanicsDesign,
  'hybrid-micromechanics': without(
    'a design file lays fibres of several kinds in layers, or as warp and weft, and does not mix them in one ply',
    'a fabric whose `layers` each name their `fibre`, or one with a `weftFibre`',
  ),
  'expansion-micromechanics': expansionMicromechanicsDesign,
  'ply-thickness': plyThicknessDesign,
  'fibre-mass-fraction': massFractionDesign,
  'glass-thickness-formula': without(
    'its values are coefficients of a formula, and no results of a laminate',
    'thickness from mass and fibre content: `selvage examples ply-thickness-carbon-a --design`',
  ),
  'bimetal-curvature': bimetalDesign,
  'cured-ply': curedPlyDesign,
  'off-axis-strength': offAxisStrengthDesign,
  'tsai-wu-coefficients': without(
    'a design file judges loads by the criterion and does not list its coefficients',
    'the criterion under a load: `selvage examples off-axis-strength-carbon-60 --design`; `tsaiWuCoefficients` of the library',
  ),
  'max-stress-check': maxStressCheckDesign,
  'ply-discount': plyDiscountDesign,
  'three-point-bending': threePointBendingDesign,
  'strip-deflection': without(
    'a panel of a design file rests on four sides under even pressure; this is a wide strip under half a sine wave of it',
    '`selvage examples plate-deflection-uniform --design` for a panel; `cylindricalBending` of the library for the strip',
  ),
  'plate-deflection': plateDeflectionDesign,
  'orthotropic-plate-deflection': orthotropicPlateDesign,
  'wrinkling-coefficient': wrinklingCoefficientDesign,
  'wrinkling-deep-core': wrinklingDeepCoreDesign,
  'edge-delamination-onset': edgeDelaminationDesign,
  'plate-frequencies': plateFrequenciesDesign,
  'plate-buckling-aspect': plateBucklingDesign,
  'cross-ply-plate': crossPlyPlateDesign,
  'clamped-circle': clampedCircleDesign,
  'strip-blister': stripBlisterDesign,
} as const satisfies Record<KindName, unknown>;

/** The sections of the design file of an example, or why it has none. */
export function designParts(example: WorkedExample): DesignParts | NoDesign {
  // The inputs are data of the repository; a test computes the design of every example.
  const partsOf = designs[kindOf(example)] as (given: unknown) => DesignParts | NoDesign;
  return partsOf(example.inputs);
}
