import { isCloth, isIsotropic } from '../fibre-directions.js';

/** How the fibres of a ply lie, as far as strength is concerned: one way, two ways, or every way. */
export type Lay = 'unidirectional' | 'cloth' | 'mat';

/** The lay of a ply by its stiffness; anything isotropic in its plane counts as a mat. */
export function layOf(ply: Parameters<typeof isCloth>[0]): Lay {
  if (isIsotropic(ply)) return 'mat';
  return isCloth(ply) ? 'cloth' : 'unidirectional';
}
