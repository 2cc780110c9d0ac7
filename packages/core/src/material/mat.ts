import { type Note, uniqueSources } from '../provenance/index.js';
import type { Working } from '../working/index.js';
import { shown } from './check.js';
import { showMat } from './mat-steps.js';
import { ply } from './ply.js';
import { type ReducedStiffness, reducedStiffness, stiffnessInvariants } from './reduced-stiffness.js';
import type { MatModel, Ply } from './types.js';

/** In-plane constants of a random mat from the stiffness averaged over all angles: U1 and U4 are that average. */
function fromInvariants(Q: ReducedStiffness, working?: Working) {
  const { U1, U4, U5 } = stiffnessInvariants(Q, working);
  return { E: (U1 * U1 - U4 * U4) / U1, nu12: U4 / U1, G12: U5 };
}

/** The 3/8-5/8 approximation; nu12 so that the mat is isotropic. */
function fromEighths({ E1, E2 }: Ply) {
  const E = (3 * E1 + 5 * E2) / 8;
  const G12 = (E1 + 2 * E2) / 8;
  return { E, nu12: E / (2 * G12) - 1, G12 };
}

/** Lighter mats are hardly made, kg/m^2 (common practice, no source). */
const lightestMat = 0.08;

/**
 * A random mat as one ply, isotropic in its plane. `invariants`: E = (U1^2 - U4^2)/U1, nu = U4/U1, G = U5 of the
 * unidirectional ply of the same fibre fraction (the exact average over all angles at equal strain). `tsai-pagano`:
 * E = 3/8 E1 + 5/8 E2, G = 1/8 E1 + 1/4 E2, nu = E/(2G) - 1, an approximation without G12 and nu12. Expansion and swelling for both:
 * ((Q11 + Q12) a1 + (Q12 + Q22) a2) / (Q11 + Q22 + 2 Q12). G13 = G23 = mean of those of the unidirectional ply.
 * Strands count as endless; their ends and bundles are not resolved.
 * @param ud The mat's whole fibre mass as one unidirectional ply.
 * @param working takes the steps down, when given; those of the constants of `ud` are taken down where they are computed.
 * @returns One ply with the mass, thickness and angle of `ud`.
 * @source Tsai & Pagano 1968 (recalled, not re-read).
 */
export function matPly(ud: Ply, model: MatModel = 'invariants', working?: Working): Ply {
  const strands = working?.part('unidirectional');
  const Q = reducedStiffness(ud, strands);
  const [Q11, Q12, Q22] = Q;
  const { E, nu12, G12 } = model === 'tsai-pagano' ? fromEighths(ud) : fromInvariants(Q, strands);
  const mean = (e1: number, e2: number): number => ((Q11 + Q12) * e1 + (Q12 + Q22) * e2) / (Q11 + Q22 + 2 * Q12);
  const { expansion, moistureExpansion, G13, G23, nu23: _, ...rest } = ud;
  const alpha = expansion && mean(expansion.alpha1, expansion.alpha2);
  const beta = moistureExpansion && mean(moistureExpansion.beta1, moistureExpansion.beta2);
  const shear = G13 === undefined || G23 === undefined ? undefined : (G13 + G23) / 2;
  if (working !== undefined) showMat(ud, model, Q, { E, nu12, G12, shear, alpha, beta }, working);
  const notes: Note[] = [
    ...ud.notes,
    {
      level: 'assumption',
      text: `${ud.name}: strands of the mat count as endless and evenly spread over all angles`,
      source: 'tsai-pagano-1968',
    },
  ];
  const { fibreVolumeFraction: Vf, fibreArealMass: mass } = ud;
  if (mass !== undefined && mass < lightestMat) {
    const text = `${ud.name}: ${shown(mass * 1e3)} g/m^2 is light for a chopped mat; US mat is counted in oz/ft^2, nine times an oz/yd^2 (common practice, no source)`;
    notes.push({ level: 'warning', text });
  }
  if (Vf !== undefined && Vf > 0.4) {
    const text = `${ud.name}: fibre volume fraction ${shown(Vf)} is above 0.4, hardly reached with a mat (common practice, no source)`;
    notes.push({ level: 'warning', text });
  }
  return ply({
    ...rest,
    E1: E,
    E2: E,
    G12,
    nu12,
    ...(shear !== undefined && { G13: shear, G23: shear }),
    ...(alpha !== undefined && { expansion: { alpha1: alpha, alpha2: alpha } }),
    ...(beta !== undefined && { moistureExpansion: { beta1: beta, beta2: beta } }),
    notes,
    sources: uniqueSources(ud.sources, ['tsai-pagano-1968']),
  });
}
