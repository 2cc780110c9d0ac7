import fc from 'fast-check';
import { Matrix as Dense, inverse } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { type Fabric, fabricPlies, matPly, ply, reducedStiffness } from '../../../packages/core/src/material/index.js';
import { blend, eGlass, epoxy, expectClose, turned } from './phases.js';

const ud = {
  E1: 40e9,
  E2: 10e9,
  G12: 3.5e9,
  nu12: 0.28,
  thickness: 1e-3,
  expansion: { alpha1: 7e-6, alpha2: 28e-6 },
  moistureExpansion: { beta1: 0.05, beta2: 0.6 },
  G13: 3.5e9,
  G23: 3.1e9,
  nu23: 0.4,
};
const angles = Array.from({ length: 36 }, (_, index) => index * 5);

describe('a random mat', () => {
  it('has the stiffness of the unidirectional ply averaged over all angles by quadrature', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10e9, max: 200e9, noNaN: true }),
        fc.double({ min: 1e9, max: 8e9, noNaN: true }),
        (E1, G12) => {
          const base = ply({ ...ud, E1, G12 });
          const mat = matPly(base);
          const Q = reducedStiffness(base);
          const S = inverse(new Dense(blend(...angles.map((angle) => [1 / angles.length, turned(Q, angle)] as const))));
          expectClose(mat.E1, 1 / S.get(0, 0), 1e-11);
          expectClose(mat.E2, 1 / S.get(1, 1), 1e-11);
          expectClose(mat.G12, 1 / S.get(2, 2), 1e-11);
          expectClose(mat.nu12, -S.get(0, 1) / S.get(0, 0), 1e-10);
          expectClose(mat.G12, mat.E1 / (2 * (1 + mat.nu12)), 1e-11);
        },
      ),
    );
  });

  it('expands as that average in equilibrium, alike in all directions', () => {
    const base = ply(ud);
    const Q = reducedStiffness(base);
    const mean = blend(...angles.map((angle) => [1 / angles.length, turned(Q, angle)] as const));
    const expected = (e1: number, e2: number): number => {
      // Force along x of a ply held at zero strain, averaged over the angles.
      const force = angles.reduce((sum, angle) => {
        const c = Math.cos((angle * Math.PI) / 180);
        const s = Math.sin((angle * Math.PI) / 180);
        const free = [c * c * e1 + s * s * e2, s * s * e1 + c * c * e2, 2 * c * s * (e1 - e2)];
        const row = turned(Q, angle)[0]!;
        return sum + (row[0]! * free[0]! + row[1]! * free[1]! + row[2]! * free[2]!) / angles.length;
      }, 0);
      return force / (mean[0]![0]! + mean[0]![1]!);
    };
    const mat = matPly(base);
    expectClose(mat.expansion?.alpha1, expected(7e-6, 28e-6), 1e-11);
    expectClose(mat.expansion?.alpha2, expected(7e-6, 28e-6), 1e-11);
    expectClose(mat.moistureExpansion?.beta1, expected(0.05, 0.6), 1e-11);
    expectClose(mat.moistureExpansion?.beta2, expected(0.05, 0.6), 1e-11);
  });

  it('has the transverse shear modulus averaged over all directions', () => {
    const { G13, G23, nu23 } = matPly(ply(ud));
    expectClose(G13, 3.3e9);
    expectClose(G23, 3.3e9);
    expect(nu23).toBeUndefined();
  });

  it('by the 3/8-5/8 form has E 21.25 and G 7.5 GPa for 40 and 10 GPa, by hand', () => {
    const mat = matPly(ply(ud), 'tsai-pagano');
    expectClose(mat.E1, 21.25e9);
    expectClose(mat.E2, 21.25e9);
    expectClose(mat.G12, 7.5e9);
    expectClose(mat.nu12, 21.25 / 15 - 1);
    expect(mat.sources).toEqual(['tsai-pagano-1968']);
  });

  it('has the same constants by both forms when the ply is isotropic with Poisson ratio 1/3', () => {
    const even = { thickness: 1e-3, E1: 9e9, E2: 9e9, G12: 9e9 / (8 / 3), nu12: 1 / 3 };
    const exact = matPly(ply(even));
    const near = matPly(ply(even), 'tsai-pagano');
    for (const key of ['E1', 'E2', 'G12', 'nu12'] as const) {
      expectClose(exact[key], even[key]);
      expectClose(near[key], even[key]);
    }
  });

  it('by the 3/8-5/8 form has a Poisson ratio of 1/3 to 1/2 whatever the ply', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1, noNaN: true }), (ratio) => {
        const { nu12 } = matPly(ply({ ...ud, nu12: 0.2, nu23: 0.3, E2: ratio * ud.E1 }), 'tsai-pagano');
        expect(nu12).toBeGreaterThanOrEqual(1 / 3 - 1e-12);
        expect(nu12).toBeLessThan(1 / 2);
      }),
    );
  });

  it('takes the form that the fabric names', () => {
    const [chosen] = fabricPlies({ ...csm, matModel: 'tsai-pagano' });
    const [base] = fabricPlies({
      name: csm.name,
      fibre: eGlass,
      resin: epoxy,
      arealMass: 0.45,
      architecture: 'ud',
      fibreVolumeFraction: 0.18,
    });
    expectClose(chosen?.E1, (3 * (base?.E1 ?? Number.NaN) + 5 * (base?.E2 ?? Number.NaN)) / 8);
    expect(fabricPlies(csm)[0]?.E1).not.toBe(chosen?.E1);
  });

  const csm: Fabric = {
    name: 'csm',
    fibre: eGlass,
    resin: epoxy,
    arealMass: 0.45,
    architecture: 'mat',
    fibreVolumeFraction: 0.18,
  };

  it('does not warn at the low fibre fraction that mats have, and warns at one they hardly reach', () => {
    const levels = (fibreVolumeFraction: number) =>
      fabricPlies({ ...csm, fibreVolumeFraction }).flatMap(({ notes }) => notes.map(({ level }) => level));
    expect(levels(0.18)).toEqual(['assumption']);
    expect(levels(0.4)).toEqual(['assumption']);
    expect(levels(0.401)).toEqual(['assumption', 'warning']);
  });

  it('is one ply with the whole mass of the mat', () => {
    const plies = fabricPlies(csm, { angle: 30 });
    expect(plies).toHaveLength(1);
    expect(plies[0]?.fibreArealMass).toBe(0.45);
    expectClose(plies[0]?.thickness, 0.45 / 2540 / 0.18);
  });
});

describe('the areal mass of a mat', () => {
  const mat = (arealMass: number) =>
    fabricPlies({
      name: 'mat',
      fibre: eGlass,
      resin: epoxy,
      architecture: 'mat',
      arealMass,
      fibreVolumeFraction: 0.18,
    })[0];
  it('is named where it is lighter than mats are made, under 80 g/m^2', () => {
    const said = (arealMass: number) =>
      mat(arealMass)
        ?.notes.map(({ text }) => text)
        .join();
    expect(said(0.0797)).toContain('79.7 g/m^2 is light');
    expect(said(0.0801)).not.toContain('is light');
  });

  it('of 1 oz/yd^2 is taken for the ounce per square foot that it may be', () => {
    expect(
      mat(0.0339)
        ?.notes.map((note) => note.text)
        .join(),
    ).toContain('oz/ft^2');
    expect(
      mat(0.305)
        ?.notes.map((note) => note.text)
        .join(),
    ).not.toContain('oz/ft^2');
  });
});
