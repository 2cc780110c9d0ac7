export { assemble } from './assemble/index.js';
export type { LaminateModel, LoadModel, Model, Process, Provenance, StackEntry, StitchingModel } from './model.js';
export { type Design, type ReadOptions, readDesign, readDesignBytes } from './read.js';
export {
  compute,
  type LaminateResult,
  type LoadResult,
  type Results,
  type TargetResult,
} from './results/index.js';
export { designJsonSchema, type LoadEntry, type TargetEntry } from './schema/design.js';
export { starterDesign } from './starter.js';
