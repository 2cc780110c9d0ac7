import { fail } from '../problem/index.js';
import { shown } from './check.js';
import { planeStrainBulkModulus } from './transverse-isotropy.js';
import type { Ply } from './types.js';

/** Elastic constants of a straight yarn, alike across its axis; moduli in Pa. */
export type YarnConstants = Pick<Ply, 'E1' | 'E2' | 'G12' | 'nu12' | 'G13' | 'nu23'>;

/** nu23 of a yarn that gives none (as printed for unidirectional plies by Soden and others 1998, recalled). */
export const assumedPlyNu23 = 0.4;

/** Means along a yarn of the powers of cosine and sine of its tilt, taken per length of cloth. */
export interface TiltMeans {
  readonly c4: number;
  readonly c2s2: number;
  readonly s4: number;
  readonly c2: number;
  readonly s2: number;
}

/**
 * Means of the tilt of a yarn that runs along z = a sin(pi x/l) over `share` of its length and straight over the rest. The
 * slope is q cos(pi x/l) with q = pi a/l; since cos^2 = 1/(1 + slope^2), the mean of cos^2 on the sine is (1 + q^2)^(-1/2)
 * and that of cos^4 is (1 + q^2/2)(1 + q^2)^(-3/2).
 * @param slope Largest slope q, 0 or more. @param share 0 to 1.
 * @returns Plain numbers; c2 + s2 = 1 and c4 + 2 c2s2 + s4 = 1.
 * @source Derived for this library, docs/theory/woven-crimp.md.
 */
export function tiltMeans(slope: number, share = 1): TiltMeans {
  const q2 = slope * slope;
  const root = Math.sqrt(1 + q2);
  // In this form no small difference of numbers near 1 is left: s2 is good for the least slope.
  const s2 = (share * q2) / (root * (1 + root));
  const c2s2 = (share * q2) / (2 * root * root * root);
  return { c4: 1 - s2 - c2s2, c2s2, s4: s2 - c2s2, c2: 1 - s2, s2 };
}

/** Stiffness of a yarn layer in its plane, Pa: along the yarn, coupled, and across it. */
export type LayerStiffness = readonly [Q11: number, Q12: number, Q22: number];

/**
 * Stiffness of a layer of undulated yarns whose slices carry the same load and shear freely out of the plane: the
 * compliance averaged along the cloth, inverted. Turned about axis 2, with 3 like 2 (E3 = E2, G13, nu13 = nu12):
 * S11 = c^4/E1 + c^2 s^2 (1/G13 - 2 nu12/E1) + s^4/E2, S12 = -(c^2 nu12/E1 + s^2 nu23/E2), S22 = 1/E2. The low estimate.
 * @param yarn Pa; G13 = G12 and nu23 = 0.4 where they are not given. @param means Of the yarn's tilt.
 * @source Ishikawa & Chou 1982, undulation in the crimp model (recalled, not re-read).
 */
export function equalStressLayer(yarn: YarnConstants, means: TiltMeans): LayerStiffness {
  const { E2 } = yarn;
  const { S11, S12 } = meanCompliance(yarn, means);
  const determinant = S11 / E2 - S12 * S12;
  return [1 / E2 / determinant, -S12 / determinant, S11 / determinant];
}

/** The compliance of {@link equalStressLayer}, 1/Pa. */
export function meanCompliance(
  yarn: YarnConstants,
  { c4, c2s2, s4, c2, s2 }: TiltMeans,
): { readonly S11: number; readonly S12: number } {
  const { E1, E2, nu12, G13, nu23 } = withAssumed(yarn);
  return {
    S11: c4 / E1 + c2s2 * (1 / G13 - (2 * nu12) / E1) + s4 / E2,
    S12: -((c2 * nu12) / E1 + (s2 * nu23) / E2),
  };
}

/** The yarn with G13 = G12 and nu23 = 0.4 where they are not given. */
export function withAssumed({ E1, E2, G12, nu12, G13 = G12, nu23 = assumedPlyNu23 }: YarnConstants) {
  return { E1, E2, G12, nu12, G13, nu23 };
}

/**
 * Stiffness of the same layer when neighbours hold every slice to the same strain and keep it from shearing: the turned
 * stiffness averaged along the cloth, then freed of stress through the thickness. The high estimate. With K the plane-strain
 * bulk modulus: C11 = E1 + 4 K nu12^2, C12 = C13 = 2 K nu12, C22 = C33 = K + G23, C23 = K - G23, C55 = G13.
 * @param yarn Pa, as in {@link equalStressLayer}. @param means Of the yarn's tilt.
 * @returns Pa; undefined when nu23 is above what goes with the other constants.
 * @throws not-admissible when nu23 is -1 or less, for which there is no G23.
 * @source Mean stiffness (Voigt); derived for this library, docs/theory/woven-crimp.md.
 */
export function equalStrainLayer(yarn: YarnConstants, means: TiltMeans): LayerStiffness | undefined {
  const { E1, E2, nu12, G13, nu23 } = withAssumed(yarn);
  const { c4, c2s2, s4, c2, s2 } = means;
  if (!(nu23 > -1)) {
    fail({
      code: 'not-admissible',
      message: `nu23 = ${shown(nu23)} leaves no shear modulus G23 = E2 / (2 (1 + nu23))`,
      allowed: 'more than -1',
    });
  }
  const K = planeStrainBulkModulus({ E1, E2, nu12, nu23 });
  if (!(K > 0 && Number.isFinite(K))) return undefined;
  const G23 = E2 / (2 * (1 + nu23));
  const [along, coupled, across, plane] = [E1 + 4 * K * nu12 * nu12, 2 * K * nu12, K + G23, K - G23];
  const C11 = c4 * along + 2 * c2s2 * (coupled + 2 * G13) + s4 * across;
  const C33 = s4 * along + 2 * c2s2 * (coupled + 2 * G13) + c4 * across;
  const C13 = c2s2 * (along + across - 4 * G13) + (c4 + s4) * coupled;
  const C12 = c2 * coupled + s2 * plane;
  const C23 = s2 * coupled + c2 * plane;
  return [C11 - (C13 * C13) / C33, C12 - (C13 * C23) / C33, across - (C23 * C23) / C33];
}
