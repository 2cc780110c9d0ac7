import type { Strengths } from '../../material/index.js';
import { type Given, isotropicPly, type PlyInputs } from '../inputs.js';
import type { ModulusRatios } from '../ratio-inputs.js';
import { digits, type Entry, inUnit } from './parts.js';

/** Expansion and swelling are given together in a design; what an example leaves out is left out. */
function coefficients({ alpha1, alpha2, beta1, beta2 }: PlyInputs): Entry {
  return {
    ...(alpha1 === undefined || alpha2 === undefined ? {} : { expansion: { alpha1, alpha2 } }),
    ...(beta1 === undefined || beta2 === undefined ? {} : { moistureExpansion: { beta1, beta2 } }),
  };
}

/** The ply of an example, its constants as the source prints them. */
export const plyEntry = (
  given: PlyInputs,
  thickness: Given,
  more: {
    readonly strengths?: Readonly<Record<keyof Strengths, Given>>;
    readonly G13?: Given;
    readonly G23?: Given;
  } = {},
): Entry => {
  const { E1, E2, G12, nu12 } = given;
  const { strengths, ...shear } = more;
  return {
    kind: 'ply',
    E1,
    E2,
    G12,
    nu12,
    ...shear,
    thickness,
    ...coefficients(given),
    ...(strengths === undefined ? {} : { strengths }),
  };
};

/** A ply whose constants an example gives as multiples of a modulus, here 1 GPa. */
export const ratioEntry = ({ E1, E2, G12, nu12, G13, G23 }: ModulusRatios, thickness: string): Entry => {
  const modulus = (multiple: number): string => `${digits(multiple)} GPa`;
  return {
    kind: 'ply',
    E1: modulus(E1),
    E2: modulus(E2),
    G12: modulus(G12),
    nu12: digits(nu12),
    G13: modulus(G13),
    G23: modulus(G23),
    thickness,
  };
};

/** An isotropic layer as a ply, for theories whose constants are of no material. */
export const isotropicEntry = (E: number, nu: number, thickness: string, more: Entry = {}): Entry => ({
  kind: 'ply',
  E1: inUnit(E, 'GPa'),
  E2: inUnit(E, 'GPa'),
  G12: inUnit(isotropicPly(E, nu, 1).G12, 'GPa'),
  nu12: nu,
  thickness,
  ...more,
  basis: 'assumed',
});
