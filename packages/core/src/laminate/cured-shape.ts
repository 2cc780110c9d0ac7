import type { Note, SourceKey } from '../provenance/index.js';
import type { Response } from './respond.js';
import { kindOfShape, principalCurvatures, type ShapeKind } from './shape-kind.js';
import type { Vector3 } from './types.js';

/** The shape that heat and moisture give a laminate which nothing holds. */
export interface CuredShape {
  readonly kind: ShapeKind;
  /** κx, κy, κxy, 1/m. */
  readonly curvature: Vector3;
  /** Principal curvatures, 1/m, the one of larger size first. */
  readonly principal: readonly [number, number];
  /** From x to the direction along which the first principal curvature is measured, degrees in (-90, 90]. */
  readonly direction: number;
  /** Length along that direction over which the rise k L²/8 equals the thickness, m; absent when flat. */
  readonly riseOfThickness?: number;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/**
 * The cured shape in words and principal curvatures, from a linear response to heat and moisture alone.
 *
 * k1,2 = (κx + κy)/2 ± √(((κx - κy)/2)² + (κxy/2)²), tan 2θ = κxy/(κx - κy). Flat below |k| t = 10⁻⁹; a cylinder where the
 * smaller is at most a tenth of the larger (a choice of ours), else a dome for equal signs, a saddle for opposed ones, and of these a
 * twist where κx and κy are at most a tenth of κxy/2. Small deflections: beyond a rise of the thickness the shape is another.
 *
 * @param response of the free laminate, nothing mechanical acting; curvature 1/m
 * @param thickness m, above 0
 * @source Jones 1999, ch. 4; Hyer 1981 for the snap of a saddle to a cylinder, which the notes of the response give
 */
export function curedShape(
  { curvature, notes, sources }: Pick<Response, 'curvature' | 'notes' | 'sources'>,
  thickness: number,
): CuredShape {
  const { principal, direction } = principalCurvatures(curvature);
  const kind = kindOfShape(curvature, thickness);
  const rise = kind === 'flat' ? {} : { riseOfThickness: Math.sqrt((8 * thickness) / Math.abs(principal[0])) };
  return { kind, curvature, principal, direction, ...rise, notes, sources };
}
