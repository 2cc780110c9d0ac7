export {
  type Criterion,
  failureCriteria,
  type PuckInclination,
  puckInclinations,
  type StrengthOptions,
  type TsaiHillVariant,
  tsaiHillVariants,
} from './criterion.js';
export { criterionSources, type RatioFunction, ratioFunctions } from './criterion-models.js';
export { type Damage, type Discount, discounts } from './discount.js';
export { faceStress } from './face-stress.js';
export { type FirstFailure, failure, failureUnder, type LaminateFailure, unloaded } from './failure.js';
export {
  type EnvelopeOptions,
  type EnvelopePoint,
  envelopeOf,
  type FailureEnvelope,
  failureEnvelope,
  type LoadComponent,
  loadComponents,
  type SolvedPlane,
  solvePlane,
} from './failure-envelope.js';
export { showStressOfLoad } from './failure-steps.js';
export type { FailureMode, ModeKey } from './mode.js';
export { progressiveFailure } from './progressive-failure.js';
export type {
  CurvePoint,
  ProgressiveFailure,
  ProgressiveOptions,
  ProgressiveStep,
  StepPly,
} from './progressive-types.js';
export { type SolvedLoad, solveLoad } from './solved-load.js';
export { type StrengthConstants, type StrengthPly, strengthConstants } from './strength-constants.js';
export { type PointFailure, type StrengthRatio, strengthRatio } from './strength-ratio.js';
export { type TsaiWuCoefficients, tsaiWuCoefficients } from './tsai-wu-coefficients.js';
export type { Face, PlyFailure } from './weakest.js';
