import type { Working } from '../../working/index.js';
import type { Vector3 } from '../types.js';
import type { Criterion } from './criterion.js';
import type { FaceStress } from './face-stress.js';
import type { LaminateStrength } from './laminate-strength.js';
import { noStress, pointFailure } from './strength-ratio.js';
import type { Face, PlyFailure } from './weakest.js';

const firstPlyRules = {
  maxStress: 'firstPlyMaxStress',
  maxStrain: 'firstPlyMaxStrain',
  tsaiHill: 'firstPlyTsaiHill',
  tsaiWu: 'firstPlyTsaiWu',
  hashin: 'firstPlyHashin',
  puck: 'firstPlyPuck',
} as const satisfies Record<Criterion, string>;

/** The ply that fails first, where one does. */
interface First {
  readonly ratio: number | undefined;
  readonly ply: number | undefined;
  readonly face: Face | undefined;
}

/** Takes down the ratios of all plies and the least of them; nothing where the load breaks none. */
export function showFirstPly(
  criterion: Criterion,
  plies: readonly PlyFailure[],
  { ratio, ply }: First,
  working: Working,
): void {
  if (ratio === undefined || ply === undefined) return;
  const rows = plies.flatMap(({ ply: n_ply, ratio: R_ply }) => (R_ply === undefined ? [] : [{ n_ply, R_ply }]));
  working.part(criterion).step(firstPlyRules[criterion], { R_fpf: ratio, n_fpf: ply }, rows);
}

/** First-ply failure of the load without heat and moisture. */
interface LoadAlone {
  readonly criterion: Criterion;
  readonly strength: LaminateStrength;
  readonly stress: readonly FaceStress[];
  readonly plies: readonly PlyFailure[] | undefined;
  readonly first: First;
}

/** Takes down the ratio of the face that fails first without the stress of heat and moisture, and the least of all. */
export function showLoadAlone({ criterion, strength, stress, plies, first }: LoadAlone, working: Working): void {
  const { ply, face } = first;
  if (plies === undefined || ply === undefined || face === undefined) return;
  const [s, c] = [stress[ply - 1]?.[face], strength.constants[ply - 1]];
  if (s !== undefined && c !== undefined) {
    const part = working.part('plies', ply, face);
    showStress(s, part);
    pointFailure(criterion, s, noStress, c, strength.lays[ply - 1], { working: part, residual: false });
  }
  showFirstPly(criterion, plies, first, working);
}

function showStress([sigma1, sigma2, tau12]: Vector3, working: Working): void {
  working.step('loadAlone', { sigma_m1: sigma1, sigma_m2: sigma2, tau_m12: tau12, sigma1, sigma2, tau12 });
}

/** Takes down which part of the stress at each face is of the load, the rest being of heat and moisture. */
export function showStressOfLoad(
  whole: readonly FaceStress[],
  ofLoad: readonly FaceStress[],
  rest: readonly FaceStress[],
  working: Working,
): void {
  for (const [k, at] of whole.entries()) {
    for (const face of ['top', 'bottom'] as const) {
      const [m, r] = [ofLoad[k]?.[face], rest[k]?.[face]];
      if (m === undefined || r === undefined) continue;
      working.part('plies', k + 1, face).step('stressOfLoad', {
        ...{ sigma1: at[face][0], sigma2: at[face][1], tau12: at[face][2] },
        ...{ sigma_m1: m[0], sigma_m2: m[1], tau_m12: m[2] },
        ...{ sigma_r1: r[0], sigma_r2: r[1], tau_r12: r[2] },
      });
    }
  }
}
