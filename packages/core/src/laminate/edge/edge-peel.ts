import { rotateStrain } from '../axes.js';
import { type PlyResponse, respond } from '../respond.js';
import type { Laminate } from '../types.js';
import type { StripState } from './strip-part.js';

/** Tendency of the free edge to open or close at one height. */
export interface EdgePeel {
  /** Moment of the stress σy above about the height, N; positive opens. */
  readonly moment: number;
  /** Its magnitude over Ex h² and the axial strain. */
  readonly relative: number;
  readonly sense: 'opening' | 'closing' | 'undecided';
}

/** Below this relative moment the sign says nothing about the stress at the edge. */
const silent = 1e-3;

/**
 * The sign of the peel stress at a free edge along x, by the moment rule.
 *
 * M = ∫ σy (z - z0) dz from z0 up, with σy of the laminate far from the edge, where the edge must be free of it: stress across on plies above
 * pulls them away from those below when it is tension outward of z0. Said only when |M| ≥ 1e-3 Ex h² e, e the largest axial mechanical
 * strain of a ply. It gives a sign, no magnitude.
 *
 * @returns a function of the height z0, m
 * @throws as `respond`
 * @source Pagano & Pipes 1971
 */
export function edgePeel(laminate: Laminate, Ex: number, state: StripState): (z0: number) => EdgePeel {
  const { temperatureChange, strain } = state;
  const { plies } = respond(laminate, {
    strain: [strain, null, null],
    curvature: [0, null, 0],
    temperatureChange,
  });
  const axial = laminate.plies.map(({ expansion, angle }) => {
    const free = [(expansion?.alpha1 ?? 0) * temperatureChange, (expansion?.alpha2 ?? 0) * temperatureChange] as const;
    return Math.abs(strain - rotateStrain([free[0], free[1], 0], -angle)[0]);
  });
  const scale = Ex * laminate.thickness ** 2 * Math.max(...axial);
  return (z0) => {
    const moment = plies.reduce((sum, one) => sum + momentAbove(one, z0), 0);
    const relative = scale === 0 ? 0 : Math.abs(moment) / scale;
    return { moment, relative, sense: relative < silent ? 'undecided' : moment > 0 ? 'opening' : 'closing' };
  };
}

/** ∫ σy (z - z0) dz over the part of a ply above z0, by Simpson's rule, which is exact for it. */
function momentAbove({ top, bottom }: PlyResponse, z0: number): number {
  const from = Math.max(top.z, z0);
  const length = bottom.z - from;
  if (length <= 0) return 0;
  const slope = (bottom.stress[1] - top.stress[1]) / (bottom.z - top.z);
  const at = (z: number): number => (top.stress[1] + slope * (z - top.z)) * (z - z0);
  return (length / 6) * (at(from) + 4 * at(from + length / 2) + at(bottom.z));
}
