import type { Laminate, Vector3 } from '../types.js';
import type { Criterion } from './criterion.js';
import { ratioFunctions } from './criterion-models.js';
import type { FaceStress } from './face-stress.js';
import type { LaminateStrength } from './laminate-strength.js';
import { weakestAxes } from './mat-ratio.js';
import { type PointFailure, pointFailure } from './strength-ratio.js';
import { type Face, less } from './weakest.js';

/** The face of a ply that fails first. */
export interface WeakestFace extends PointFailure {
  /** Counted from 1 at the tool side. */
  readonly ply: number;
  readonly name: string;
  readonly face: Face;
}

const faces = ['top', 'bottom'] as const;

const sum = (p: Vector3, q: Vector3, x: number, y: number): Vector3 => [
  x * p[0] + y * q[0],
  x * p[1] + y * q[1],
  x * p[2] + y * q[2],
];

/**
 * The face that fails first under x times one state of stress and y times another, as `weakest` of all plies would name it;
 * only that one's mode is looked at. An envelope asks this in each of its directions.
 */
export function weakestAlong(
  { plies }: Laminate,
  criterion: Criterion,
  { constants, lays }: LaminateStrength,
  [sx, sy, cured]: readonly [readonly FaceStress[], readonly FaceStress[], readonly FaceStress[]],
  x: number,
  y: number,
): WeakestFace | undefined {
  const ratioOf = ratioFunctions[criterion];
  let first: { k: number; face: Face; ratio: number } | undefined;
  for (const [k, c] of constants.entries()) {
    const [p, q, r] = [sx[k], sy[k], cured[k]];
    if (c === undefined || p === undefined || q === undefined || r === undefined) continue;
    for (const face of faces) {
      const limit = first?.ratio ?? Number.POSITIVE_INFINITY;
      const [a, b] = [p[face], q[face]];
      const [r1, r2, r12] = r[face];
      const ratio =
        lays[k] === 'mat'
          ? weakestAxes(criterion, sum(a, b, x, y), r[face], c, limit).ratio
          : ratioOf(x * a[0] + y * b[0], x * a[1] + y * b[1], x * a[2] + y * b[2], r1, r2, r12, c, limit);
      if (less(ratio, first?.ratio)) first = { k, face, ratio };
    }
  }
  if (first === undefined) return undefined;
  const { k, face } = first;
  const [p, q, r, c] = [sx[k]?.[face], sy[k]?.[face], cured[k]?.[face], constants[k]];
  if (p === undefined || q === undefined || r === undefined || c === undefined) return undefined;
  return { ply: k + 1, name: plies[k]?.name ?? '', face, ...pointFailure(criterion, sum(p, q, x, y), r, c, lays[k]) };
}
