export { assemble } from './assemble/index.js';
export {
  type DesignInputs,
  designInputs,
  type InputChange,
  type InputValue,
  inputAt,
  inputList,
  locateIn,
  variant,
  variantText,
} from './inputs.js';
export type {
  CouponModel,
  CuredFabricModel,
  FabricModel,
  LaminateModel,
  ListedPlyModel,
  LoadModel,
  MaterialModel,
  Model,
  Process,
  Provenance,
  StackEntry,
  StitchBridgingModel,
  StitchingModel,
} from './model.js';
export {
  bySchema,
  type Design,
  designText,
  parseDesign,
  type ReadOptions,
  readDesign,
  readDesignBytes,
} from './read.js';
export {
  againstPrint,
  type BlisterResult,
  type ComputeOptions,
  type CouponResult,
  type CuredFabric,
  compute,
  couponNotes,
  type FabricResult,
  type FibreModels,
  type Film,
  type FirstOpening,
  type FreeEdgeResult,
  type LaminateChecks,
  type LaminateExpansion,
  type LaminateResult,
  type ListedPlyResult,
  type LoadEnvelope,
  type LoadedFibres,
  type LoadResult,
  type LoadStrength,
  loadNotes,
  type MaterialResult,
  type MidPlane,
  type PanelResult,
  type Residual,
  type Results,
  type StitchGrowth,
  type StitchHolding,
  type StitchingResult,
  type StitchLaw,
  type StitchPrice,
  type TargetResult,
} from './results/index.js';
export { strengthOptionsOf } from './results/load-of.js';
export { numbersAt } from './results/numbers-at.js';
export { kindAt } from './results/quantities.js';
export { judgeTargets, quantityAt } from './results/targets.js';
export {
  designJsonSchema,
  type LoadEntry,
  type SearchEntry,
  type TargetEntry,
  type ToleranceEntry,
} from './schema/design.js';
export { reference, section } from './schema/fields.js';
export { type DesignSource, locate, parseSource } from './source.js';
export { starterDesign } from './starter.js';
export { workedDesign, workedSteps } from './worked/index.js';
