export { type CuredShape, curedShape } from './cured-shape.js';
export { diagnosis } from './diagnosis.js';
export { diagnosisStatements } from './diagnosis-statements.js';
export type { Diagnosis, DiagnosisMeasures } from './diagnosis-types.js';
export {
  type EdgeDelamination,
  type EdgeInterface,
  type EdgeOpening,
  type EdgePeel,
  edgeDelamination,
} from './edge/index.js';
export { engineeringConstants, type LaminateConstants, offAxisConstants } from './engineering-constants.js';
export { isCloth, isIsotropic } from './fibre-directions.js';
export { type FreeExpansion, moistureExpansionOf, thermalExpansionOf } from './free-expansion.js';
export { freeStrain } from './free-strain.js';
export { evaluateBatch } from './kernel.js';
export {
  allocateBatch,
  type Batch,
  type BatchResult,
  type BatchStrength,
  LOAD_STRIDE,
  layout,
  STRIDE,
} from './kernel-layout.js';
export { type LaminationParameters, laminationParameters } from './lamination-parameters.js';
export { type Components, type Load, sixComponents } from './load.js';
export { parseOrientationCode, type StackItem } from './orientation-code-parse.js';
export { type PrintItem, printOrientationCode } from './orientation-code-print.js';
export {
  type BucklingLoad,
  type EllipseBlisterResult,
  ellipseBlister,
  type PlateBuckling,
  type PlateDeflection,
  type PlateVibration,
  plateBuckling,
  plateDeflection,
  plateVibration,
  type StripBlisterResult,
  stripBlister,
} from './plate/index.js';
export { makeQbarTable, tabulateQbar } from './qbar.js';
export { type PlyPoint, type PlyResponse, type Response, respond } from './respond.js';
export {
  allenDeflection,
  type CoreShear,
  deepCoreWrinklingStress,
  type NoSandwich,
  type Sandwich,
  type SandwichDirection,
  type SandwichFace,
  sandwichChecks,
  thinFaceWeakCoreLimit,
  type Wrinkling,
  wrinklingCoefficientInDesign,
  wrinklingCoefficientInTheory,
  wrinklingDepth,
  wrinklingStress,
} from './sandwich/index.js';
export {
  cylindricalBending,
  plyShear,
  type ShearStressDistribution,
  shearStiffnessOf,
  shearStressDistribution,
  type TransverseShear,
  transverseShear,
} from './shear/index.js';
export { type ArealMass, arealMass, laminate } from './stack.js';
export type { Block } from './stack-pattern.js';
export { stiffness } from './stiffness.js';
export {
  type Criterion,
  discounts,
  envelopeOf,
  type FailureEnvelope,
  type FirstFailure,
  failure,
  failureCriteria,
  failureEnvelope,
  failureUnder,
  type LaminateFailure,
  type LoadComponent,
  loadComponents,
  type ProgressiveFailure,
  type ProgressiveStep,
  progressiveFailure,
  type SolvedLoad,
  type StrengthOptions,
  solveLoad,
  solvePlane,
  strengthConstants,
  strengthRatio,
  tsaiHillVariants,
  tsaiWuCoefficients,
  unloaded,
} from './strength/index.js';
export { makeStrengthTable } from './strength-table.js';
export type { EngineeringConstants, Laminate, Matrix3, Stiffness, Vector3 } from './types.js';
