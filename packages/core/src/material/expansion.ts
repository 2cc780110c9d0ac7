import type { Working } from '../working/index.js';
import { ruleOfMixtures } from './mixing-rules.js';
import type { Fibre, Resin } from './types.js';

/** Free strains of a unidirectional ply along and across the fibre, per unit of what causes them. */
export interface FreeStrain {
  readonly along: number;
  readonly across: number;
}

/** What the two free-strain formulas need to know of the fibre. */
export type ExpandingFibre = Pick<Fibre, 'E1' | 'nu12'> & { readonly free1: number; readonly free2: number };

/** What they need to know of the resin. */
export type ExpandingResin = Pick<Resin, 'E' | 'nu'> & { readonly free: number };

/**
 * Free strain of a unidirectional ply from those of its phases, whatever the cause:
 * e1 = (E1f e1f Vf + Em em Vm) / (E1f Vf + Em Vm),
 * e2 = (e2f + nu12f e1f) Vf + (1 + num) em Vm - nu12 e1, with Vm = 1 - Vf and nu12 by the rule of mixtures.
 * With equal fibre expansions along and across it is Schapery's form for an isotropic fibre.
 * Voids are counted as resin. e1 is close; e2 comes out too high below Vf of about 0.25 (recalled, not re-read).
 * @param fibre E1 in Pa; free1, free2: free strain per unit cause (1/K, or per mass fraction of moisture).
 * @param resin E in Pa; free likewise.
 * @param Vf Fibre volume fraction, 0 to 1.
 * @returns Strain per unit cause, positive for growth.
 * @throws out-of-range Vf outside 0 to 1.
 * @source Schapery 1968 (recalled, not re-read); transversely isotropic fibre as in Rosen & Hashin 1970 (recalled, not re-read).
 */
export function schapery(fibre: ExpandingFibre, resin: ExpandingResin, Vf: number): FreeStrain {
  const E1 = ruleOfMixtures(fibre.E1, resin.E, Vf);
  const nu12 = ruleOfMixtures(fibre.nu12, resin.nu, Vf);
  const along = ruleOfMixtures(fibre.E1 * fibre.free1, resin.E * resin.free, Vf) / E1;
  const across = ruleOfMixtures(fibre.free2 + fibre.nu12 * fibre.free1, (1 + resin.nu) * resin.free, Vf) - nu12 * along;
  return { along, across };
}

/** What both free strains are computed from, by symbols. */
function schaperySymbols({ E1: E_f1, nu12: nu_f12 }: Fibre, { E: E_m, nu: nu_m }: Resin, V_f: number) {
  const ply = { E1: ruleOfMixtures(E_f1, E_m, V_f), nu12: ruleOfMixtures(nu_f12, nu_m, V_f) };
  return { E_f1, nu_f12, E_m, nu_m, V_f, ...ply };
}

/** Expansion of the fibre across; that along it for an isotropic fibre that gives only that. */
const acrossFibre = ({ E1, E2, alpha1, alpha2 }: Fibre): number | undefined =>
  alpha2 ?? (E1 === E2 ? alpha1 : undefined);

/**
 * Thermal expansion of a unidirectional ply, 1/K; see {@link schapery}. Undefined when an expansion coefficient is
 * missing. A fibre given with alpha1 alone counts as isotropic if its moduli along and across are equal.
 * @param working takes the step down, when given.
 */
export function thermalExpansion(
  fibre: Fibre,
  resin: Resin,
  Vf: number,
  working?: Working,
): { readonly alpha1: number; readonly alpha2: number } | undefined {
  const free2 = acrossFibre(fibre);
  if (fibre.alpha1 === undefined || free2 === undefined || resin.alpha === undefined) return undefined;
  const { along, across } = schapery({ ...fibre, free1: fibre.alpha1, free2 }, { ...resin, free: resin.alpha }, Vf);
  const free = { alpha_f1: fibre.alpha1, alpha_f2: free2, alpha_m: resin.alpha };
  working?.step('plyExpansion', { ...schaperySymbols(fibre, resin, Vf), ...free, alpha1: along, alpha2: across });
  return { alpha1: along, alpha2: across };
}

/**
 * Thermal expansion across a unidirectional ply by Chamis's form, for comparison:
 * alpha2 = alpha2f sqrt(Vf) + (1 - sqrt(Vf)) (1 + Vf num E1f/E1) alpha_m, with E1 by the rule of mixtures.
 * @param Vf Fibre volume fraction, 0 to 1.
 * @returns 1/K; undefined when a coefficient is missing.
 * @throws out-of-range Vf outside 0 to 1.
 * @source Chamis 1984 (recalled, not re-read).
 */
export function chamisExpansionAcross(fibre: Fibre, resin: Resin, Vf: number): number | undefined {
  const free2 = acrossFibre(fibre);
  if (free2 === undefined || resin.alpha === undefined) return undefined;
  const root = Math.sqrt(Vf);
  const squeezed = 1 + (Vf * resin.nu * fibre.E1) / ruleOfMixtures(fibre.E1, resin.E, Vf);
  return free2 * root + (1 - root) * squeezed * resin.alpha;
}

/**
 * Swelling of a unidirectional ply per mass fraction of moisture in the ply, when the fibre takes up none:
 * the resin then holds C rho/(rho_m Vm), so beta1 = beta_m Em rho/(E1 rho_m) and
 * beta2 = (1 + num) beta_m rho/rho_m - nu12 beta1. Undefined when the resin's beta is missing.
 * @param resinMassFraction Mass of resin per mass of ply, more than 0 to 1.
 * @param working takes the step down, when given, with these numbers beside it.
 * @source Schapery 1968 with swelling in place of heat; Kaw 2006, sec. 3.5 (recalled, not re-read).
 */
export function moistureExpansion(
  fibre: Fibre,
  resin: Resin,
  Vf: number,
  resinMassFraction: number,
  working?: { readonly at: Working; readonly beside: Readonly<Record<string, number>> },
): { readonly beta1: number; readonly beta2: number } | undefined {
  if (resin.beta === undefined) return undefined;
  const free = resin.beta / resinMassFraction;
  const { along, across } = schapery({ ...fibre, free1: 0, free2: 0 }, { ...resin, free }, Vf);
  const gathered = { beta_m: resin.beta, W_m: resinMassFraction, betabar_m: free };
  const swelling = { ...gathered, beta1: along, beta2: across };
  working?.at.step('plySwelling', { ...working.beside, ...schaperySymbols(fibre, resin, Vf), ...swelling });
  return { beta1: along, beta2: across };
}
