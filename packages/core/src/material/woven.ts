import { type Note, uniqueSources } from '../provenance/index.js';
import { between, demand, over, shown } from './check.js';
import { ply } from './ply.js';
import { constantsFromStiffness, type ReducedStiffness, reducedStiffness } from './reduced-stiffness.js';
import type { Ply, Weave } from './types.js';

/** What crimp leaves of the moduli along warp and weft (common practice, no source). */
const usualCrimpFactors: Record<Weave, number> = { plain: 0.9, twill: 0.93, satin: 0.97 };

export interface WovenOptions {
  /** Share of the fibre mass in the warp, over 0 to under 1; 0.5 when not given. */
  readonly warpShare?: number;
  readonly weave?: Weave;
  /** Over 0.5 to 1; from the weave (plain when not given) when left out. */
  readonly crimpFactor?: number;
}

/** Stiffness of two unidirectional layers at 0 and 90 degrees, `share` of the thickness at 0. */
function crossPlyStiffness([Q11, Q12, Q22, Q66]: ReducedStiffness, share: number): ReducedStiffness {
  return [share * Q11 + (1 - share) * Q22, Q12, share * Q22 + (1 - share) * Q11, Q66];
}

/** Free strain along warp and weft of the same two layers bonded together, each with free strains `e1`, `e2`. */
function crossPlyFreeStrain(Q: ReducedStiffness, share: number, e1: number, e2: number): [number, number] {
  const along = Q[0] * e1 + Q[1] * e2;
  const across = Q[1] * e1 + Q[2] * e2;
  const N1 = share * along + (1 - share) * across;
  const N2 = share * across + (1 - share) * along;
  const [A11, A12, A22] = crossPlyStiffness(Q, share);
  const determinant = A11 * A22 - A12 * A12;
  return [(A22 * N1 - A12 * N2) / determinant, (A11 * N2 - A12 * N1) / determinant];
}

/**
 * A woven cloth as ONE ply: its fibres as two unidirectional layers of equal fibre fraction, warp and weft, averaged in
 * the plane (Q11 = s Q11' + (1-s) Q22', Q22 with the shares exchanged, Q12, Q66 as they are). Crimp then multiplies E1
 * and E2; G12 and nu12 stay, and nu12/E1 = nu21/E2 still holds. Expansion and swelling by equilibrium of the two layers
 * before crimp; G13 and G23 with the layers in series.
 * Bending of a single cloth is taken as that of the averaged material; the undulation is not resolved.
 * @param ud The cloth's whole fibre mass as one unidirectional ply.
 * @returns One ply, axis 1 along the warp, with the mass, thickness and angle of `ud`.
 * @throws out-of-range crimpFactor outside 0.5 to 1 (0.5 excluded), warpShare not between 0 and 1.
 * @source Cross-ply equivalent (mosaic) model: Ishikawa & Chou 1982 (recalled, not re-read).
 */
export function wovenPly(ud: Ply, { warpShare = 0.5, weave = 'plain', crimpFactor }: WovenOptions = {}): Ply {
  const factor = crimpFactor ?? usualCrimpFactors[weave];
  demand(between('warp share', warpShare, 0, 1), over('crimp factor', factor, 0.5, 1));
  const Q = reducedStiffness(ud);
  const flat = constantsFromStiffness(crossPlyStiffness(Q, warpShare));
  const notes: Note[] = [...ud.notes];
  if (crimpFactor === undefined) {
    notes.push({
      level: 'assumption',
      text: `${ud.name}: crimp factor ${shown(factor)} taken for a ${weave} weave (common practice, no source)`,
    });
  }
  const { expansion, moistureExpansion, G13, G23, nu23: _, ...rest } = ud;
  const thermal = expansion && crossPlyFreeStrain(Q, warpShare, expansion.alpha1, expansion.alpha2);
  const swelling =
    moistureExpansion && crossPlyFreeStrain(Q, warpShare, moistureExpansion.beta1, moistureExpansion.beta2);
  return ply({
    ...rest,
    ...flat,
    E1: factor * flat.E1,
    E2: factor * flat.E2,
    ...(G13 === undefined || G23 === undefined
      ? {}
      : { G13: 1 / (warpShare / G13 + (1 - warpShare) / G23), G23: 1 / (warpShare / G23 + (1 - warpShare) / G13) }),
    ...(thermal && { expansion: { alpha1: thermal[0], alpha2: thermal[1] } }),
    ...(swelling && { moistureExpansion: { beta1: swelling[0], beta2: swelling[1] } }),
    notes,
    sources: uniqueSources(ud.sources, ['ishikawa-chou-1982']),
  });
}
