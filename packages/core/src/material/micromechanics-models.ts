import type { SourceKey } from '../provenance/index.js';
import { chamisExpansionAcross } from './expansion.js';
import { chamis, halpinTsai, inverseRule, ruleOfMixtures } from './mixing-rules.js';
import { fibreNu23 } from './transverse-isotropy.js';
import type { Fibre, MicromechanicsModel, Ply, Resin } from './types.js';

/** Constants of a unidirectional ply that several models give. */
export type ComparedProperty = 'E1' | 'E2' | 'G12' | 'nu12' | 'nu23' | 'G23' | 'alpha1' | 'alpha2';

/** A model of one constant. */
export type ComparedRule =
  | 'rule-of-mixtures'
  | 'inverse'
  | 'halpin-tsai'
  | 'chamis'
  | 'transverse-isotropy'
  | 'schapery';

/** Where each model comes from. */
export const comparedSources: Record<ComparedRule, SourceKey> = {
  'rule-of-mixtures': 'jones-1999',
  inverse: 'jones-1999',
  'halpin-tsai': 'halpin-kardos-1976',
  chamis: 'chamis-1984',
  'transverse-isotropy': 'hashin-1979',
  schapery: 'schapery-1968',
};

/** One property by its models, and its value in fibre and resin where the phases in series and in parallel bound it. */
export interface PropertyModels {
  readonly used: ComparedRule;
  readonly values: Partial<Record<ComparedRule, number | undefined>>;
  readonly phases?: readonly [fibre: number, resin: number];
  readonly xi?: number;
}

/** Fibre, resin as the stiffness sees it, fibre fraction, and the ply that they give by `model`. */
export interface ModelledPly {
  readonly fibre: Fibre;
  readonly resin: Resin;
  readonly Vf: number;
  readonly ply: Ply;
  readonly model: MicromechanicsModel;
}

/**
 * Every property by every model that gives it. E1 and nu12 by the rule of mixtures, with which Chamis agrees; E2 and G12
 * by the four mixing rules; G23 by transverse isotropy, the inverse rule and Chamis's form with the fibre's
 * G23 = E2/(2 (1 + nu23)); nu23 by transverse isotropy and as E2/(2 G23) - 1 of Chamis's moduli; expansion by Schapery and
 * Chamis. What is not known is left undefined.
 * @source Jones 1999; Halpin & Kardos 1976; Chamis 1984; Hashin 1979; Schapery 1968 (recalled, not re-read).
 */
export function propertyModels({
  fibre,
  resin,
  Vf,
  ply,
  model,
}: ModelledPly): Record<ComparedProperty, PropertyModels> {
  const Gm = resin.E / (2 * (1 + resin.nu));
  const G23f = fibre.E2 / (2 * (1 + fibreNu23(fibre)));
  const across = (Pf: number, Pm: number) => ({
    'rule-of-mixtures': ruleOfMixtures(Pf, Pm, Vf),
    inverse: inverseRule(Pf, Pm, Vf),
    chamis: chamis(Pf, Pm, Vf),
  });
  const mixed = (Pf: number, Pm: number, used: ComparedRule, xi: number): PropertyModels => ({
    used,
    values: { ...across(Pf, Pm), 'halpin-tsai': halpinTsai(Pf, Pm, Vf, xi) },
    phases: [Pf, Pm],
    xi,
  });
  const along = (Pf: number, Pm: number) => {
    const value = ruleOfMixtures(Pf, Pm, Vf);
    return { used: 'rule-of-mixtures', values: { 'rule-of-mixtures': value, chamis: value } } as const;
  };
  const shear23 = across(G23f, Gm);
  const { alpha1, alpha2 } = ply.expansion ?? {};
  return {
    E1: { ...along(fibre.E1, resin.E), phases: [fibre.E1, resin.E] },
    E2: mixed(fibre.E2, resin.E, model.E2 ?? 'halpin-tsai', model.xiE2 ?? 2),
    G12: mixed(fibre.G12, Gm, model.G12 ?? 'halpin-tsai', model.xiG12 ?? 1),
    nu12: along(fibre.nu12, resin.nu),
    nu23: {
      used: 'transverse-isotropy',
      values: {
        'transverse-isotropy': ply.nu23,
        chamis: chamis(fibre.E2, resin.E, Vf) / (2 * shear23.chamis) - 1,
      },
    },
    G23: {
      used: 'transverse-isotropy',
      values: { ...shear23, 'transverse-isotropy': ply.G23 },
      phases: [G23f, Gm],
    },
    alpha1: { used: 'schapery', values: { schapery: alpha1, chamis: alpha1 } },
    alpha2: { used: 'schapery', values: { schapery: alpha2, chamis: chamisExpansionAcross(fibre, resin, Vf) } },
  };
}
