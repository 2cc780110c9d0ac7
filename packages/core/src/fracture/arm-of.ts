import {
  isCloth,
  type Laminate,
  type PlyPoint,
  plyShear,
  respond,
  stiffness,
  strengthRatio,
  stripStiffness,
  transverseShear,
} from '../laminate/index.js';
import type { Ply } from '../material/index.js';
import { fail } from '../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../provenance/index.js';
import type { Working } from '../working/index.js';
import { showArm } from './arm-steps.js';
import type { Arm, ArmOptions } from './types.js';

/** An arm with what was assumed of it. */
export interface LaminateArm extends Arm {
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** Poisson ratio across the fibres where a ply does not give it, as in `plyShear`. */
const assumedNu23 = 0.4;
/** Stands for a strength that is not asked for, Pa. */
const never = 1e30;

/**
 * A laminate as the arm of a specimen, bent along its x.
 *
 * Bending stiffness about the neutral plane, EI = the xx entry of D - B A⁻¹ B of the components x and xy (held across; D11 - B11²/A11 without angle plies) or 1/d11 (free); stretch A11 - A16²/A66 or d11/(a11 d11 - b11²); shear H11 of
 * `transverseShear`; E3 = t/Σ(ti/E3i) with E3i = 2 (1 + ν23) G23 where a ply does not give it. Failure strain: the curvature at which a ply first reaches its maximum strain on the stretched and on
 * the compressed side of the neutral plane, times t/2.
 *
 * @param laminate its x along the crack
 * @param working takes down the steps
 * @returns per width, SI; failure strain absent where a ply has no strengths
 * @throws not-admissible as `stiffness`; out-of-range E3 not above 0
 * @source Jones 1999, ch. 4; maximum strain as in docs/theory/strength.md
 */
export function armOf(laminate: Laminate, options: ArmOptions = {}, working?: Working): LaminateArm {
  const { across = 'held' } = options;
  const s = stiffness(laminate);
  const { A, a, b, d, notes, sources } = s;
  const [A11, A16, A66] = [A[0][0] ?? 0, A[0][2] ?? 0, A[2][2] ?? 1];
  const [a11, b11, d11] = [a[0][0] ?? 0, b[0][0] ?? 0, d[0][0] ?? 0];
  const shear = transverseShear(laminate);
  const through = throughThickness(laminate, options.E3);
  const strain = failureStrain(laminate, options);
  const arm: Arm = {
    thickness: laminate.thickness,
    bendingStiffness: across === 'held' ? stripStiffness(s).D11 : 1 / d11,
    axialStiffness: across === 'held' ? A11 - (A16 * A16) / A66 : d11 / (a11 * d11 - b11 * b11),
    shearStiffness: shear.H[0][0],
    E3: through.E3,
    ...(strain.limits === undefined ? {} : { failureStrain: strain.limits }),
  };
  const all = uniqueNotes([...notes, ...shear.notes, ...through.notes, ...strain.notes]);
  if (working !== undefined) {
    showArm(laminate, s, options, arm, { E3Of: throughPly, acrossOf, ...strain }, working);
    working.notes(all);
  }
  return {
    ...arm,
    notes: all,
    sources: uniqueSources(sources, shear.sources, strain.sources),
  };
}

const acrossOf = (ply: Ply) => ({ nu23: ply.nu23 ?? assumedNu23, G23: plyShear(ply).G23 });

function throughPly(ply: Ply): number {
  const { nu23, G23 } = acrossOf(ply);
  return ply.E3 ?? 2 * (1 + nu23) * G23;
}

function throughThickness({ plies, thickness }: Laminate, given: number | undefined): { E3: number; notes: Note[] } {
  if (given !== undefined) {
    if (!(given > 0 && Number.isFinite(given))) {
      fail({ code: 'out-of-range', message: `E3 = ${given} Pa, must be above 0`, allowed: 'a finite number above 0' });
    }
    return { E3: given, notes: [] };
  }
  const assumed = plies.some((ply) => ply.E3 === undefined);
  return {
    E3: thickness / plies.reduce((sum, ply) => sum + ply.thickness / throughPly(ply), 0),
    notes: assumed
      ? [
          {
            level: 'assumption',
            text: 'Modulus through the thickness from the plies, 2 (1 + nu23) G23 where not given.',
          },
        ]
      : [],
  };
}

interface Limits {
  /** Curvature at which a ply on the stretched, and on the compressed side reaches its strain, 1/m. */
  readonly curvatures?: NonNullable<Arm['failureStrain']>;
  readonly limits?: NonNullable<Arm['failureStrain']>;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

function failureStrain(
  laminate: Laminate,
  { across = 'held', crackFace = 'bottom', breaking = 'anything' }: ArmOptions,
): Limits {
  const curvature = crackFace === 'bottom' ? 1 : -1;
  const open = across === 'held' ? 0 : null;
  const { plies } = respond(laminate, { strain: [null, open, open], curvature: [curvature, open, open] });
  const found = { tension: Number.POSITIVE_INFINITY, compression: Number.POSITIVE_INFINITY };
  const sources: SourceKey[] = [];
  let matrix = false;
  for (const [i, ply] of laminate.plies.entries()) {
    const { strengths } = ply;
    const response = plies[i];
    if (response === undefined || (strengths === undefined && ply.core)) continue;
    if (strengths === undefined) return withoutStrengths(ply);
    const shear = breaking === 'fibres' ? { S: never } : {};
    const transverse = breaking === 'fibres' && !isCloth(ply) ? { Yt: never, Yc: never } : {};
    const judged = { ...ply, strengths: { ...strengths, ...shear, ...transverse } };
    const judge = ({ stress12, strain }: PlyPoint): void => {
      const { ratio = Number.POSITIVE_INFINITY, modeKey, sources: own } = strengthRatio(judged, stress12, 'maxStrain');
      const side = strain[0] >= 0 ? 'tension' : 'compression';
      if (ratio >= found[side]) return;
      found[side] = ratio;
      matrix ||= !isCloth(ply) && modeKey !== 'fibreTension' && modeKey !== 'fibreCompression';
      sources.push(...own);
    };
    judge(response.top);
    judge(response.bottom);
  }
  const half = laminate.thickness / 2;
  if (!(Number.isFinite(found.tension) && Number.isFinite(found.compression))) return { notes: [], sources: [] };
  return {
    curvatures: found,
    limits: { tension: found.tension * half, compression: found.compression * half },
    notes: matrix
      ? [
          {
            level: 'assumption',
            text: 'The failure strain of the arm is that of first cracking between fibres; fibres may carry on.',
          },
        ]
      : [],
    sources,
  };
}

function withoutStrengths({ name }: Ply): Limits {
  return {
    notes: [{ level: 'assumption', text: `Ply ${name} has no strengths: breaking of the arm is not checked.` }],
    sources: [],
  };
}
