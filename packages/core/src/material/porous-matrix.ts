import type { Note } from '../provenance/index.js';
import type { Working } from '../working/index.js';
import { between, demand, positive, shown, within } from './check.js';
import type { Resin, VoidModel } from './types.js';

/** Above this a void fraction is remarked on (common practice, no source). */
const usualVoidLimit = 0.01;

/**
 * E and nu of a resin with spherical pores: K' = K (1 - v) / (1 + 3 v K/(4 G)),
 * G' = G (1 - v) / (1 + 6 v (K + 2 G)/(9 K + 8 G)), with K and G of the resin. For few pores E' is near E (1 - 2 v).
 * The Mori-Tanaka mean field; it is also the upper bound of Hashin and Shtrikman, so flat or joined pores soften more.
 * @param resin E in Pa, more than 0; nu over -1 to under 0.5. @param porosity v: pores per volume of resin and pores, 0 to 0.9.
 * @returns E in Pa, nu.
 * @param working takes the step down, when given, with these numbers beside it.
 * @throws out-of-range, not-admissible
 * @source Mori & Tanaka 1973 with spherical voids; to first order Mackenzie 1950 (recalled, not re-read).
 */
export function porousMatrix(
  resin: Pick<Resin, 'E' | 'nu'>,
  porosity: number,
  working?: { readonly at: Working; readonly beside: Readonly<Record<string, number>> },
): { readonly E: number; readonly nu: number } {
  demand(
    positive('resin E', resin.E, 'Pa'),
    between('resin nu', resin.nu, -1, 0.5, 'not-admissible'),
    within('porosity', porosity, 0, 0.9),
  );
  const K = resin.E / (3 * (1 - 2 * resin.nu));
  const G = resin.E / (2 * (1 + resin.nu));
  const solid = 1 - porosity;
  const bulk = (K * solid) / (1 + (3 * porosity * K) / (4 * G));
  const shear = (G * solid) / (1 + (6 * porosity * (K + 2 * G)) / (9 * K + 8 * G));
  const porous = {
    E: (9 * bulk * shear) / (3 * bulk + shear),
    nu: (3 * bulk - 2 * shear) / (2 * (3 * bulk + shear)),
  };
  const solidResin = { E_solid: resin.E, nu_solid: resin.nu, K_solid: K, G_solid: G };
  const softened = { K_pore: bulk, G_pore: shear, E_m: porous.E, nu_m: porous.nu };
  working?.at.step('porousResin', { ...working.beside, v_p: porosity, ...solidResin, ...softened });
  return porous;
}

/** How much of a ply is fibre and void, and what the voids are taken to do. */
export interface VoidContent {
  readonly fibreVolumeFraction: number;
  readonly voidFraction?: number;
  readonly voidModel?: VoidModel;
}

/** The resin as the stiffness of a ply sees it: porous where the model says so, its density that of the solid resin. */
export function stiffnessResin(
  resin: Resin,
  { fibreVolumeFraction: V_f, voidFraction: V_v = 0, voidModel }: VoidContent,
  working?: Working,
): Resin {
  if (voidModel !== 'porous-matrix' || V_v === 0) return resin;
  const shown = working && { at: working, beside: { V_f, V_v } };
  return { ...resin, ...porousMatrix(resin, V_v / (1 - V_f), shown) };
}

/** What to say of the voids in the ply `name`; empty without voids. */
export function voidNotes(name: string, { voidFraction = 0, voidModel = 'mass-only' }: VoidContent): Note[] {
  if (!(voidFraction > 0)) return [];
  const massOnly = voidModel === 'mass-only';
  const assumption: Note = massOnly
    ? { level: 'assumption', text: `${name}: voids lower the mass only, the stiffness is that without voids` }
    : {
        level: 'assumption',
        text: `${name}: voids are spheres that soften the resin evenly; strength does not follow them`,
        source: 'mori-tanaka-1973',
      };
  if (voidFraction <= usualVoidLimit) return [assumption];
  const advice = massOnly ? '; its moduli across the fibre and in shear and its strengths are lower than given' : '';
  const text = `${name}: void fraction ${shown(voidFraction)} is above ${usualVoidLimit}${advice} (common practice, no source)`;
  return [assumption, { level: 'warning', text }];
}
