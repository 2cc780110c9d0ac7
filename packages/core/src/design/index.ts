export { assemble } from './assemble/index.js';
export type {
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
  StitchingModel,
} from './model.js';
export { type Design, type ReadOptions, readDesign, readDesignBytes } from './read.js';
export {
  type BlisterResult,
  type CuredFabric,
  compute,
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
  type LoadResult,
  type LoadStrength,
  loadNotes,
  type MaterialResult,
  type PanelResult,
  type Residual,
  type Results,
  type TargetResult,
} from './results/index.js';
export { designJsonSchema, type LoadEntry, type TargetEntry } from './schema/design.js';
export { starterDesign } from './starter.js';
