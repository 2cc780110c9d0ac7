import {
  densityFromVolumeFraction,
  fibreMassFraction,
  fibreVolumeFractionFromMassFraction,
  type PhaseDensities,
  resinArealMass,
  thicknessFromArealMass,
} from '../material/index.js';
import { type Given, si } from './inputs.js';
import type { ComputedValues } from './types.js';

export interface Densities {
  readonly fibreDensity: Given;
  readonly resinDensity: Given;
}

/** kg/m^3 */
export const densitiesOf = ({ fibreDensity, resinDensity }: Densities): PhaseDensities => ({
  fibre: si(fibreDensity, 'density'),
  resin: si(resinDensity, 'density'),
});

/** Fibre fraction, thickness and density from the mass of fibre per area and the resin's share of the mass. */
export function plyThickness(inputs: Densities & { fibreArealMass: Given; resinMassFraction: number }): ComputedValues {
  const densities = densitiesOf(inputs);
  const Vf = fibreVolumeFractionFromMassFraction(1 - inputs.resinMassFraction, densities);
  return {
    Vf,
    thickness: thicknessFromArealMass(si(inputs.fibreArealMass, 'arealMass'), densities.fibre, Vf),
    density: densityFromVolumeFraction(Vf, densities),
  };
}

/** Fibre volume fraction of a laminate of known density, which is linear in it. */
export function fractionFromDensity(inputs: Densities & { density: Given }): number {
  const densities = densitiesOf(inputs);
  const ofResin = densityFromVolumeFraction(0, densities);
  const ofFibre = densityFromVolumeFraction(1, densities);
  return (si(inputs.density, 'density') - ofResin) / (ofFibre - ofResin);
}

/** Fibre mass fraction of a laminate of known density. */
export const massFractionFromDensity = (inputs: Densities & { density: Given }): ComputedValues => ({
  Wf: fibreMassFraction(fractionFromDensity(inputs), densitiesOf(inputs)),
});

/**
 * The two coefficients of t = w / denominator (rho_f / psi - offset) in mm, kg/m^2 and g/cm^3, read off two thicknesses
 * of the library: at the mass fraction psi of the example, and for fibre alone.
 */
export function glassThicknessFormula(
  inputs: Densities & { psi: number; arealMasses: readonly Given[] },
): ComputedValues {
  const densities = densitiesOf(inputs);
  const w = si(inputs.arealMasses[0] ?? Number.NaN, 'arealMass');
  const millimetres = (psi: number): number =>
    1e3 * thicknessFromArealMass(w, densities.fibre, fibreVolumeFractionFromMassFraction(psi, densities));
  const fibre = densities.fibre / 1e3; // g/cm^3
  const alone = millimetres(1);
  const denominator = (w * fibre * (1 / inputs.psi - 1)) / (millimetres(inputs.psi) - alone);
  return { denominator, offset: fibre - (alone * denominator) / w };
}

/** Thickness, mass, density and fibre mass fraction of a reinforcement cured at a fibre volume fraction. */
export function curedPly(inputs: Densities & { Vf: number; arealMass?: Given }): ComputedValues {
  const densities = densitiesOf(inputs);
  const { Vf } = inputs;
  const perVolume = {
    density: densityFromVolumeFraction(Vf, densities),
    Wf: fibreMassFraction(Vf, densities),
  };
  if (inputs.arealMass === undefined) return perVolume;
  const fibre = si(inputs.arealMass, 'arealMass');
  const thickness = thicknessFromArealMass(fibre, densities.fibre, Vf);
  return { ...perVolume, thickness, arealMass: fibre + resinArealMass(thickness, Vf, densities) };
}
