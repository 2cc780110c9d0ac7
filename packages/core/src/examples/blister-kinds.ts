import { ellipseBlister, type Laminate, laminate, stiffness, stripBlister } from '../laminate/index.js';
import { isotropicPly } from './inputs.js';
import type { ComputedValues } from './types.js';

/** Any will do: the constants of the theory are of no material and of no size. */
export const sheet = { E: 200e9, nu: 0.3, thickness: 1e-3, radius: 0.1, strain: -1e-3, length: 0.05 } as const;

/** An isotropic sheet and its bending stiffness. */
export function sheetOf(): [film: Laminate, D: number] {
  const film = laminate([isotropicPly(sheet.E, sheet.nu, sheet.thickness)]);
  return [film, stiffness(film).D[0]?.[0] ?? Number.NaN];
}

/** Buckling of a clamped circular isotropic plate under even compression: N R^2/D. */
export function clampedCircle(): ComputedValues {
  const [film, D] = sheetOf();
  const { radius: R, strain } = sheet;
  const { N } = ellipseBlister(film, { a: R, b: R, strain: [strain, strain, 0] });
  return { k: (-N[0] * R * R) / D };
}

/** Buckling of a clamped isotropic strip of length l: N l^2/D, and strain (l/h)^2. */
export function stripBlisterConstants(): ComputedValues {
  const [film, D] = sheetOf();
  const { length, thickness } = sheet;
  const { criticalN, criticalStrain } = stripBlister(film, { length });
  return { kN: (-criticalN * length ** 2) / D, kStrain: -criticalStrain * (length / thickness) ** 2 };
}
