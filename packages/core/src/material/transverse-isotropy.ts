import type { Working } from '../working/index.js';
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
 * @param working takes the steps down, when given and the result is one that a material can have.
 */
export function transverseConstantsOf(
  fibre: Fibre,
  resin: Resin,
  Vf: number,
  ply: { readonly E1: number; readonly E2: number; readonly nu12: number },
  working?: Working,
): TransverseConstants | undefined {
  const nu_f23 = fibreNu23(fibre);
  const K_f = planeStrainBulkModulus({ ...fibre, nu23: nu_f23 });
  if (!(K_f > 0 && Number.isFinite(K_f))) return undefined;
  const K_m = planeStrainBulkModulus({ E1: resin.E, E2: resin.E, nu12: resin.nu, nu23: resin.nu });
  const G_m = resinShearModulus(resin);
  const K_c = cylinderBulkModulus(K_f, K_m, G_m, Vf);
  const found = transverseConstants(ply, K_c);
  if (found.nu23 > -1) {
    const { E1: E_f1, E2: E_f2, nu12: nu_f12 } = fibre;
    const phases = { E_f1, E_f2, nu_f12, nu_f23, E_m: resin.E, nu_m: resin.nu, G_m, V_f: Vf };
    working?.step('transverseIsotropy', { ...phases, K_f, K_m, K_c, ...ply, ...found });
  }
  return found;
}

/** Shear modulus of a resin, G = E / (2 (1 + nu)), Pa. */
export const resinShearModulus = ({ E, nu }: Pick<Resin, 'E' | 'nu'>): number => E / (2 * (1 + nu));
