import type { Fibre, Resin } from './types.js';

/** Constants of the plane across the fibre: Poisson ratio and shear modulus in Pa. */
export interface TransverseConstants {
  readonly nu23: number;
  readonly G23: number;
}

/**
 * Plane-strain bulk modulus of a material transversely isotropic about axis 1:
 * 1/K = 2 (1 - nu23)/E2 - 4 nu12^2/E1; for an isotropic one E / (2 (1 + nu)(1 - 2 nu)).
 * @param constants Pa; with 2 nu12^2 E2/E1 < 1 - nu23.
 * @returns Pa, more than 0 for an admissible material.
 * @source Hashin 1979 (recalled, not re-read).
 */
export function planeStrainBulkModulus(constants: {
  readonly E1: number;
  readonly E2: number;
  readonly nu12: number;
  readonly nu23: number;
}): number {
  const { E1, E2, nu12, nu23 } = constants;
  return 1 / ((2 * (1 - nu23)) / E2 - (4 * nu12 * nu12) / E1);
}

/**
 * Plane-strain bulk modulus of a unidirectional ply by the composite-cylinder model, exact for that geometry:
 * K = Km + Vf (Kf - Km)(Km + Gm) / (Km + Gm + Vm (Kf - Km)).
 * @param Kf Of the fibre, Pa. @param Km Of the resin, Pa. @param Gm Shear modulus of the resin, Pa.
 * @param Vf Fibre volume fraction, 0 to 1.
 * @source Hashin 1979 (recalled, not re-read).
 */
export function cylinderBulkModulus(Kf: number, Km: number, Gm: number, Vf: number): number {
  return Km + (Vf * (Kf - Km) * (Km + Gm)) / (Km + Gm + (1 - Vf) * (Kf - Km));
}

/**
 * nu23 and G23 of a unidirectional ply from its transverse isotropy: with K the plane-strain bulk modulus,
 * nu23 = 1 - E2/2 (1/K + 4 nu12^2/E1) and G23 = E2 / (2 (1 + nu23)). In this form 1 - nu23 - 2 nu12^2 E2/E1 = E2/(2K)
 * is always positive; nu23 > -1 is left to check, and fails when E2 is stiffer than K allows.
 * @param ply Pa. @param K Plane-strain bulk modulus, Pa.
 * @source Hashin 1979 (recalled, not re-read).
 */
export function transverseConstants(
  ply: { readonly E1: number; readonly E2: number; readonly nu12: number },
  K: number,
): TransverseConstants {
  const nu23 = 1 - (ply.E2 / 2) * (1 / K + (4 * ply.nu12 * ply.nu12) / ply.E1);
  return { nu23, G23: ply.E2 / (2 * (1 + nu23)) };
}

/**
 * nu23 of an anisotropic fibre that gives none (assumed, no source). The carbon fibres of the library have 0.07; from
 * there to 0.4, G23 of a carbon ply of fibre fraction up to 0.65 departs by 8 % at most from that with 0.3, and no constant
 * in the plane depends on it.
 */
const assumedFibreNu23 = 0.3;

/** True when nothing tells the fibre's nu23: none is given and its moduli along and across differ. */
export const lacksNu23 = ({ nu23, E1, E2 }: Fibre): boolean => nu23 === undefined && E1 !== E2;

/** The fibre's nu23; nu12 for an isotropic one, 0.3 for another, when it gives none. */
export function fibreNu23(fibre: Fibre): number {
  return fibre.nu23 ?? (lacksNu23(fibre) ? assumedFibreNu23 : fibre.nu12);
}

/**
 * nu23 and G23 of a unidirectional ply of `fibre` and `resin`, with the fibre's nu23 as `fibreNu23` has it; undefined
 * when that cannot belong to a fibre with its other constants. See {@link transverseConstants}.
 */
export function transverseConstantsOf(
  fibre: Fibre,
  resin: Resin,
  Vf: number,
  ply: { readonly E1: number; readonly E2: number; readonly nu12: number },
): TransverseConstants | undefined {
  const Kf = planeStrainBulkModulus({ ...fibre, nu23: fibreNu23(fibre) });
  if (!(Kf > 0 && Number.isFinite(Kf))) return undefined;
  const Km = planeStrainBulkModulus({ E1: resin.E, E2: resin.E, nu12: resin.nu, nu23: resin.nu });
  const Gm = resin.E / (2 * (1 + resin.nu));
  return transverseConstants(ply, cylinderBulkModulus(Kf, Km, Gm, Vf));
}
