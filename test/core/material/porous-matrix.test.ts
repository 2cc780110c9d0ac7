import fc from 'fast-check';
import { Matrix as Dense, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { fabricPlies, plyFromConstituents, porousMatrix } from '../../../packages/core/src/material/index.js';
import { codesOf, eGlass, epoxy, expectClose } from './phases.js';

const anyResin = fc.record({
  E: fc.double({ min: 1, max: 5, noNaN: true }),
  nu: fc.double({ min: 0.05, max: 0.45, noNaN: true }),
});
const anyPorosity = fc.double({ min: 0.001, max: 0.5, noNaN: true });
const bulk = ({ E, nu }: { E: number; nu: number }) => E / (3 * (1 - 2 * nu));
const shear = ({ E, nu }: { E: number; nu: number }) => E / (2 * (1 + nu));

describe('a resin with spherical pores', () => {
  it('has the bulk modulus of a hollow sphere under radial displacement', () => {
    fc.assert(
      fc.property(anyResin, anyPorosity, (resin, porosity) => {
        // u = B r + C/r^2, no stress at the pore, displacement 1 at radius 1.
        const [K, G] = [bulk(resin), shear(resin)];
        const unknowns = solve(
          new Dense([
            [3 * K, (-4 * G) / porosity],
            [1, 1],
          ]),
          Dense.columnVector([0, 1]),
        );
        const stress = 3 * K * unknowns.get(0, 0) - 4 * G * unknowns.get(1, 0);
        expectClose(bulk(porousMatrix(resin, porosity)), stress / 3, 1e-9);
      }),
    );
  });

  it('has the shear modulus of the mean field with the strain of a sphere in it (Eshelby 1957, recalled)', () => {
    fc.assert(
      fc.property(anyResin, anyPorosity, (resin, porosity) => {
        // A pore strains 1/(1 - S) times its surroundings; S = 2 (4 - 5 nu)/(15 (1 - nu)) in shear.
        const S = (2 * (4 - 5 * resin.nu)) / (15 * (1 - resin.nu));
        const concentration = 1 / (1 - S);
        const expected = (shear(resin) * (1 - porosity)) / (1 - porosity + porosity * concentration);
        expectClose(shear(porousMatrix(resin, porosity)), expected, 1e-11);
      }),
    );
  });

  it('loses, for few pores, the share 3 (1 - nu)(9 + 5 nu) / (2 (7 - 5 nu)) of its modulus per porosity, about 2', () => {
    // Mackenzie 1950 (recalled, not re-read).
    for (const nu of [0.2, 0.35, 0.4]) {
      const lost = (1 - porousMatrix({ E: 1, nu }, 1e-6).E) / 1e-6;
      expectClose(lost, (3 * (1 - nu) * (9 + 5 * nu)) / (2 * (7 - 5 * nu)), 1e-5);
      expectClose(lost, 2, 0.011);
    }
  });

  it('keeps a Poisson ratio of 0.2 at every porosity (Garboczi & Day 1995, read in a later summary)', () => {
    for (const porosity of [0.01, 0.1, 0.5, 0.9]) expectClose(porousMatrix({ E: 3, nu: 0.2 }, porosity).nu, 0.2, 1e-12);
  });

  it('is the resin itself without pores, and refuses what is no porosity and no resin', () => {
    expectClose(porousMatrix(epoxy, 0).E, epoxy.E);
    expectClose(porousMatrix(epoxy, 0).nu, epoxy.nu);
    for (const porosity of [-0.001, 0.901])
      expect(codesOf(() => porousMatrix(epoxy, porosity))).toEqual(['out-of-range']);
    expect(codesOf(() => porousMatrix({ E: 0, nu: 0.3 }, 0))).toEqual(['out-of-range']);
    for (const nu of [0.5, -1]) expect(codesOf(() => porousMatrix({ E: 1, nu }, 0))).toEqual(['not-admissible']);
    for (const nu of [0.499, -0.999]) expect(codesOf(() => porousMatrix({ E: 1, nu }, 0))).toEqual([]);
  });
});

describe('voids in a ply', () => {
  const ply = {
    name: 'ud',
    fibre: eGlass,
    resin: { ...epoxy, alpha: 60e-6 },
    arealMass: 0.3,
    fibreVolumeFraction: 0.5,
  };
  const porous = { ...ply, voidFraction: 0.03, voidModel: 'porous-matrix' } as const;

  it('soften the resin between the fibres, of which they are 0.03 in 0.5, when the model says so', () => {
    const found = plyFromConstituents(porous);
    const expected = plyFromConstituents({ ...ply, resin: { ...ply.resin, ...porousMatrix(epoxy, 0.06) } });
    for (const key of ['E1', 'E2', 'G12', 'nu12', 'nu23', 'G23'] as const) expectClose(found[key], expected[key]!);
    expect(found.sources).toContain('mori-tanaka-1973');
  });

  it('cost the moduli across the fibre and in shear about a tenth, that along it half a percent', () => {
    const [before, after] = [plyFromConstituents(ply), plyFromConstituents(porous)];
    expectClose(after.E2 / before.E2, 0.9, 0.02);
    expectClose(after.G12 / before.G12, 0.89, 0.02);
    expectClose(after.E1 / before.E1, 0.995, 0.001);
  });

  it('weigh the same in both models', () => {
    const massOnly = plyFromConstituents({ ...porous, voidModel: 'mass-only' });
    const found = plyFromConstituents(porous);
    for (const key of ['thickness', 'density', 'resinArealMass', 'voidFraction'] as const) {
      expect(found[key]).toBe(massOnly[key]);
    }
    expect(massOnly.E2).toBe(plyFromConstituents(ply).E2);
    expect(massOnly.sources).not.toContain('mori-tanaka-1973');
  });

  it('are remarked on above a hundredth, and what was assumed of them is said', () => {
    const notes = (voidFraction: number, voidModel?: 'mass-only' | 'porous-matrix') =>
      plyFromConstituents({ ...ply, voidFraction, ...(voidModel && { voidModel }) }).notes;
    expect(notes(0, 'porous-matrix')).toEqual([]);
    expect(notes(0.01).map(({ level }) => level)).toEqual(['assumption']);
    expect(notes(0.01005).map(({ level }) => level)).toEqual(['assumption', 'warning']);
    expect(notes(0.03)[0]?.text).toBe('ud: voids lower the mass only, the stiffness is that without voids');
    expect(notes(0.03)[1]?.text).toBe(
      'ud: void fraction 0.03 is above 0.01; its moduli across the fibre and in shear and its strengths are lower than given (common practice, no source)',
    );
    expect(notes(0.03, 'porous-matrix').map(({ text }) => text)).toEqual([
      'ud: voids are spheres that soften the resin evenly; strength does not follow them',
      'ud: void fraction 0.03 is above 0.01 (common practice, no source)',
    ]);
  });

  it('reach the plies of a fabric', () => {
    const fabric = { ...porous, architecture: 'ud' } as const;
    expect(fabricPlies(fabric)[0]?.E2).toBe(plyFromConstituents(porous).E2);
  });
});
