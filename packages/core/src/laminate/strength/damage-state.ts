import type { Load } from '../load.js';
import { respond } from '../respond.js';
import type { Laminate, Vector3 } from '../types.js';
import type { Criterion } from './criterion.js';
import { type Damage, damaged } from './discount.js';
import { type FaceStress, faceStress, residualState } from './face-stress.js';
import { linearLimit } from './first-root.js';
import type { LaminateStrength } from './laminate-strength.js';
import type { Lay } from './lay.js';
import { modeAt, noMode } from './mode.js';
import type { SplitLoad } from './split-load.js';
import type { StrengthConstants } from './strength-constants.js';
import { type PointFailure, pointFailure } from './strength-ratio.js';
import { type PlyFailure, plyFailure } from './weakest.js';

/** A damaged laminate under the load once (mechanical) and under heat and moisture alone (residual). */
export interface DamageState {
  readonly laminate: Laminate;
  readonly mechanical: {
    readonly strain: Vector3;
    readonly curvature: Vector3;
    readonly stress: readonly FaceStress[];
  };
  readonly residual: { readonly strain: Vector3; readonly curvature: Vector3; readonly stress: readonly FaceStress[] };
  /** N·e + M·k of the mechanical load, N/m: twice the elastic energy per area. */
  readonly work: number;
}

/** Responses of a laminate with the given damage. */
export function damageState(
  laminate: Laminate,
  load: SplitLoad,
  damage: readonly Damage[],
  factor: number,
): DamageState {
  const left = damaged(laminate, damage, factor);
  const response = respond(left, load.mechanical);
  const { strain, curvature, N, M } = response;
  return {
    laminate: left,
    mechanical: { strain, curvature, stress: faceStress(response) },
    residual: residualState(left, load.residual),
    work: dot(applied(load.mechanical.N, N), strain) + dot(applied(load.mechanical.M, M), curvature),
  };
}

/** The plies that can still fail, each with its ratio under the damage as it is. */
export function remainingFailures(
  { laminate, mechanical, residual }: DamageState,
  damage: readonly Damage[],
  criterion: Criterion,
  { constants, lays }: LaminateStrength,
): PlyFailure[] {
  return constants.flatMap((c, k) => {
    const s = mechanical.stress[k];
    const r = residual.stress[k];
    const state = damage[k] ?? 'whole';
    if (c === undefined || s === undefined || r === undefined || state === 'failed') return [];
    const by = criterion === 'puck' && lays[k] !== 'unidirectional' ? 'maxStress' : criterion;
    const at = (face: 'top' | 'bottom'): PointFailure =>
      state === 'whole' ? pointFailure(by, s[face], r[face], c, lays[k]) : fibreFailure(s[face], r[face], c, lays[k]);
    return [plyFailure(laminate, k, at('top'), at('bottom'))];
  });
}

/** Failure of a cracked ply: of its fibres only, at -Xc or Xt; in a cloth of either yarn, the weft at -Yc or Yt. */
function fibreFailure([s1, s2]: Vector3, [r1, r2]: Vector3, c: StrengthConstants, lay?: Lay): PointFailure {
  const along = linearLimit(r1, s1, c.Xt, c.Xc);
  const across = lay === 'cloth' ? linearLimit(r2, s2, c.Yt, c.Yc) : Number.POSITIVE_INFINITY;
  const ratio = Math.min(along, across);
  if (!Number.isFinite(ratio)) return { ratio: undefined, ...noMode };
  const at: Vector3 = across < along ? [0, r2 + ratio * s2, 0] : [r1 + ratio * s1, 0, 0];
  return { ratio, ...modeAt('maxStress', at, c, lay) };
}

/** The load as given, without the reactions where deformation is held. */
const applied = (given: Load['N'], all: Vector3): Vector3 => {
  const one = (i: 0 | 1 | 2): number => (given?.[i] == null ? 0 : all[i]);
  return [one(0), one(1), one(2)];
};

const dot = (p: Vector3, q: Vector3): number => p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
