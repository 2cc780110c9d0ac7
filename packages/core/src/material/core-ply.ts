import { fail } from '../problem/index.js';
import type { Note, SourceKey } from '../provenance/index.js';
import { demand, positive, shown } from './check.js';
import { ply } from './ply.js';
import type { Ply, Strengths } from './types.js';

/** A core as its data sheet gives it; SI units. */
export interface CoreProperties {
  readonly name?: string;
  /** m */
  readonly thickness: number;
  /** In the plane, Pa. */
  readonly E: number;
  /** Shear through the thickness, Pa. */
  readonly G: number;
  /** Modulus and shear strength through the thickness, Pa; face wrinkling takes E for a modulus that is not given. */
  readonly E3?: number;
  readonly shearStrength?: number;
  /** In the plane; E/(2G) - 1 when not given. */
  readonly nu?: number;
  /** kg/m^3 */
  readonly density: number;
  readonly expansion?: NonNullable<Ply['expansion']>;
  readonly strengths?: Strengths;
  readonly notes?: readonly Note[];
  readonly sources?: readonly SourceKey[];
}

/** Beyond this relative difference a core's E, G and nu are not those of an isotropic material. */
const anisotropic = 0.05;

/**
 * A core as one thick ply, isotropic in its plane: E1 = E2 = E, G12 = E/(2 (1 + nu)); its measured shear modulus through
 * the thickness stays apart as G13 = G23 = G.
 * @param core SI; thickness in m, E and G in Pa, density in kg/m^3, all more than 0; nu over -1 to under 0.5.
 * @throws out-of-range, not-admissible as `ply`; missing-key when nu is left out and E/(2G) - 1 is not from 0 to 0.5.
 */
export function corePly({ E, G, nu, notes = [], name = 'core', ...rest }: CoreProperties): Ply {
  demand(positive('E', E, 'Pa', 'not-admissible'), positive('G', G, 'Pa', 'not-admissible'));
  const isotropic = E / (2 * G) - 1;
  if (nu === undefined && !(isotropic >= 0 && isotropic < 0.5)) {
    fail({
      code: 'missing-key',
      message: `${name} needs nu: E/(2G) - 1 = ${shown(isotropic)} is no Poisson ratio of an isotropic core`,
      allowed: 'E/(2G) - 1 from 0 to 0.5, or nu given',
    });
  }
  const ratio = nu ?? isotropic;
  const inPlane = E / (2 * (1 + ratio));
  const assumed: Note[] = [];
  if (nu === undefined) {
    assumed.push({
      level: 'assumption',
      text: `${name}: Poisson ratio ${shown(ratio)} from E/(2G) - 1, as for an isotropic core`,
    });
  } else if (Math.abs(inPlane / G - 1) > anisotropic) {
    const odd = G > E ? '. G above E is that of a honeycomb, not of a foam: check the two' : '';
    assumed.push({
      level: G > E ? 'warning' : 'assumption',
      text: `${name}: shear in the plane is E/(2 (1 + nu)) = ${shown(Number((inPlane / 1e6).toPrecision(4)))} MPa; the G given, ${shown(G / 1e6)} MPa, counts through the thickness alone${odd}`,
    });
  }
  return ply({
    ...rest,
    name,
    E1: E,
    E2: E,
    G12: inPlane,
    nu12: ratio,
    G13: G,
    G23: G,
    core: true,
    notes: [...notes, ...assumed],
  });
}
