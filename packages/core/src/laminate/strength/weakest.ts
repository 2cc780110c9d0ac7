import type { Laminate } from '../types.js';
import type { Criterion } from './criterion.js';
import type { FaceStress } from './face-stress.js';
import type { LaminateStrength } from './laminate-strength.js';
import type { ShownPoint } from './point-steps.js';
import { type PointFailure, pointFailure } from './strength-ratio.js';

/** A face of a ply: `top` toward the tool (the smaller z), `bottom` toward the bag. */
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

/** Every ply that has strengths, from the tool side on; the steps go into the parts `plies.2.top` and so on of what is shown. */
export function plyFailures(
  laminate: Laminate,
  criterion: Criterion,
  { constants, lays }: LaminateStrength,
  mechanical: readonly FaceStress[],
  residual: readonly FaceStress[],
  shown?: ShownPoint,
): PlyFailure[] {
  return constants.flatMap((c, k) => {
    const s = mechanical[k];
    const r = residual[k];
    if (c === undefined || s === undefined || r === undefined) return [];
    const part = (face: Face) => shown && { ...shown, working: shown.working.part('plies', k + 1, face) };
    const at = (face: Face): PointFailure => pointFailure(criterion, s[face], r[face], c, lays[k], part(face));
    return [plyFailure(laminate, k, at('top'), at('bottom'))];
  });
}

/** The ply that fails first; undefined when no load would break any. */
export function weakest(plies: readonly PlyFailure[]): PlyFailure | undefined {
  let first: PlyFailure | undefined;
  for (const ply of plies) if (less(ply.ratio, first?.ratio)) first = ply;
  return first;
}
