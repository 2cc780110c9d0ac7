import type { Ply } from '../material/index.js';
import { fail } from '../problem/index.js';
import { uniqueNotes, uniqueSources } from '../provenance/index.js';
import type { StepValues, Working } from '../working/index.js';
import type { Laminate } from './types.js';

/**
 * A laminate from its plies.
 *
 * @param plies one or more, the tool side (z = -t/2) first; angles in degrees, thickness in m
 * @returns the stack with its thickness t = Σ t_k, m
 * @throws missing-key when there is no ply; out-of-range when an angle is not finite or a thickness not above 0
 */
export function laminate(plies: readonly Ply[]): Laminate {
  if (plies.length === 0) {
    fail({ code: 'missing-key', message: 'a laminate has 0 plies', allowed: '1 ply or more' });
  }
  plies.forEach((ply, k) => {
    if (!Number.isFinite(ply.angle)) {
      fail({
        code: 'out-of-range',
        message: `the angle of ply ${k + 1} (${ply.name}) is ${ply.angle}`,
        allowed: 'a finite number of degrees',
      });
    }
    if (!(ply.thickness > 0 && Number.isFinite(ply.thickness))) {
      fail({
        code: 'out-of-range',
        message: `the thickness of ply ${k + 1} (${ply.name}) is ${ply.thickness} m`,
        allowed: 'a finite length above 0',
      });
    }
  });
  return {
    plies,
    thickness: plies.reduce((sum, ply) => sum + ply.thickness, 0),
    notes: uniqueNotes(plies.flatMap((ply) => ply.notes)),
    sources: uniqueSources(...plies.map((ply) => ply.sources)),
  };
}

/** Mass per area of a laminate, kg/m²; what cannot be told from its plies is absent. */
export interface ArealMass {
  readonly total?: number;
  readonly fibre?: number;
  readonly resin?: number;
}

/**
 * Mass per area of a laminate: all of it, its dry reinforcement and its resin.
 *
 * total = Σ ρ t. Resin drawn into the faces of a core counts only where the core ply says so (`resinArealMass`).
 *
 * @param working takes the sums down, when given
 * @returns kg/m²; `total` is absent when a ply has no density, `fibre` and `resin` when a ply other than a core does not
 *   know its constituents
 */
export function arealMass(laminate: Laminate, working?: Working): ArealMass {
  const total = sum(laminate.plies, (ply) => (ply.density === undefined ? undefined : ply.density * ply.thickness));
  const fibre = sum(laminate.plies, (ply) => ply.fibreArealMass ?? (ply.core ? 0 : undefined));
  const resin = sum(laminate.plies, (ply) => ply.resinArealMass ?? (ply.core ? 0 : undefined));
  if (total !== undefined) working?.step('laminateMass', { m_lam: total }, laminate.plies.map(massRow));
  if (fibre !== undefined && resin !== undefined) {
    working?.step('laminateConstituents', { m_flam: fibre, m_mlam: resin }, laminate.plies.map(constituentRow));
  }
  return {
    ...(total === undefined ? {} : { total }),
    ...(fibre === undefined ? {} : { fibre }),
    ...(resin === undefined ? {} : { resin }),
  };
}

function massRow({ density: rho = 0, thickness: t_k }: Ply): StepValues {
  return { rho, t_k, m_lam: rho * t_k };
}

function constituentRow({ fibreArealMass: m_f = 0, resinArealMass: m_m = 0 }: Ply): StepValues {
  return { m_f, m_m, m_flam: m_f, m_mlam: m_m };
}

function sum(plies: readonly Ply[], of: (ply: Ply) => number | undefined): number | undefined {
  let total = 0;
  for (const ply of plies) {
    const value = of(ply);
    if (value === undefined) return undefined;
    total += value;
  }
  return total;
}
