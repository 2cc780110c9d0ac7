import { ellipseBlister, type Laminate, laminate, stiffness, stripBlister } from '../laminate/index.js';
import { isotropicPly } from './inputs.js';
import type { ComputedValues } from './types.js';

const thickness = 1e-3;

/** An isotropic sheet and its bending stiffness. */
function sheetOf(): [sheet: Laminate, D: number] {
  const sheet = laminate([isotropicPly(200e9, 0.3, thickness)]);
  return [sheet, stiffness(sheet).D[0]?.[0] ?? Number.NaN];
}

/** Buckling of a clamped circular isotropic plate under even compression: N R^2/D. */
export function clampedCircle(): ComputedValues {
  const [sheet, D] = sheetOf();
  const R = 0.1;
  const { N } = ellipseBlister(sheet, { a: R, b: R, strain: [-1e-3, -1e-3, 0] });
  return { k: (-N[0] * R * R) / D };
}

/** Buckling of a clamped isotropic strip of length l: N l^2/D, and strain (l/h)^2. */
export function stripBlisterConstants(): ComputedValues {
  const [sheet, D] = sheetOf();
  const length = 0.05;
  const { criticalN, criticalStrain } = stripBlister(sheet, { length });
  return { kN: (-criticalN * length ** 2) / D, kStrain: -criticalStrain * (length / thickness) ** 2 };
}
