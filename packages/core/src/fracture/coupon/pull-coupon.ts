import type { Working } from '../../working/index.js';
import { simulatePeel } from '../simulate-peel.js';
import { simulateDcb } from '../specimen/dcb.js';
import { simulateEnf } from '../specimen/enf.js';
import type { BridgingRow, SpecimenResult } from '../types.js';
import type { CouponSpecimen } from './types.js';

/** A coupon that is pulled or bent by a machine. */
export type PulledSpecimen = Exclude<CouponSpecimen, { readonly kind: 'wedge' }>;

/** Simulates a coupon with its rows. @throws as the simulation of its kind */
export function pullCoupon(specimen: PulledSpecimen, rows: readonly BridgingRow[], working?: Working): SpecimenResult {
  switch (specimen.kind) {
    case 'dcb':
      return simulateDcb({ ...specimen, rows }, working);
    case 'enf':
      return simulateEnf({ ...specimen, rows }, working);
    case 'peel':
      return simulatePeel({ ...specimen, rows }, working);
  }
}
