import { fail } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import type { Laminate } from '../types.js';
import type { Criterion, StrengthOptions } from './criterion.js';
import type { FaceStress } from './face-stress.js';
import { type StrengthConstants, strengthConstants } from './strength-constants.js';
import { type PointFailure, pointFailure } from './strength-ratio.js';

export type Face = 'top' | 'bottom';

/** A ply's two faces; its own ratio and mode are those of the weaker one. */
export interface PlyFailure extends PointFailure {
  /** Counted from 1 at the tool side. */
  readonly ply: number;
  readonly name: string;
  readonly angle: number;
  /** The weaker face: `top` toward the tool (the smaller z), `bottom` toward the bag; `top` when they are alike. */
  readonly face: Face;
  readonly top: PointFailure;
  readonly bottom: PointFailure;
}

/** The constants of every ply; undefined for a core without strengths, which is left out and named in the notes. */
export interface LaminateStrength {
  readonly constants: readonly (StrengthConstants | undefined)[];
  readonly notes: readonly Note[];
}

/**
 * The strength constants of every ply of a laminate.
 * @throws not-computable when a ply other than a core has no strengths, or when no ply has; as {@link strengthConstants}
 */
export function laminateStrength(
  { plies }: Laminate,
  criterion: Criterion,
  options: StrengthOptions,
): LaminateStrength {
  const left: string[] = [];
  const constants = plies.map((ply, k) => {
    const { strengths } = ply;
    if (strengths !== undefined) return strengthConstants({ ...ply, strengths }, criterion, options);
    if (ply.core === true) {
      left.push(`${k + 1} (${ply.name})`);
      return undefined;
    }
    return fail({
      code: 'not-computable',
      message: `ply ${k + 1} (${ply.name}) has no strengths, so the failure of the laminate cannot be computed`,
      allowed: 'Xt, Xc, Yt, Yc and S for every ply; a core may be without',
      hint: 'give the material its strengths',
    });
  });
  if (left.length === plies.length) {
    fail({
      code: 'not-computable',
      message: 'no ply of the laminate has strengths, so its failure cannot be computed',
      allowed: 'at least one ply with Xt, Xc, Yt, Yc and S',
    });
  }
  const text = `Ply ${left.join(', ')}: a core without strengths, left out of the failure check.`;
  return { constants, notes: left.length === 0 ? [] : [{ level: 'assumption', text }] };
}

/** Below this relative difference two ratios count as one, and the ply nearer to the tool is named. */
const alike = 1e-12;

const orNever = (ratio: number | undefined): number => ratio ?? Number.POSITIVE_INFINITY;

/** Whether the first ratio is less than the second by more than rounding. */
export const less = (a: number | undefined, b: number | undefined): boolean => orNever(a) < orNever(b) * (1 - alike);

/** A ply from its two faces. */
export function plyFailure({ plies }: Laminate, k: number, top: PointFailure, bottom: PointFailure): PlyFailure {
  const face = less(bottom.ratio, top.ratio) ? 'bottom' : 'top';
  const { name = '', angle = 0 } = plies[k] ?? {};
  return { ply: k + 1, name, angle, face, ...(face === 'bottom' ? bottom : top), top, bottom };
}

/** Every ply that has strengths, from the tool side on. */
export function plyFailures(
  laminate: Laminate,
  criterion: Criterion,
  { constants }: LaminateStrength,
  mechanical: readonly FaceStress[],
  residual: readonly FaceStress[],
): PlyFailure[] {
  return constants.flatMap((c, k) => {
    const s = mechanical[k];
    const r = residual[k];
    if (c === undefined || s === undefined || r === undefined) return [];
    const top = pointFailure(criterion, s.top, r.top, c);
    return [plyFailure(laminate, k, top, pointFailure(criterion, s.bottom, r.bottom, c))];
  });
}

/** The ply that fails first; undefined when no load would break any. */
export function weakest(plies: readonly PlyFailure[]): PlyFailure | undefined {
  let first: PlyFailure | undefined;
  for (const ply of plies) if (less(ply.ratio, first?.ratio)) first = ply;
  return first;
}
