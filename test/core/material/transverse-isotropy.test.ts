import fc from 'fast-check';
import { Matrix as Dense, inverse, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import {
  cylinderBulkModulus,
  planeStrainBulkModulus,
  plyFromConstituents,
  transverseConstants,
  transverseConstantsOf,
} from '../../../packages/core/src/material/index.js';
import { carbon, eGlass, epoxy, expectClose } from './phases.js';

const known = { E1: 40, E2: 10, nu12: 0.28, nu23: 0.4 };

/** The 3-D stiffness of a material alike in 2 and 3, normal terms only, from its compliance. */
function stiffness3({ E1, E2, nu12, nu23 }: typeof known): Dense {
  return inverse(
    new Dense([
      [1 / E1, -nu12 / E1, -nu12 / E1],
      [-nu12 / E1, 1 / E2, -nu23 / E2],
      [-nu12 / E1, -nu23 / E2, 1 / E2],
    ]),
  );
}

describe('plane-strain bulk modulus', () => {
  it('is (C22 + C23)/2 of the three-dimensional stiffness', () => {
    const C = stiffness3(known);
    expectClose(planeStrainBulkModulus(known), (C.get(1, 1) + C.get(1, 2)) / 2, 1e-11);
  });

  it('of a fibre in a resin cylinder is what the two-phase cylinder under radial strain answers', () => {
    const unit = fc.double({ min: 0.1, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 1, max: 60, noNaN: true }), unit, unit, (Kf, Gm, Vf) => {
        const Km = 4;
        // u = A r in the fibre, B r + C/r in the resin; radius 1 outside, displacement 1 there.
        const a = Math.sqrt(Vf);
        const unknowns = solve(
          new Dense([
            [a, -a, -1 / a],
            [2 * Kf, -2 * Km, (2 * Gm) / (a * a)],
            [0, 1, 1],
          ]),
          Dense.columnVector([0, 0, 1]),
        );
        const outerStress = 2 * Km * unknowns.get(1, 0) - 2 * Gm * unknowns.get(2, 0);
        expectClose(cylinderBulkModulus(Kf, Km, Gm, Vf), outerStress / 2, 1e-9);
      }),
    );
  });
});

describe('constants across the fibre', () => {
  it('are those the bulk modulus was made from', () => {
    const found = transverseConstants(known, planeStrainBulkModulus(known));
    expectClose(found.nu23, known.nu23);
    expectClose(found.G23, known.E2 / (2 * (1 + known.nu23)));
  });

  it('of a ply without fibre are those of the resin', () => {
    const found = transverseConstantsOf(eGlass, epoxy, 0, { E1: epoxy.E, E2: epoxy.E, nu12: epoxy.nu });
    expectClose(found?.nu23, epoxy.nu);
    expectClose(found?.G23, epoxy.E / 2.7);
  });

  it('of a ply at 0.5 rest on the phases as isotropic cylinders, K = E / (2 (1 + nu)(1 - 2 nu)) and G = E / (2 (1 + nu))', () => {
    const ply = { E1: 38.1e9, E2: 10.73e9, nu12: 0.285 };
    const K = cylinderBulkModulus(73e9 / (2 * 1.22 * 0.56), 3.2e9 / (2 * 1.35 * 0.3), 3.2e9 / 2.7, 0.5);
    expectClose(transverseConstantsOf(eGlass, epoxy, 0.5, ply)?.nu23, transverseConstants(ply, K).nu23);
  });

  it('rest on an assumed nu23 of 0.3 for an anisotropic fibre without one', () => {
    const assumed = transverseConstantsOf(carbon, epoxy, 0.5, known);
    expect(assumed).toEqual(transverseConstantsOf({ ...carbon, nu23: 0.3 }, epoxy, 0.5, known));
    expect(assumed?.nu23).not.toBe(transverseConstantsOf({ ...carbon, nu23: 0.303 }, epoxy, 0.5, known)?.nu23);
  });

  it('are left out when the assumed nu23 does not go with the rest of the fibre', () => {
    // 2 (1 - nu23)/E2 = 1.4/E2 < 4 nu12^2/E1: no bulk modulus.
    const odd = { ...carbon, E1: 230e9, E2: 229e9, nu12: 0.7 };
    expect(transverseConstantsOf(odd, epoxy, 0.5, known)).toBeUndefined();
  });

  it.each([0.3, 0.5, 0.65])(
    'with the assumed nu23 keep G23 of carbon at %d within 8 % of what 0.07 to 0.4 give',
    (Vf) => {
      const G23 = (nu23?: number) =>
        plyFromConstituents({
          fibre: nu23 === undefined ? carbon : { ...carbon, nu23 },
          resin: epoxy,
          arealMass: 0.3,
          fibreVolumeFraction: Vf,
        }).G23!;
      for (const nu23 of [0.07, 0.4]) expect(Math.abs(G23(nu23) / G23() - 1)).toBeLessThan(0.08);
    },
  );

  it('make every glass ply positive definite in three dimensions', () => {
    const Vf = fc.double({ min: 0.1, max: 0.75, noNaN: true });
    fc.assert(
      fc.property(Vf, fc.constantFrom('halpin-tsai', 'inverse', 'chamis'), (fibreVolumeFraction, E2) => {
        const ply = plyFromConstituents({
          fibre: eGlass,
          resin: epoxy,
          arealMass: 0.3,
          fibreVolumeFraction,
          model: { E2 },
        });
        const C = stiffness3({ E1: ply.E1, E2: ply.E2, nu12: ply.nu12, nu23: ply.nu23 ?? Number.NaN });
        expect(C.get(0, 0)).toBeGreaterThan(0);
        expect(C.get(1, 1) - C.get(1, 2)).toBeGreaterThan(0);
        expect(C.get(0, 0) * (C.get(1, 1) + C.get(1, 2)) - 2 * C.get(0, 1) ** 2).toBeGreaterThan(0);
      }),
    );
  });
});
