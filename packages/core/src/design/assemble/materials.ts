import type { Fabric } from '../../material/index.js';
import type { CuredFabricModel, FabricModel, LaminateModel, MaterialModel, Process } from '../model.js';
import type { ResolvedFabric } from './fabrics.js';
import type { Layers } from './laminates.js';

/** The fibre fraction of a fabric in a laminate of that process. */
const fractionIn = (process: Process, fabric: ResolvedFabric): number | undefined =>
  (process.kind === 'given' ? undefined : process.fibreVolumeFraction) ?? fabric.fibreVolumeFraction;

/** The fabric as it is in every laminate that it lies in, laminates of one fibre fraction together. */
function curedStates(name: string, fabric: ResolvedFabric, laminates: readonly LaminateModel[]): CuredFabricModel[] {
  const states = new Map<number, CuredFabricModel>();
  for (const laminate of laminates) {
    if (!laminate.entries.some((entry) => entry.material === name)) continue;
    const fibreVolumeFraction = fractionIn(laminate.process, fabric);
    if (fibreVolumeFraction === undefined) continue;
    const { laminates: others = [] } = states.get(fibreVolumeFraction) ?? {};
    const cured: Fabric = { ...fabric, fibreVolumeFraction };
    states.set(fibreVolumeFraction, { laminates: [...others, laminate.name], fabric: cured });
  }
  return [...states.values()];
}

/** The materials of the stacks that are made of fibre and resin, or said to be, in order of first use. */
export function materialModels(layers: Layers, laminates: readonly LaminateModel[]): MaterialModel[] {
  return [...layers].flatMap(([name, layer]): MaterialModel[] => {
    if (layer === undefined) return [];
    if ('fixed' in layer) return layer.claim === undefined ? [] : [layer.claim];
    const cured = curedStates(name, layer.fabric, laminates);
    const model: FabricModel = { kind: 'fabric', name, cured };
    return cured.length === 0 ? [] : [model];
  });
}
