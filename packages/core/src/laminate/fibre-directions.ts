import type { Ply } from '../material/index.js';
import { fibreAngle } from '../numeric/index.js';

/**
 * The directions in which a ply's fibres run, each in (-90, 90] degrees: none for a core or a ply that is isotropic in its
 * plane, two for a cloth, one for a unidirectional ply.
 *
 * A ply is taken as cloth when E2 is at least half of E1, which no unidirectional fibre composite reaches
 * (common practice, no source).
 */
export function fibreDirections(ply: Ply): readonly number[] {
  if (ply.core || isIsotropic(ply)) return [];
  const angle = fibreAngle(ply.angle);
  return isCloth(ply) ? [angle, fibreAngle(ply.angle + 90)].sort((a, b) => a - b) : [angle];
}

type Elastic = Pick<Ply, 'E1' | 'E2' | 'G12' | 'nu12'> & { readonly core?: boolean | undefined };

/** Whether a ply counts as having fibres along and across: E2 at least half of E1, and not isotropic. */
export function isCloth(ply: Elastic): boolean {
  return !ply.core && Math.min(ply.E1, ply.E2) >= Math.max(ply.E1, ply.E2) / 2 && !isIsotropic(ply);
}

/** Whether a ply has the same stiffness in all directions of its plane, within 1 %. */
export function isIsotropic({ E1, E2, G12, nu12 }: Elastic): boolean {
  const near = (value: number, other: number): boolean => Math.abs(value - other) <= 0.01 * Math.abs(other);
  return near(E1, E2) && near(G12, E1 / (2 * (1 + nu12)));
}

/** The angle between two fibre directions, 0 to 90 degrees. */
export function angleBetween(one: number, other: number): number {
  return Math.abs(fibreAngle(one - other));
}
