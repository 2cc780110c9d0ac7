export { assemble } from './assemble/index.js';
export type { LaminateModel, LoadModel, Model, Process, Provenance, StackEntry, StitchingModel } from './model.js';
export { type Design, type ReadOptions, readDesign, readDesignBytes } from './read.js';
export {
  type BlisterResult,
  type CuredFabric,
  compute,
  type FabricResult,
  type FibreModels,
  type FirstOpening,
  type FreeEdgeResult,
  type LaminateExpansion,
  type LaminateResult,
  type ListedPlyResult,
  type LoadResult,
  loadNotes,
  type MaterialResult,
  type PanelResult,
  type Results,
  type TargetResult,
} from './results/index.js';
export { designJsonSchema, type LoadEntry, type TargetEntry } from './schema/design.js';
export { starterDesign } from './starter.js';
