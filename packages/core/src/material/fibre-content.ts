import { demand, over, positive, within } from './check.js';

/** Fibre fractions for which a ply is computed from its constituents. */
export const fibreFractionLimits = { lowest: 0.1, highest: 0.75 } as const;

/**
 * Thickness of the fibres alone, without any resin between them: w / rho_f.
 * @param arealMass Dry reinforcement, kg/m^2, more than 0. @param fibreDensity kg/m^3, more than 0.
 * @returns m.
 * @throws out-of-range
 */
export function solidFibreThickness(arealMass: number, fibreDensity: number): number {
  demand(positive('areal mass', arealMass, 'kg/m^2'), positive('fibre density', fibreDensity, 'kg/m^3'));
  return arealMass / fibreDensity;
}

/**
 * Cured thickness of a reinforcement: t = w / (rho_f Vf).
 * @param arealMass Dry reinforcement, kg/m^2, more than 0. @param fibreDensity kg/m^3, more than 0.
 * @param Vf Fibre volume fraction, over 0 to 1.
 * @returns m.
 * @throws out-of-range
 * @source Volumes add.
 */
export function thicknessFromArealMass(arealMass: number, fibreDensity: number, Vf: number): number {
  demand(over('fibre volume fraction', Vf, 0, 1));
  return solidFibreThickness(arealMass, fibreDensity) / Vf;
}

/**
 * Fibre volume fraction from a measured or imposed thickness: Vf = w / (rho_f t).
 * @param arealMass Dry reinforcement in that thickness, kg/m^2. @param fibreDensity kg/m^3. @param thickness m.
 * @returns Over 0 to 1.
 * @throws out-of-range when the fibres alone are thicker than `thickness`.
 */
export function fibreVolumeFractionFromThickness(arealMass: number, fibreDensity: number, thickness: number): number {
  demand(positive('thickness', thickness, 'm'));
  const Vf = solidFibreThickness(arealMass, fibreDensity) / thickness;
  demand(over('fibre volume fraction', Vf, 0, 1));
  return Vf;
}

/** Densities of the phases, kg/m^3, and the volume fraction of voids, 0 when not given. */
export interface PhaseDensities {
  readonly fibre: number;
  readonly resin: number;
  readonly voidFraction?: number;
}

const demandDensities = ({ fibre, resin, voidFraction = 0 }: PhaseDensities): void =>
  demand(
    positive('fibre density', fibre, 'kg/m^3'),
    positive('resin density', resin, 'kg/m^3'),
    within('void fraction', voidFraction, 0, 0.2),
  );

/**
 * Density of a ply: rho = rho_f Vf + rho_m (1 - Vf - Vv).
 * @param Vf Fibre volume fraction, 0 to 1 - Vv. @param densities kg/m^3; voids 0 to 0.2.
 * @returns kg/m^3.
 * @throws out-of-range
 */
export function densityFromVolumeFraction(Vf: number, densities: PhaseDensities): number {
  demandDensities(densities);
  const { fibre, resin, voidFraction = 0 } = densities;
  demand(within('fibre volume fraction', Vf, 0, 1 - voidFraction));
  return fibre * Vf + resin * (1 - Vf - voidFraction);
}

/**
 * Fibre mass fraction from the volume fraction: Wf = rho_f Vf / rho with rho the ply density.
 * @param Vf Fibre volume fraction, 0 to 1 - Vv. @param densities kg/m^3; voids 0 to 0.2.
 * @returns 0 to 1.
 * @throws out-of-range
 */
export function fibreMassFraction(Vf: number, densities: PhaseDensities): number {
  return (densities.fibre * Vf) / densityFromVolumeFraction(Vf, densities);
}

/**
 * Fibre volume fraction from the mass fraction (as burn-off gives it):
 * Vf = (1 - Vv) (Wf/rho_f) / (Wf/rho_f + (1 - Wf)/rho_m).
 * @param Wf Fibre mass fraction, 0 to 1. @param densities kg/m^3; voids 0 to 0.2.
 * @returns 0 to 1 - Vv.
 * @throws out-of-range
 */
export function fibreVolumeFractionFromMassFraction(Wf: number, densities: PhaseDensities): number {
  demandDensities(densities);
  demand(within('fibre mass fraction', Wf, 0, 1));
  const { fibre, resin, voidFraction = 0 } = densities;
  return ((1 - voidFraction) * (Wf / fibre)) / (Wf / fibre + (1 - Wf) / resin);
}

/**
 * Resin in a ply per area: rho_m (1 - Vf - Vv) t.
 * @param thickness m. @param Vf Fibre volume fraction, 0 to 1 - Vv. @param densities kg/m^3; voids 0 to 0.2.
 * @returns kg/m^2.
 * @throws out-of-range
 */
export function resinArealMass(thickness: number, Vf: number, densities: PhaseDensities): number {
  demandDensities(densities);
  const { resin, voidFraction = 0 } = densities;
  demand(positive('thickness', thickness, 'm'), within('fibre volume fraction', Vf, 0, 1 - voidFraction));
  return resin * (1 - Vf - voidFraction) * thickness;
}
