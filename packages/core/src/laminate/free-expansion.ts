import type { Note, SourceKey } from '../provenance/index.js';
import { respond } from './respond.js';
import type { Laminate, Vector3 } from './types.js';

/** How an unloaded laminate answers to heat or moisture: strain and curvature per unit of it. */
export interface FreeExpansion {
  /** 1/K, or per moisture mass fraction; x, y, xy. */
  readonly strain: Vector3;
  /** 1/(K m), or 1/m per moisture mass fraction; zero for a symmetric laminate. */
  readonly curvature: Vector3;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/**
 * Expansion coefficients of a laminate that is free to stretch and bend: its response to a uniform change of 1 K.
 *
 * @returns strain 1/K (the laminate's alpha x, y, xy, engineering shear) and curvature 1/(K m)
 * @throws not-computable when a ply has no thermal expansion
 * @source Jones 1999, ch. 4.5
 */
export function thermalExpansionOf(laminate: Laminate): FreeExpansion {
  const { strain, curvature, notes, sources } = respond(laminate, { temperatureChange: 1 });
  return { strain, curvature, notes, sources };
}

/**
 * Swelling coefficients of a laminate that is free to stretch and bend: its response to a unit moisture mass fraction in every ply.
 *
 * @returns strain (the laminate's beta x, y, xy) and curvature 1/m, per mass fraction
 * @throws not-computable when a ply has no moisture expansion
 * @source Jones 1999, ch. 4.5
 */
export function moistureExpansionOf(laminate: Laminate): FreeExpansion {
  const { strain, curvature, notes, sources } = respond(laminate, { moisture: 1 });
  return { strain, curvature, notes, sources };
}
