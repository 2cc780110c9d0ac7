export { type ArealFraction, arealFraction, type Seam, type SideFraction } from './areal-fraction.js';
export { checkPattern } from './check-pattern.js';
export {
  type ConsumptionInput,
  type PerThread,
  type ThreadConsumption,
  type ThreadTotals,
  threadConsumption,
} from './consumption.js';
export { holeDensity, meanRun, penetrationDensity, rowLengthPerArea } from './density.js';
export { type ClosedRow, closeRow, countedWidth, offsetRowLength } from './edge-rows.js';
export { type HoleInput, type Holes, holes } from './holes.js';
export { type NearestNeighbour, nearestNeighbour } from './nearest-neighbour.js';
export { type NeedleRange, needleDiameter, needleFor, needleRatio } from './needle.js';
export { countInField, type FieldCount, penetrations } from './positions.js';
export { type RowsMet, rowsMetAcross, rowsMetAlong } from './rows-met.js';
export { type SewingTimeInput, sewingTime } from './sewing-time.js';
export {
  hasUnderThread,
  type Legs,
  type StitchGeometry,
  type StitchType,
  type StitchTypeId,
  stitchType,
  stitchTypeIds,
  stitchTypes,
  type ThreadShare,
  withStrands,
} from './stitch-type.js';
export { type StitchPlan, type StitchSummary, stitchSummary } from './summary.js';
export { bundleArea, bundlePerimeter, checkThread, fibreArea, threadDiameter } from './thread.js';
export type {
  CrossingPattern,
  EdgeRow,
  Field,
  FieldPattern,
  ParallelPattern,
  Pattern,
  Penetration,
  RowsPattern,
  StaggeredPattern,
  Thread,
  ZigzagPattern,
} from './types.js';
