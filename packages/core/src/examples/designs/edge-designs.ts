import type { edgeDelaminationOnset } from '../edge-kinds.js';
import { plyEntry } from './materials.js';
import { at, type DesignParts } from './parts.js';

export const edgeDelaminationDesign = (inputs: Parameters<typeof edgeDelaminationOnset>[0]): DesignParts => {
  const { ply, stack, plyThickness, strain, pliesBelow } = inputs;
  // Two surfaces part, each with its front; the source counts one of them.
  const G = at(`laminates.stack.freeEdge.interfaces.${pliesBelow - 1}.pair.G`, 2);
  return {
    materials: { ply: plyEntry(ply, plyThickness) },
    laminates: { stack: { material: 'ply', stack, freeEdge: { strain } } },
    held: { G, GMetric: G },
  };
};
