export { type CuredShape, curedShape } from './cured-shape.js';
export { diagnosis } from './diagnosis.js';
export { diagnosisStatements } from './diagnosis-statements.js';
export type { Diagnosis, DiagnosisMeasures } from './diagnosis-types.js';
export {
  type EdgeDelamination,
  type EdgeInterface,
  type EdgeOpening,
  type EdgeOptions,
  type EdgePeel,
  edgeDelamination,
  type FlatEdgeRelease,
  flatEdgeRelease,
  type OnsetStrain,
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
  type StrengthTable,
} from './kernel-layout.js';
export { type LaminationParameters, laminationParameters } from './lamination-parameters.js';
export { type Components, type Load, sixComponents } from './load.js';
export { parseOrientationCode, type StackItem } from './orientation-code-parse.js';
export { type PrintItem, printOrientationCode } from './orientation-code-print.js';
export {
  type BucklingLoad,
  type EllipseBlister,
  type EllipseBlisterResult,
  ellipseBlister,
  type MembraneLoad,
  type Plate,
  type PlateBuckling,
  type PlateDeflection,
  type PlateMode,
  type PlatePressure,
  type PlateVibration,
  plateBuckling,
  plateDeflection,
  plateVibration,
  type StripBlister,
  type StripBlisterResult,
  stripBlister,
  type VibrationOptions,
} from './plate/index.js';
export { makeQbarTable, tabulateQbar } from './qbar.js';
export { type PlyResponse, type Response, respond } from './respond.js';
export {
  type AllenCriteria,
  type AllenStiffness,
  allenDeflection,
  type CoreShear,
  deepCoreWrinklingStress,
  type FaceStress,
  handBookTolerance,
  type NoSandwich,
  type Sandwich,
  type SandwichCore,
  type SandwichDirection,
  type SandwichFace,
  type SandwichOptions,
  type SandwichSpan,
  sandwichChecks,
  thinFaceWeakCoreLimit,
  type Wrinkling,
  type WrinklingModuli,
  wrinklingCoefficientInDesign,
  wrinklingCoefficientInTheory,
  wrinklingDepth,
  wrinklingStress,
} from './sandwich/index.js';
export type { ShapeKind } from './shape-kind.js';
export {
  type CylindricalBending,
  cylindricalBending,
  type Matrix2,
  type MomentGradient,
  type PlyShear,
  plyShear,
  type ShearForces,
  type ShearStressDistribution,
  type ShearStressPeak,
  type ShearStressPoint,
  type StripLoad,
  shearStiffnessOf,
  shearStressDistribution,
  stripStiffness,
  type TransverseShear,
  transverseShear,
} from './shear/index.js';
export { type ArealMass, arealMass, laminate } from './stack.js';
export type { Block, StackPattern } from './stack-pattern.js';
export { stiffness } from './stiffness.js';
export {
  type Criterion,
  type CurvePoint,
  type Damage,
  type Discount,
  discounts,
  type EnvelopeOptions,
  type EnvelopePoint,
  envelopeOf,
  type Face,
  type FailureEnvelope,
  type FailureMode,
  type FirstFailure,
  faceStress,
  failure,
  failureCriteria,
  failureEnvelope,
  failureUnder,
  type LaminateFailure,
  type LoadComponent,
  loadComponents,
  type ModeKey,
  type PlyFailure,
  type PointFailure,
  type ProgressiveFailure,
  type ProgressiveOptions,
  type ProgressiveStep,
  type PuckInclination,
  progressiveFailure,
  type SolvedLoad,
  type StepPly,
  type StrengthConstants,
  type StrengthOptions,
  type StrengthPly,
  type StrengthRatio,
  showStressOfLoad,
  solveLoad,
  solvePlane,
  strengthConstants,
  strengthRatio,
  type TsaiHillVariant,
  type TsaiWuCoefficients,
  tsaiHillVariants,
  tsaiWuCoefficients,
  unloaded,
} from './strength/index.js';
export { makeStrengthTable, type StrengthMaterial } from './strength-table.js';
export type { EngineeringConstants, Laminate, Matrix3, PlyPoint, Stiffness, Vector3 } from './types.js';
