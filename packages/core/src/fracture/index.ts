export { armOf, type LaminateArm } from './arm-of.js';
export { showCoupon } from './coupon/coupon-steps.js';
export type { CouponTests } from './coupon/known.js';
export { type PredictOptions, predictCoupon } from './coupon/predict-coupon.js';
export type {
  Coupon,
  CouponChange,
  CouponPrediction,
  CouponSpecimen,
  CouponStitching,
  CouponTest,
  DensityPoint,
  Estimated,
} from './coupon/types.js';
export { type BentArm, type BentArmInput, type BentArmPoint, bentArm } from './elastica.js';
export type { PeelSpecimen } from './peel-specimen.js';
export { simulatePeel } from './simulate-peel.js';
export { simulateDcb } from './specimen/dcb.js';
export { simulateEnf } from './specimen/enf.js';
export { type RowsAcross, rowsAcross } from './specimen/rows-across.js';
export type { DcbSpecimen, EnfSpecimen, Specimen, WedgeEdge } from './specimen/types.js';
export { simulateWedge, type WedgeResult, type WedgeRow } from './specimen/wedge.js';
export type {
  Arm,
  ArmOptions,
  BridgingRow,
  ResistancePoint,
  SpecimenEvent,
  SpecimenResult,
  SpecimenState,
  Verdict,
} from './types.js';
