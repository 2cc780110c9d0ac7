import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moistureExpansion, schapery, thermalExpansion } from '../../../packages/core/src/material/index.js';
import { carbon, codesOf, eGlass, epoxy, expectClose, expectPrinted } from './phases.js';

// CLT-26: Kaw 2006, example 3.17 (recalled, not re-read); formula Schapery 1968.
describe('expansion of glass and epoxy at fibre volume fraction 0.70 (Kaw 2006)', () => {
  const fibre = { ...eGlass, E1: 85e9, E2: 85e9, nu12: 0.2, alpha1: 5e-6 };
  const resin = { ...epoxy, E: 3.4e9, nu: 0.3, alpha: 63e-6 };

  it('is 5.978e-6 along and 27.40e-6 across', () => {
    const found = thermalExpansion(fibre, resin, 0.7);
    expectPrinted(found?.alpha1, 5.978e-6, 5e-10);
    expectPrinted(found?.alpha2, 27.4e-6, 5e-9);
    expectClose(found?.alpha1, 5.97752808989e-6, 1e-11);
    expectClose(found?.alpha2, 2.73951685393e-5, 1e-11);
  });
});

describe('free strain of a unidirectional ply', () => {
  it('is that of the phases when both are alike', () => {
    const free = 30e-6;
    const found = schapery({ E1: 70, nu12: 0.2, free1: free, free2: free }, { E: 3, nu: 0.35, free }, 0.5);
    // With unlike Poisson ratios the transverse value still comes out, since the stress along the fibre vanishes.
    expectClose(found.along, free);
    expectClose(found.across, free);
  });

  it('follows from equal strain along the fibre and no stress across it', () => {
    const unit = fc.integer({ min: -1000, max: 1000 }).map((k) => k / 1000);
    fc.assert(
      fc.property(unit, unit, unit, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (free1, free2, free, Vf) => {
        const fibre = { E1: 230, nu12: 0.2, free1, free2 };
        const resin = { E: 3.2, nu: 0.35, free };
        const { along, across } = schapery(fibre, resin, Vf);
        const fibreStress = fibre.E1 * (along - free1);
        const resinStress = resin.E * (along - free);
        expect(Math.abs(fibreStress * Vf + resinStress * (1 - Vf))).toBeLessThan(1e-11 * 230);
        const inFibre = free2 - (fibre.nu12 * fibreStress) / fibre.E1;
        const inResin = free - (resin.nu * resinStress) / resin.E;
        expect(Math.abs(across - (Vf * inFibre + (1 - Vf) * inResin))).toBeLessThan(1e-12);
      }),
    );
  });

  it('shrinks a carbon ply along the fibre and stretches it across', () => {
    const found = thermalExpansion({ ...carbon, alpha1: -0.5e-6, alpha2: 15e-6 }, { ...epoxy, alpha: 60e-6 }, 0.6);
    expect(found?.alpha1).toBeLessThan(1e-6);
    expect(found?.alpha2).toBeGreaterThan(15e-6);
  });

  it('is left out when a coefficient is missing', () => {
    expect(thermalExpansion(eGlass, { ...epoxy, alpha: 60e-6 }, 0.5)).toBeUndefined();
    expect(thermalExpansion({ ...eGlass, alpha1: 5e-6 }, epoxy, 0.5)).toBeUndefined();
    expect(thermalExpansion({ ...carbon, alpha1: -0.5e-6 }, { ...epoxy, alpha: 60e-6 }, 0.5)).toBeUndefined();
    expect(moistureExpansion(eGlass, epoxy, 0.5, 0.3)).toBeUndefined();
  });

  it('refuses a fraction outside 0 to 1', () => {
    const phase = { E: 3, nu: 0.3, free: 1 };
    expect(codesOf(() => schapery({ E1: 70, nu12: 0.2, free1: 0, free2: 0 }, phase, 1.5))).toEqual(['out-of-range']);
  });
});

describe('swelling', () => {
  it('puts all the moisture of the ply into the resin', () => {
    const beta = 0.6;
    const Vf = 0.55;
    const resin = { ...epoxy, beta };
    const density = eGlass.density * Vf + resin.density * (1 - Vf);
    const found = moistureExpansion(eGlass, resin, Vf, (resin.density * (1 - Vf)) / density);
    // beta1 = beta_m Em rho / (E1 rho_m), beta2 = (1 + nu_m) beta_m rho/rho_m - nu12 beta1: Kaw 2006, recalled.
    const E1 = eGlass.E1 * Vf + resin.E * (1 - Vf);
    const beta1 = (beta * resin.E * density) / (E1 * resin.density);
    const nu12 = eGlass.nu12 * Vf + resin.nu * (1 - Vf);
    expectClose(found?.beta1, beta1);
    expectClose(found?.beta2, ((1 + resin.nu) * beta * density) / resin.density - nu12 * beta1);
  });
});
