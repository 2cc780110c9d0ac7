import { type Laminate, laminate, parseOrientationCode } from '../laminate/index.js';
import { type Ply, ply } from '../material/index.js';

/** Constants of a ply as multiples of its E2, as papers on theories of plates give them. */
export interface ModulusRatios {
  readonly E1: number;
  readonly E2: number;
  readonly G12: number;
  readonly G13: number;
  readonly G23: number;
  readonly nu12: number;
}

/** A ply of such a material; density 1. */
const ratioPly = (given: ModulusRatios, angle: number, thickness: number): Ply =>
  ply({ ...given, angle, thickness, density: 1 });

/** Plies of equal thickness at the angles of an orientation code, of thickness 1 together. */
export function unitStack(given: ModulusRatios, code: string): Laminate {
  const items = parseOrientationCode(code);
  return laminate(items.map(({ angle }) => ratioPly(given, angle, 1 / items.length)));
}
