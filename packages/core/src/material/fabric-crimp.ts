import { type CrimpChoice, chooseCrimp } from './crimp-choice.js';
import { unidirectionalPly } from './ply-from-constituents.js';
import type { Fabric } from './types.js';

/**
 * What crimp leaves of a woven fabric's moduli along warp and weft, as `fabricPlies` takes it, and where it comes from.
 * @param fabric SI; arealMass in kg/m^2, fibreVolumeFraction 0.1 to 0.75.
 * @returns Factors, with the geometry of the yarns where that decides; undefined for a fabric that is not woven.
 * @throws as `fabricPlies`.
 * @source see `crimpFactorFromGeometry`.
 */
export function fabricCrimp(fabric: Fabric): CrimpChoice | undefined {
  if (fabric.architecture !== 'woven') return undefined;
  const { fibre, weftFibre = fibre, arealMass, warpShare = 0.5 } = fabric;
  const warp = unidirectionalPly({ ...fabric, arealMass: arealMass * warpShare });
  const weft = unidirectionalPly({ ...fabric, fibre: weftFibre, arealMass: arealMass * (1 - warpShare) });
  const thickness = warp.thickness + weft.thickness;
  return chooseCrimp({ name: fabric.name, thickness, warp, weft, share: warp.thickness / thickness }, fabric);
}
