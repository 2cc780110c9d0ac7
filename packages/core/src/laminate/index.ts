export { diagnosis } from './diagnosis.js';
export { diagnosisStatements } from './diagnosis-statements.js';
export type { Diagnosis, DiagnosisMeasures } from './diagnosis-types.js';
export { edgeDelamination } from './edge/index.js';
export { engineeringConstants, type LaminateConstants, offAxisConstants } from './engineering-constants.js';
export { isCloth, isIsotropic } from './fibre-directions.js';
export { type FreeExpansion, moistureExpansionOf, thermalExpansionOf } from './free-expansion.js';
export { evaluateBatch } from './kernel.js';
export { allocateBatch, type Batch, type BatchResult, layout, STRIDE } from './kernel-layout.js';
export { type LaminationParameters, laminationParameters } from './lamination-parameters.js';
export type { Components, Load } from './load.js';
export { parseOrientationCode, type StackItem } from './orientation-code-parse.js';
export { type PrintItem, printOrientationCode } from './orientation-code-print.js';
export { ellipseBlister, plateBuckling, plateDeflection, plateVibration, stripBlister } from './plate/index.js';
export { makeQbarTable, tabulateQbar } from './qbar.js';
export { type PlyPoint, type PlyResponse, type Response, respond } from './respond.js';
export {
  allenDeflection,
  criterionLimit,
  deepCoreWrinklingStress,
  sandwichChecks,
  wrinklingCoefficientInDesign,
  wrinklingCoefficientInTheory,
  wrinklingDepth,
  wrinklingStress,
} from './sandwich/index.js';
export {
  cylindricalBending,
  plyShear,
  shearStiffnessOf,
  shearStressDistribution,
  transverseShear,
} from './shear/index.js';
export { type ArealMass, arealMass, laminate } from './stack.js';
export type { Block } from './stack-pattern.js';
export { stiffness } from './stiffness.js';
export {
  type Criterion,
  failure,
  failureCriteria,
  failureEnvelope,
  type LaminateFailure,
  progressiveFailure,
  strengthConstants,
  strengthRatio,
  tsaiWuCoefficients,
} from './strength/index.js';
export type { EngineeringConstants, Laminate, Matrix3, Stiffness, Vector3 } from './types.js';
