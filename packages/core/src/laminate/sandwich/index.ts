export {
  type AllenCriteria,
  type AllenStiffness,
  allenDeflection,
  handBookTolerance,
  type SandwichSpan,
  thinFaceWeakCoreLimit,
} from './allen.js';
export { sandwichChecks } from './sandwich-checks.js';
export type {
  CoreShear,
  FaceStress,
  NoSandwich,
  Sandwich,
  SandwichCore,
  SandwichDirection,
  SandwichFace,
  SandwichOptions,
  Wrinkling,
} from './types.js';
export {
  deepCoreWrinklingStress,
  type WrinklingModuli,
  wrinklingCoefficientInDesign,
  wrinklingCoefficientInTheory,
  wrinklingDepth,
  wrinklingStress,
} from './wrinkling.js';
