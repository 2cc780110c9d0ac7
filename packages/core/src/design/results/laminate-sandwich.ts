import {
  type Laminate,
  type NoSandwich,
  type Sandwich,
  type SandwichDirection,
  type SandwichFace,
  sandwichChecks,
  type Wrinkling,
} from '../../laminate/index.js';

/** The checks of a laminate that has a core, or why it is no sandwich; undefined without a core. */
export function sandwichOf(laminate: Laminate): Sandwich | NoSandwich | undefined {
  return laminate.plies.some((ply) => ply.core === true) ? sandwichChecks(laminate) : undefined;
}

const wrinklingData = ({ faceModulus, stress, inTheory, deepCore, depth }: Wrinkling) => ({
  faceModulus,
  wrinklingStress: stress,
  wrinklingStressInTheory: inTheory,
  wrinklingStressDeepCore: deepCore,
  wrinklingDepth: depth,
});

const faceData = ({ thickness, x, y }: SandwichFace) => ({ thickness, x: wrinklingData(x), y: wrinklingData(y) });

const directionData = ({ criteria, allen, difference, H }: SandwichDirection) => ({
  thinFaces: criteria.thinFaces,
  weakCore: criteria.weakCore,
  bendingStiffness: allen.D,
  bendingStiffnessDifference: difference,
  shearStiffness: allen.S,
  H,
});

/** What a sandwich bears whatever the load, in the JSON document. */
export function sandwichData(sandwich: Sandwich | NoSandwich): Record<string, unknown> {
  if (!sandwich.isSandwich) return { isSandwich: false, reason: sandwich.reason };
  const { core, d, tool, bag, x, y } = sandwich;
  return {
    isSandwich: true,
    coreThickness: core.thickness,
    coreModulus: core.E,
    coreShearModulusXz: core.Gx,
    coreShearModulusYz: core.Gy,
    coreShearStrength: core.shearStrength ?? null,
    faceDistance: d,
    tool: faceData(tool),
    bag: faceData(bag),
    x: directionData(x),
    y: directionData(y),
  };
}
