import type { StepValues } from '../working/index.js';
import { solidFibreThickness } from './fibre-content.js';
import type { Fabric, Fibre } from './types.js';

/** One fibre of a dry fabric: how much of it, kg/m^2, and as how thick a solid sheet, m. */
export interface FabricFibre {
  readonly name: string;
  readonly arealMass: number;
  readonly solidThickness: number;
}

type DryFabric = Pick<Fabric, 'fibre' | 'arealMass' | 'architecture' | 'weftFibre' | 'warpShare' | 'layers'>;

/** The shares of the dry mass with the fibre of each. */
function shares({ fibre, architecture, weftFibre, warpShare = 0.5, layers = [] }: DryFabric): [Fibre, number][] {
  if (architecture === 'woven' && weftFibre !== undefined) {
    return [
      [fibre, warpShare],
      [weftFibre, 1 - warpShare],
    ];
  }
  if (architecture === 'multiaxial' && layers.length > 0)
    return layers.map((layer) => [layer.fibre ?? fibre, layer.share]);
  return [[fibre, 1]];
}

/**
 * The fibres of a dry fabric, each name once, in order of first appearance: warp before weft, layers from below.
 * @param fabric Areal mass in kg/m^2; its shares add up to 1.
 * @returns kg/m^2 and m; the masses add up to the fabric's.
 * @throws out-of-range for a mass or density that is not positive.
 */
export function fabricFibres(fabric: DryFabric): FabricFibre[] {
  const found = new Map<string, FabricFibre>();
  for (const [{ name, density }, share] of shares(fabric)) {
    const mass = fabric.arealMass * share;
    const { arealMass = 0, solidThickness = 0 } = found.get(name) ?? {};
    found.set(name, {
      name,
      arealMass: arealMass + mass,
      solidThickness: solidThickness + solidFibreThickness(mass, density),
    });
  }
  return [...found.values()];
}

/** The shares of a dry fabric by the symbols of the sum that {@link fabricFibreThickness} is. */
export const solidFibreRows = (fabric: DryFabric): StepValues[] =>
  shares(fabric).map(([{ density: rho_f }, share]) => {
    const m_f = fabric.arealMass * share;
    return { m_f, rho_f, t_solid: solidFibreThickness(m_f, rho_f) };
  });

/**
 * Thickness of the fibres of a dry fabric alone, whatever fibres it has: the sum of w/rho_f. Divided by the fibre fraction
 * it is the cured thickness; summed over a stack it is what a closed tool presses.
 * @returns m.
 * @throws out-of-range as `fabricFibres`.
 */
export function fabricFibreThickness(fabric: DryFabric): number {
  return fabricFibres(fabric).reduce((sum, { solidThickness }) => sum + solidThickness, 0);
}
