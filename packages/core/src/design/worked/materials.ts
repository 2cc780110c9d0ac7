import {
  type Fabric,
  fabricFibreThickness,
  fabricPlies,
  fibreVolumeFractionInGap,
  plyConsistency,
  solidFibreRows,
} from '../../material/index.js';
import type { Working } from '../../working/index.js';
import type { CuredFabricModel, LaminateModel, MaterialModel, Model } from '../model.js';

/** Takes down how the plies of a fabric follow from fibre and resin, or how far a listed ply is from what they give. */
export function materialSteps(material: MaterialModel, model: Model, working: Working): void {
  if (material.kind === 'ply') {
    plyConsistency(material.listed, material, working);
    return;
  }
  for (const cured of material.cured) {
    const part = material.cured.length === 1 ? working : working.part(cured.laminates.join(', '));
    toolSteps(cured, model, part);
    part.notes(fabricPlies(cured.fabric, {}, part).flatMap(({ notes }) => notes));
  }
}

/** Takes down the fibre fraction that a closed tool leaves to the fabric. */
function toolSteps({ laminates }: CuredFabricModel, model: Model, working: Working): void {
  const pressed = model.laminates.find(
    ({ name, process }) => laminates.includes(name) && process.kind === 'closedTool',
  );
  if (pressed?.process.kind !== 'closedTool') return;
  const { gap } = pressed.process;
  const fabrics = pressed.entries.flatMap(({ material }) => curedIn(pressed, model, material) ?? []);
  const names = new Set(fabrics.map(({ name }) => name));
  const fibreThickness = fabrics.reduce((sum, fabric) => sum + fabricFibreThickness(fabric), 0);
  const fixed = pressed.laminate.plies.filter(({ name }) => !names.has(name));
  const fixedThickness = fixed.reduce((sum, { thickness }) => sum + thickness, 0);
  working.step('solidFibres', { t_solid: fibreThickness }, fabrics.flatMap(solidFibreRows));
  fibreVolumeFractionInGap({ fibreThickness, gap, fixedThickness }, working);
}

/** A fabric as it is in a laminate; undefined for a material of given thickness. */
function curedIn(laminate: LaminateModel, { materials }: Model, name: string): Fabric | undefined {
  const material = materials.find((one) => one.name === name);
  if (material?.kind !== 'fabric') return undefined;
  return material.cured.find(({ laminates }) => laminates.includes(laminate.name))?.fabric;
}
