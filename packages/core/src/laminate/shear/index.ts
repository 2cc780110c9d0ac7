export { type CylindricalBending, cylindricalBending, type StripLoad } from './cylindrical-bending.js';
export { demandShearStiffness, type Matrix2 } from './matrix2.js';
export { type PlyShear, plyShear, shearStiffnessOf } from './ply-shear.js';
export type { MomentGradient } from './shear-flow.js';
export {
  type ShearForces,
  type ShearStressDistribution,
  type ShearStressPeak,
  type ShearStressPoint,
  shearStressDistribution,
} from './shear-stress.js';
export { stripStiffness } from './strip-stiffness.js';
export { type TransverseShear, transverseShear } from './transverse-shear.js';
