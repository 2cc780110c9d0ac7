import type { Vector3 } from './types.js';

/** What a free panel becomes: curved not at all, about one axis, both ways alike, both ways opposed, or wound. */
export type ShapeKind = 'flat' | 'cylinder' | 'dome' | 'saddle' | 'twist';

/** Curvatures in this ratio and below count as one curvature alone. */
const negligible = 0.1;

/** The principal curvatures, 1/m, the one of larger size first, and the direction of the first, degrees in (-90, 90]. */
export function principalCurvatures([kx, ky, kxy]: Vector3): {
  readonly principal: readonly [number, number];
  readonly direction: number;
} {
  const mean = (kx + ky) / 2;
  const radius = Math.hypot((kx - ky) / 2, kxy / 2);
  // Two of the same size: rounding shall not choose between them.
  const positive = mean >= -1e-9 * radius;
  const upper = radius === 0 ? 0 : (Math.atan2(kxy, kx - ky) * 90) / Math.PI;
  const principal: readonly [number, number] = positive
    ? [mean + radius, mean - radius]
    : [mean - radius, mean + radius];
  const turned = positive ? upper : upper + 90;
  return { principal, direction: turned > 90 ? turned - 180 : turned <= -90 ? turned + 180 : turned };
}

/**
 * The kind of a shape: flat below |k| t = 10⁻⁹; a cylinder where the smaller principal curvature is at most a tenth of the larger (a
 * choice of ours), else a dome for equal signs, a saddle for opposed ones, and of these a twist where κx and κy are at most a tenth
 * of κxy/2.
 *
 * @param curvature κx, κy, κxy, 1/m
 * @param thickness m
 */
export function kindOfShape(curvature: Vector3, thickness: number): ShapeKind {
  const [kx, ky, kxy] = curvature;
  const [k1, k2] = principalCurvatures(curvature).principal;
  if (Math.abs(k1) * thickness < 1e-9) return 'flat';
  if (Math.abs(k2) <= negligible * Math.abs(k1)) return 'cylinder';
  if (k1 * k2 > 0) return 'dome';
  return Math.max(Math.abs(kx), Math.abs(ky)) <= (negligible * Math.abs(kxy)) / 2 ? 'twist' : 'saddle';
}
