export { admissibility, type ElasticConstants } from './admissibility.js';
export { fibreVolumeFractionInGap, type GapFilling } from './closed-tool.js';
export { type ClothYarns, clothOfYarns } from './cloth-yarns.js';
export {
  type ComparisonInput,
  compareMicromechanics,
  type MicromechanicsComparison,
  type ModelValue,
  type PropertyComparison,
} from './compare-micromechanics.js';
export { type CoreProperties, corePly } from './core-ply.js';
export type { CrimpChoice, WovenOptions } from './crimp-choice.js';
export { type CrimpFactors, type CrimpInput, crimpFactorFromGeometry } from './crimp-factor.js';
export { surplusLength, type WeaveGeometry, weavePaths, type YarnPath, yarnsPerRepeat } from './crimp-geometry.js';
export {
  type ExpandingFibre,
  type ExpandingResin,
  type FreeStrain,
  moistureExpansion,
  schapery,
  thermalExpansion,
} from './expansion.js';
export { fabricCrimp } from './fabric-crimp.js';
export { type FabricFibre, fabricFibres, fabricFibreThickness, solidFibreRows } from './fabric-fibres.js';
export { type FabricPlacement, fabricPlies } from './fabric-plies.js';
export {
  densityFromVolumeFraction,
  fibreFractionLimits,
  fibreMassFraction,
  fibreVolumeFractionFromMassFraction,
  fibreVolumeFractionFromThickness,
  type PhaseDensities,
  resinArealMass,
  solidFibreThickness,
  thicknessFromArealMass,
} from './fibre-content.js';
export { bibliography, citation, entryOf, library } from './library.js';
export { entryNotes, entrySources, entryValues, libraryFibre, libraryResin } from './library-models.js';
export type {
  BibliographyEntry,
  LibraryEntry,
  LibraryFabric,
  LibraryPly,
  LibraryThread,
  LibraryValue,
} from './library-types.js';
export { matPly } from './mat.js';
export type { ComparedProperty, ComparedRule } from './micromechanics-models.js';
export { chamis, halpinTsai, halpinTsaiEta, inverseRule, ruleOfMixtures } from './mixing-rules.js';
export { arealMass, type PlyProperties, ply } from './ply.js';
export {
  type ClaimedConstituents,
  type ListedAgainstExpected,
  type PlyConsistency,
  plyConsistency,
} from './ply-consistency.js';
export { type Constituents, fibreFaults, plyFromConstituents } from './ply-from-constituents.js';
export { porousMatrix } from './porous-matrix.js';
export {
  constantsFromStiffness,
  type InPlaneConstants,
  type ReducedStiffness,
  reducedStiffness,
  type StiffnessInvariants,
  stiffnessInvariants,
} from './reduced-stiffness.js';
export {
  cylinderBulkModulus,
  planeStrainBulkModulus,
  type TransverseConstants,
  transverseConstants,
  transverseConstantsOf,
} from './transverse-isotropy.js';
export type {
  Architecture,
  Fabric,
  FabricLayer,
  Fibre,
  MatModel,
  MicromechanicsModel,
  Ply,
  Resin,
  Strengths,
  TransverseRule,
  VoidModel,
  Weave,
} from './types.js';
export { equalStrainLayer, equalStressLayer, tiltMeans, type YarnConstants } from './undulated-yarn.js';
export { hybridWovenPly, wovenPly } from './woven.js';
