import { demand, positive } from './check.js';

/** How many yarns a cloth has and what they weigh; SI units. */
export interface ClothYarns {
  /** Warp yarns per width, 1/m, and the linear density of one, kg/m. */
  readonly yarnCount: number;
  readonly yarnLinearDensity: number;
  /** Weft yarns per length, and the linear density of one; those of the warp when not given. */
  readonly weftCount?: number;
  readonly weftLinearDensity?: number;
}

/**
 * Areal mass of a cloth from its yarns, and the share of it in the warp: w = n1 T1 + n2 T2, share = n1 T1 / w.
 * The yarns count as straight: their surplus length by crimp, up to about a percent, is left out, and so is their size.
 * @param yarns Counts in 1/m, linear densities in kg/m, all more than 0.
 * @returns kg/m^2; the share between 0 and 1.
 * @throws out-of-range for a count or linear density that is not positive; not-a-number.
 * @source Masses add.
 */
export function clothOfYarns(yarns: ClothYarns): { readonly arealMass: number; readonly warpShare: number } {
  const { yarnCount, yarnLinearDensity, weftCount = yarnCount, weftLinearDensity = yarnLinearDensity } = yarns;
  demand(
    positive('yarnCount', yarnCount, '1/m'),
    positive('yarnLinearDensity', yarnLinearDensity, 'kg/m'),
    positive('weftCount', weftCount, '1/m'),
    positive('weftLinearDensity', weftLinearDensity, 'kg/m'),
  );
  const warp = yarnCount * yarnLinearDensity;
  const arealMass = warp + weftCount * weftLinearDensity;
  return { arealMass, warpShare: warp / arealMass };
}
