/**
 * Selvage core: laminate and stitch mechanics of composite blades.
 * Text goes in, a design is assembled, pure functions compute, a report is a value, renderers print it.
 */

// From a design file to a report
export {
  assemble,
  compute,
  type Design,
  designJsonSchema,
  type LaminateModel,
  type LaminateResult,
  type LoadResult,
  type Model,
  type ReadOptions,
  type Results,
  readDesign,
  readDesignBytes,
  type StitchingModel,
  starterDesign,
  type TargetResult,
} from './design/index.js';
// Published worked examples
export {
  type CheckedExample,
  type CheckedValue,
  checkExample,
  checkExamples,
  type ExampleCounts,
  exampleCounts,
  exampleIds,
  type WorkedExample,
  workedExamples,
} from './examples/index.js';
// Laminates
export {
  allocateBatch,
  arealMass,
  type Batch,
  type BatchResult,
  type Criterion,
  type Diagnosis,
  diagnosis,
  type EngineeringConstants,
  engineeringConstants,
  evaluateBatch,
  failure,
  failureCriteria,
  failureEnvelope,
  type Laminate,
  type LaminateFailure,
  type Load,
  laminate,
  laminationParameters,
  layout,
  makeQbarTable,
  offAxisConstants,
  parseOrientationCode,
  printOrientationCode,
  progressiveFailure,
  type Response,
  respond,
  STRIDE,
  type Stiffness,
  stiffness,
  strengthConstants,
  strengthRatio,
  tsaiWuCoefficients,
} from './laminate/index.js';

// Materials: constituents to plies
export {
  bibliography,
  citation,
  corePly,
  type Fabric,
  type Fibre,
  fabricPlies,
  fibreVolumeFractionInGap,
  library,
  libraryFibre,
  libraryResin,
  type Ply,
  ply,
  plyFromConstituents,
  type Resin,
  reducedStiffness,
  type Strengths,
  stiffnessInvariants,
} from './material/index.js';
export {
  type Place,
  type Problem,
  type ProblemCode,
  renderProblem,
  renderProblems,
  SelvageError,
} from './problem/index.js';
export type { Note, SourceKey } from './provenance/index.js';
// Quantities and problems
export {
  displayNumber,
  displayUnit,
  formatQuantity,
  type KindName,
  kinds,
  parseQuantity,
  type UnitSystem,
} from './quantity/index.js';
export {
  type Block,
  examplesReport,
  libraryReport,
  type RenderFormat,
  type RenderOptions,
  type Report,
  type ReportOptions,
  render,
  report,
} from './report/index.js';

// Stitching
export {
  arealFraction,
  holeDensity,
  nearestNeighbour,
  offsetRowLength,
  type Pattern,
  penetrationDensity,
  penetrations,
  rowsMetAcross,
  rowsMetAlong,
  type StitchPlan,
  type StitchSummary,
  sewingTime,
  stitchSummary,
  stitchType,
  type Thread,
  threadConsumption,
  threadDiameter,
} from './stitch/index.js';
