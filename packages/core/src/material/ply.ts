import type { Problem } from '../problem/index.js';
import { type Note, type SourceKey, uniqueNotes } from '../provenance/index.js';
import { admissibility } from './admissibility.js';
import { demand, finite, positive, shown, within } from './check.js';
import type { Ply, Strengths } from './types.js';

/** What `ply` is given: the constants and the thickness; the rest may be left out. */
export interface PlyProperties extends Omit<Ply, 'name' | 'angle' | 'notes' | 'sources'> {
  readonly name?: string;
  readonly angle?: number;
  readonly notes?: readonly Note[];
  readonly sources?: readonly SourceKey[];
}

const strengthNames = ['Xt', 'Xc', 'Yt', 'Yc', 'S'] as const satisfies readonly (keyof Strengths)[];

function* faults(given: PlyProperties): Generator<Problem | undefined> {
  yield positive('thickness', given.thickness, 'm');
  yield finite('angle', given.angle ?? 0);
  yield* admissibility(given);
  if (given.E3 !== undefined) yield positive('E3', given.E3, 'Pa', 'not-admissible');
  if (given.shearStrength !== undefined) yield positive('shearStrength', given.shearStrength, 'Pa');
  if (given.density !== undefined) yield positive('density', given.density, 'kg/m^3');
  if (given.fibreVolumeFraction !== undefined) yield within('fibreVolumeFraction', given.fibreVolumeFraction, 0, 1);
  if (given.voidFraction !== undefined) yield within('voidFraction', given.voidFraction, 0, 1);
  for (const name of ['fibreArealMass', 'resinArealMass'] as const) {
    const mass = given[name];
    if (mass !== undefined) yield within(name, mass, 0, Number.POSITIVE_INFINITY, 'kg/m^2');
  }
  if (given.strengths !== undefined) {
    for (const name of strengthNames) yield positive(name, given.strengths[name], 'Pa');
  }
  for (const [name, value] of Object.entries({ ...given.expansion, ...given.moistureExpansion })) {
    yield finite(name, value);
  }
}

/**
 * A ply from constants given directly, as one data set: nothing in it is rescaled.
 * @param properties SI; E1, E2, G12 in Pa, thickness in m, both more than 0; |nu12| < sqrt(E1/E2); angle in degrees
 * (0 when not given); density in kg/m^3; strengths in Pa; expansion in 1/K.
 * @returns The ply, with the name `ply` when none is given.
 * @throws not-admissible for constants that no material can have, naming the bound.
 * @throws out-of-range for a thickness, density or strength that is not positive, or a fraction outside 0 to 1.
 * @throws not-a-number for anything that is not finite.
 */
export function ply(properties: PlyProperties): Ply {
  demand(...faults(properties));
  const { name = 'ply', angle = 0, notes = [], sources = [], ...rest } = properties;
  const soft = rest.E1 < softest ? [softNote(name, rest.E1)] : [];
  return { name, angle, ...rest, notes: uniqueNotes([...notes, ...soft]), sources };
}

/** Pa: a gel has more, so a modulus below was meant in GPa or MPa. */
const softest = 1e4;

const softNote = (name: string, E1: number): Note => ({
  level: 'warning',
  text: `${name}: E1 = ${shown(E1)} Pa is softer than a gel; moduli are in Pa, lengths in m`,
});

/** Mass per area of a ply, density times thickness, kg/m^2; undefined when its density is not known. */
export function arealMass(ply: Pick<Ply, 'density' | 'thickness'>): number | undefined {
  return ply.density === undefined ? undefined : ply.density * ply.thickness;
}
