import type { Note, SourceKey } from '../provenance/index.js';
import type { Response } from './respond.js';
import type { Vector3 } from './types.js';

/** What a free panel becomes: curved not at all, about one axis, both ways alike, both ways opposed, or wound. */
export type ShapeKind = 'flat' | 'cylinder' | 'dome' | 'saddle' | 'twist';

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

/** Curvatures in this ratio and below count as one curvature alone. */
const negligible = 0.1;

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
  const [kx, ky, kxy] = curvature;
  const mean = (kx + ky) / 2;
  const radius = Math.hypot((kx - ky) / 2, kxy / 2);
  // Two of the same size: rounding shall not choose between them.
  const positive = mean >= -1e-9 * radius;
  const upper = radius === 0 ? 0 : (Math.atan2(kxy, kx - ky) * 90) / Math.PI;
  const principal: readonly [number, number] = positive
    ? [mean + radius, mean - radius]
    : [mean - radius, mean + radius];
  const turned = positive ? upper : upper + 90;
  const direction = turned > 90 ? turned - 180 : turned <= -90 ? turned + 180 : turned;
  const kind = kindOf(curvature, principal, thickness);
  const rise = kind === 'flat' ? {} : { riseOfThickness: Math.sqrt((8 * thickness) / Math.abs(principal[0])) };
  return { kind, curvature, principal, direction, ...rise, notes, sources };
}

function kindOf([kx, ky, kxy]: Vector3, [k1, k2]: readonly [number, number], thickness: number): ShapeKind {
  if (Math.abs(k1) * thickness < 1e-9) return 'flat';
  if (Math.abs(k2) <= negligible * Math.abs(k1)) return 'cylinder';
  if (k1 * k2 > 0) return 'dome';
  return Math.max(Math.abs(kx), Math.abs(ky)) <= (negligible * Math.abs(kxy)) / 2 ? 'twist' : 'saddle';
}
