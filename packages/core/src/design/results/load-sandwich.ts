import { type Laminate, type Load, type Sandwich, sandwichChecks, type Wrinkling } from '../../laminate/index.js';
import type { Note } from '../../provenance/index.js';
import { defined } from '../assemble/constituents.js';
import type { LoadModel } from '../model.js';

const residual: Note = {
  level: 'assumption',
  text: 'The stress of a face holds that of temperature and moisture, which does not grow with the load: its ratio compares stresses and is no multiple of the load.',
};

/** Wrinkling and core shear under a load case; undefined when the laminate is no sandwich. */
export function loadedSandwich(model: LoadModel, load: Load, laminate: Laminate): Sandwich | undefined {
  const [Vx = 0, Vy = 0] = model.shear ?? [];
  const shear = model.shear === undefined ? undefined : { Vx, Vy };
  const found = sandwichChecks(laminate, defined({ load, shear }));
  if (!found.isSandwich) return undefined;
  const { temperatureChange = 0, temperatureGradient = 0, moisture = 0 } = model;
  const free = [temperatureChange, temperatureGradient, moisture].flat().every((value) => value === 0);
  return free ? found : { ...found, notes: [...found.notes, residual] };
}

const wrinklingData = ({ faceStress, stress, ratio }: Wrinkling) => ({
  faceStress: faceStress ?? null,
  wrinklingStress: stress,
  ratio: ratio ?? null,
});

/** The same in the JSON document; a ratio is null where a face is not compressed, or the strength not known. */
export function loadedSandwichData({ tool, bag, coreShear }: Sandwich): Record<string, unknown> {
  return {
    tool: { x: wrinklingData(tool.x), y: wrinklingData(tool.y) },
    bag: { x: wrinklingData(bag.x), y: wrinklingData(bag.y) },
    ...(coreShear === undefined
      ? {}
      : { coreShear: { stress: coreShear.stress, nominal: coreShear.nominal, ratio: coreShear.ratio ?? null } }),
  };
}
