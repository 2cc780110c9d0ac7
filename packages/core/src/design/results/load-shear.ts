import { type Laminate, type ShearStressDistribution, shearStressDistribution } from '../../laminate/index.js';
import { placed } from '../assemble/context.js';
import type { LoadModel } from '../model.js';

/** Points over the whole thickness by which the parabola of a single ply still looks like one. */
const smooth = 24;

/** Points per ply, odd so that the middle is one: many for few plies. */
const pointsPerPly = (plies: number): number => 2 * Math.max(1, Math.ceil(smooth / plies / 2)) + 1;

/**
 * Shear stress between the plies under the shear forces of a load case; undefined when it has none.
 * @throws SelvageError with the path of the forces: `not-computable`
 */
export function interlaminarShearOf(model: LoadModel, laminate: Laminate): ShearStressDistribution | undefined {
  if (model.shear === undefined) return undefined;
  const [Vx, Vy] = model.shear;
  return placed(['loads', model.name, 'shear'], () =>
    shearStressDistribution(laminate, { Vx, Vy }, pointsPerPly(laminate.plies.length)),
  );
}

/** The same in the JSON document; the peaks are those of the parabolas, `ply` counts from 1 at the tool side. */
export function interlaminarShearData({ peakXz, peakYz, points }: ShearStressDistribution): Record<string, unknown> {
  return { peakXz, peakYz, points };
}
