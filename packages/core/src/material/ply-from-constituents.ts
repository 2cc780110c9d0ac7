import type { Problem } from '../problem/index.js';
import { type Note, type SourceKey, uniqueSources } from '../provenance/index.js';
import type { Working } from '../working/index.js';
import { admissibility } from './admissibility.js';
import { between, demand, positive, shown, within } from './check.js';
import { showInPlane, showMass } from './constituent-steps.js';
import { moistureExpansion, thermalExpansion } from './expansion.js';
import {
  densityFromVolumeFraction,
  fibreFractionLimits,
  resinArealMass,
  thicknessFromArealMass,
} from './fibre-content.js';
import { chamis, halpinTsai, inverseRule, ruleOfMixtures } from './mixing-rules.js';
import { ply } from './ply.js';
import { stiffnessResin, voidNotes } from './porous-matrix.js';
import type { InPlaneConstants } from './reduced-stiffness.js';
import { fibreNu23, lacksNu23, resinShearModulus, transverseConstantsOf } from './transverse-isotropy.js';
import type { Fibre, MicromechanicsModel, Ply, Resin, TransverseRule, VoidModel } from './types.js';

/** Fibre, resin and how much of each; SI units. */
export interface Constituents {
  readonly name?: string;
  readonly fibre: Fibre;
  readonly resin: Resin;
  /** Dry reinforcement, kg/m^2. */
  readonly arealMass: number;
  readonly fibreVolumeFraction: number;
  readonly voidFraction?: number;
  /** `mass-only` when not given. */
  readonly voidModel?: VoidModel;
  readonly model?: MicromechanicsModel;
  /** Degrees. */
  readonly angle?: number;
}

const ruleSources: Record<TransverseRule, SourceKey> = {
  'halpin-tsai': 'halpin-kardos-1976',
  inverse: 'jones-1999',
  chamis: 'chamis-1984',
};

/** Everything that makes a fibre's constants impossible, empty when they can exist. */
export function fibreFaults(fibre: Fibre): Problem[] {
  const { E1, E2, G12, nu12 } = fibre;
  return admissibility({ E1, E2, G12, nu12, ...(lacksNu23(fibre) ? {} : { nu23: fibreNu23(fibre) }) });
}

function demandConstituents({ fibre, resin, arealMass, fibreVolumeFraction, voidFraction = 0 }: Constituents): void {
  demand(
    ...fibreFaults(fibre).map((problem) => ({ ...problem, message: `fibre ${problem.message}` })),
    positive('fibre density', fibre.density, 'kg/m^3'),
    positive('resin E', resin.E, 'Pa'),
    positive('resin density', resin.density, 'kg/m^3'),
    between('resin nu', resin.nu, -1, 0.5, 'not-admissible'),
    positive('areal mass', arealMass, 'kg/m^2'),
    within('fibre volume fraction', fibreVolumeFraction, fibreFractionLimits.lowest, fibreFractionLimits.highest),
    within('void fraction', voidFraction, 0, 0.2),
  );
}

const across = (rule: TransverseRule, Pf: number, Pm: number, Vf: number, xi: number): number => {
  if (rule === 'inverse') return inverseRule(Pf, Pm, Vf);
  return rule === 'chamis' ? chamis(Pf, Pm, Vf) : halpinTsai(Pf, Pm, Vf, xi);
};

/** Constants in the plane of the resin as the stiffness sees it: see {@link plyFromConstituents}. */
export function inPlaneOfConstituents(
  { fibre, fibreVolumeFraction: Vf, model = {} }: Pick<Constituents, 'fibre' | 'fibreVolumeFraction' | 'model'>,
  resin: Resin,
  working?: Working,
): InPlaneConstants {
  const { E2: ruleE2 = 'halpin-tsai', G12: ruleG12 = 'halpin-tsai', xiE2 = 2, xiG12 = 1 } = model;
  const constants = {
    E1: ruleOfMixtures(fibre.E1, resin.E, Vf),
    nu12: ruleOfMixtures(fibre.nu12, resin.nu, Vf),
    E2: across(ruleE2, fibre.E2, resin.E, Vf, xiE2),
    G12: across(ruleG12, fibre.G12, resinShearModulus(resin), Vf, xiG12),
  };
  if (working !== undefined) {
    showInPlane({ fibre, resin, Vf, ruleE2, ruleG12, xiE2, xiG12, constants }, working);
  }
  return constants;
}

/** The ply of {@link plyFromConstituents} without a word on its fibre fraction, for reinforcements other than continuous. */
export function unidirectionalPly(constituents: Constituents, working?: Working): Ply {
  demandConstituents(constituents);
  const { fibre, fibreVolumeFraction: Vf, voidFraction = 0, model = {}, name = fibre.name } = constituents;
  const resin = stiffnessResin(constituents.resin, constituents, working);
  const porous = resin !== constituents.resin;
  const { E2: ruleE2 = 'halpin-tsai', G12: ruleG12 = 'halpin-tsai' } = model;

  const thickness = thicknessFromArealMass(constituents.arealMass, fibre.density, Vf);
  const densities = { fibre: fibre.density, resin: resin.density, voidFraction };
  const density = densityFromVolumeFraction(Vf, densities);
  const resinMass = resinArealMass(thickness, Vf, densities);

  const mass = { m_m: resinMass, rho: density, t_k: thickness };
  if (working !== undefined) showMass(constituents, mass, working);
  const inPlane = inPlaneOfConstituents(constituents, resin, working);
  const { E1, E2, G12, nu12 } = inPlane;
  const plane23 = transverseConstantsOf(fibre, resin, Vf, inPlane, working);
  const plausible23 = plane23 !== undefined && plane23.nu23 > -1;
  const expansion = thermalExpansion(fibre, resin, Vf, working);
  const beside = working && { at: working, beside: mass };
  const swelling = moistureExpansion(fibre, resin, Vf, resinMass / (density * thickness), beside);

  const notes: Note[] = voidNotes(name, constituents);
  if (plausible23 && lacksNu23(fibre)) {
    notes.push({
      level: 'assumption',
      text: `${name}: nu23 of ${fibre.name} is not given, ${shown(fibreNu23(fibre))} is assumed (no source); it enters nu23 and G23 of the ply only`,
    });
  }
  if (plane23 !== undefined && !plausible23) {
    notes.push({
      level: 'warning',
      text: `${name}: the chosen rule makes E2 stiffer than the phases allow (nu23 below -1); nu23 and G23 are left out`,
      source: 'hashin-1979',
    });
  }
  if (swelling !== undefined) {
    notes.push({ level: 'assumption', text: `${name}: the fibre takes up no moisture`, source: 'schapery-1968' });
  }

  return ply({
    name,
    angle: constituents.angle ?? 0,
    thickness,
    E1,
    E2,
    G12,
    nu12,
    G13: G12,
    ...(plausible23 ? plane23 : {}),
    density,
    fibreArealMass: constituents.arealMass,
    resinArealMass: resinMass,
    fibreVolumeFraction: Vf,
    ...(voidFraction > 0 ? { voidFraction } : {}),
    ...(expansion === undefined ? {} : { expansion }),
    ...(swelling === undefined ? {} : { moistureExpansion: swelling }),
    notes,
    sources: uniqueSources(
      fibre.sources,
      resin.sources,
      ['jones-1999', ruleSources[ruleE2], ruleSources[ruleG12]],
      porous ? ['mori-tanaka-1973'] : [],
      plausible23 ? ['hashin-1979'] : [],
      expansion === undefined && swelling === undefined ? [] : ['schapery-1968'],
    ),
  });
}

/**
 * A unidirectional ply from fibre and resin: t = w/(rho_f Vf), mass from the densities, E1 and nu12 by the rule of
 * mixtures, E2 and G12 by Halpin-Tsai (or the inverse rule or Chamis's form), G13 = G12, nu23 and G23 from transverse
 * isotropy (a fibre's nu23 that is not known is assumed, with a note), expansion by Schapery, swelling with a dry fibre.
 * Voids lower the mass only and count as resin in the stiffness, or make the resin porous: see `voidModel`.
 * @param constituents SI; arealMass in kg/m^2; fibreVolumeFraction 0.1 to 0.75; voidFraction 0 to 0.2 (0 when not
 * given); angle in degrees (0 when not given).
 * @param working takes the steps down, when given.
 * @throws out-of-range for a fraction, mass, density or modulus outside its range; not-admissible for constants that
 * do not fit together; not-a-number for anything that is not finite.
 * @source Jones 1999, ch. 3; Halpin & Kardos 1976; Chamis 1984; Schapery 1968; Hashin 1979 (recalled, not re-read).
 */
export function plyFromConstituents(constituents: Constituents, working?: Working): Ply {
  const result = unidirectionalPly(constituents, working);
  const { fibreVolumeFraction: Vf } = constituents;
  if (Vf >= 0.3 && Vf <= 0.65) return result;
  const remark = Vf > 0.65 ? 'above 0.65, hard to wet out' : 'below 0.3, unusual for continuous fibre';
  const text = `${result.name}: fibre volume fraction ${shown(Vf)} is ${remark} (common practice, no source)`;
  return { ...result, notes: [...result.notes, { level: 'warning', text }] };
}
