import type { Working } from '../working/index.js';
import { halpinTsaiEta } from './mixing-rules.js';
import type { InPlaneConstants } from './reduced-stiffness.js';
import { resinShearModulus } from './transverse-isotropy.js';
import type { Fibre, Resin, TransverseRule } from './types.js';

/** What a ply's thickness and mass are computed from. */
interface Filling {
  readonly fibre: Fibre;
  readonly resin: Resin;
  readonly arealMass: number;
  readonly fibreVolumeFraction: number;
  readonly voidFraction?: number;
}

/** Takes down thickness, density and resin of a ply. */
export function showMass(
  { fibre, resin, arealMass: m_f, fibreVolumeFraction: V_f, voidFraction: V_v = 0 }: Filling,
  { m_m, rho, t_k }: { readonly m_m: number; readonly rho: number; readonly t_k: number },
  working: Working,
): void {
  const rho_f = fibre.density;
  working.step('plyThickness', { m_f, rho_f, V_f, t_k });
  working.step('plyMass', { rho_f, V_f, V_v, rho_m: resin.density, t_k, rho, m_m });
}

/** What the constants of a ply in its plane are computed from, and what they are. */
interface InPlaneParts {
  readonly fibre: Fibre;
  readonly resin: Resin;
  readonly Vf: number;
  readonly ruleE2: TransverseRule;
  readonly ruleG12: TransverseRule;
  readonly xiE2: number;
  readonly xiG12: number;
  readonly constants: InPlaneConstants;
}

const acrossRules = {
  'halpin-tsai': 'acrossHalpinTsai',
  inverse: 'acrossInverse',
  chamis: 'acrossChamis',
} as const satisfies Record<TransverseRule, string>;

const shearRules = {
  'halpin-tsai': 'shearHalpinTsai',
  inverse: 'shearInverse',
  chamis: 'shearChamis',
} as const satisfies Record<TransverseRule, string>;

/** Takes down the constants of a ply in its plane, each by the rule that was chosen for it. */
export function showInPlane(parts: InPlaneParts, working: Working): void {
  const { fibre, resin, Vf: V_f, ruleE2, ruleG12, xiE2, xiG12, constants } = parts;
  const { E1, E2, G12, nu12 } = constants;
  const { E1: E_f1, E2: E_f2, G12: G_f12, nu12: nu_f12 } = fibre;
  const { E: E_m, nu: nu_m } = resin;
  const G_m = resinShearModulus(resin);
  const contrastE = ruleE2 === 'halpin-tsai' ? { xi_E: xiE2, eta_E: halpinTsaiEta(E_f2, E_m, xiE2) } : {};
  const contrastG = ruleG12 === 'halpin-tsai' ? { xi_G: xiG12, eta_G: halpinTsaiEta(G_f12, G_m, xiG12) } : {};
  working.step('alongFibre', { E_f1, nu_f12, E_m, nu_m, V_f, E1, nu12 });
  working.step(acrossRules[ruleE2], { E_f2, E_m, V_f, ...contrastE, E2 });
  working.step(shearRules[ruleG12], { G_f12, E_m, nu_m, G_m, V_f, ...contrastG, G12, G13: G12 });
}
