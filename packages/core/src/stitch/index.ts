export { type ArealFraction, arealFraction, type Seam, type SideFraction } from './areal-fraction.js';
export type { BridgingInput, BridgingPath } from './bridging/bridging-input.js';
export {
  type BridgingInterval,
  bridgingInterval,
  type SamplingOptions,
  startSampling,
} from './bridging/bridging-interval.js';
export { bridgingLaw, lawOf, type PathLaw } from './bridging/bridging-law.js';
export { bridgingModel, type FaceAnchor, type PenetrationInput } from './bridging/bridging-model.js';
export { type BridgingParameters, bridgingParameters } from './bridging/bridging-parameters.js';
export type { BridgingModel, BridgingSide } from './bridging/bridging-sides.js';
export { type GivingWay, givingWay, type PullOut } from './bridging/failure-sites.js';
export { showGivingWay, showMeasured } from './bridging/law-steps.js';
export { measuredInterval, scaledLaw, usualVariation } from './bridging/measured-interval.js';
export { type MeasuredPoint, measuredBridgingLaw } from './bridging/measured-law.js';
export { openingWork } from './bridging/opening-law.js';
export type { BridgingState, CrackMovement } from './bridging/path-law.js';
export type { RodInput, RodParameters } from './bridging/rod.js';
export { openingAt } from './bridging/slip.js';
export type { Float, YieldingBend } from './bridging/yielding-bend.js';
export type { BridgingCurve, BridgingFailure, BridgingLaw, Interval } from './bridging-types.js';
export { inMillimetres, requirePositive } from './check.js';
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
export type { Estimate, InPlaneParameters } from './in-plane/estimate.js';
export type { WavyPly } from './in-plane/formulas.js';
export { inPlaneKnockdown } from './in-plane/in-plane-knockdown.js';
export type { InPlaneKnockdown, KnockdownInput } from './in-plane/knockdown-types.js';
export type { PublishedChange } from './in-plane/published.js';
export { type NearestNeighbour, nearestNeighbour } from './nearest-neighbour.js';
export { type NeedleRange, needleDiameter, needleFor, needleRatio } from './needle.js';
export { countInField, type FieldCount, penetrations } from './positions.js';
export { bridgingPriors, inPlanePriors, type Prior, rodPriors, specimenPriors, zonePriors } from './priors.js';
export { type RowsMet, rowsMetAcross, rowsMetAlong } from './rows-met.js';
export { samplePrior, standardNormal } from './sample-prior.js';
export { type SewingTimeInput, sewingTime } from './sewing-time.js';
export type { SewnRows } from './sewn-rows.js';
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
export {
  armCeiling,
  type BridgingZone,
  bridgingLength,
  bridgingZone,
  type Discreteness,
  discreteness,
  type ToughnessArm,
} from './toughness/lengths.js';
export { toughness } from './toughness/toughness.js';
export {
  type ToughnessInterval,
  type ToughnessIntervalInput,
  toughnessInterval,
  type ValueRange,
} from './toughness/toughness-interval.js';
export { showArmBreaks } from './toughness/toughness-steps.js';
export type { Toughness, ToughnessInput } from './toughness/toughness-types.js';
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
