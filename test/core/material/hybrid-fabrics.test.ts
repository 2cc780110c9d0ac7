import fc from 'fast-check';
import { Matrix as Dense, inverse } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import {
  arealMass,
  crimpFactorFromGeometry,
  type Fabric,
  fabricFibres,
  fabricFibreThickness,
  fabricPlies,
  hybridWovenPly,
  type Ply,
  ply,
  plyFromConstituents,
  reducedStiffness,
} from '../../../packages/core/src/material/index.js';
import { blend, carbon, codesOf, eGlass, epoxy, expectClose, turned } from './phases.js';

const warm = {
  carbon: { ...carbon, nu23: 0.2, alpha1: -0.5e-6, alpha2: 15e-6 },
  glass: { ...eGlass, alpha1: 5e-6 },
  epoxy: { ...epoxy, alpha: 60e-6, beta: 0.6 },
};
/** Carbon along the warp, glass along the weft. */
const cloth: Fabric = {
  name: 'mixed',
  fibre: warm.carbon,
  weftFibre: warm.glass,
  resin: warm.epoxy,
  arealMass: 0.3,
  architecture: 'woven',
  weave: 'twill',
  warpShare: 0.4,
  crimpFactor: 1,
  fibreVolumeFraction: 0.5,
};
const only = (fabric: Fabric): Ply => {
  const plies = fabricPlies(fabric);
  expect(plies).toHaveLength(1);
  return plies[0]!;
};
const anyShare = fc.double({ min: 0.1, max: 0.9, noNaN: true });
const anyFraction = fc.double({ min: 0.3, max: 0.65, noNaN: true });
const layer = (fibre: typeof eGlass, mass: number) => plyFromConstituents({ ...cloth, fibre, arealMass: mass });

describe('a cloth with warp and weft of different fibres', () => {
  it('is as thick as the fibre volumes together fill at the one fibre fraction, and weighs its fibres and resin', () => {
    fc.assert(
      fc.property(anyShare, anyFraction, (warpShare, fibreVolumeFraction) => {
        const found = only({ ...cloth, warpShare, fibreVolumeFraction });
        const volume = (0.3 * warpShare) / 1780 + (0.3 * (1 - warpShare)) / 2540;
        expectClose(found.thickness, volume / fibreVolumeFraction);
        const resin = 1150 * (found.thickness - volume);
        expectClose(found.resinArealMass, resin, 1e-11);
        expectClose(found.fibreArealMass, 0.3);
        expectClose(arealMass(found), 0.3 + resin, 1e-11);
        expect(found.fibreVolumeFraction).toBe(fibreVolumeFraction);
      }),
    );
  });

  it('is in its plane a carbon layer at 0 and a glass layer at 90 degrees by their thicknesses', () => {
    fc.assert(
      fc.property(anyShare, (warpShare) => {
        const found = only({ ...cloth, warpShare });
        const [warp, weft] = [layer(warm.carbon, 0.3 * warpShare), layer(warm.glass, 0.3 * (1 - warpShare))];
        const share = warp.thickness / (warp.thickness + weft.thickness);
        const Q = blend([share, turned(reducedStiffness(warp), 0)], [1 - share, turned(reducedStiffness(weft), 90)]);
        const S = inverse(new Dense(Q));
        expectClose(found.E1, 1 / S.get(0, 0), 1e-10);
        expectClose(found.E2, 1 / S.get(1, 1), 1e-10);
        expectClose(found.G12, 1 / S.get(2, 2), 1e-10);
        expectClose(found.nu12, -S.get(0, 1) / S.get(0, 0), 1e-10);
        expectClose(1 / found.G13!, share / warp.G13! + (1 - share) / weft.G23!, 1e-10);
        expectClose(1 / found.G23!, share / warp.G23! + (1 - share) / weft.G13!, 1e-10);
      }),
    );
  });

  it('turned by 90 degrees is the cloth with its fibres exchanged', () => {
    fc.assert(
      fc.property(anyShare, anyFraction, (warpShare, fibreVolumeFraction) => {
        const geometry = { warpShare, fibreVolumeFraction, yarnCount: 500, weftCount: 700 };
        const { crimpFactor: _, ...free } = cloth;
        const found = only({ ...free, ...geometry });
        const across = only({
          ...free,
          fibre: warm.glass,
          weftFibre: warm.carbon,
          fibreVolumeFraction,
          warpShare: 1 - warpShare,
          yarnCount: 700,
          weftCount: 500,
        });
        expectClose(found.E1, across.E2, 1e-10);
        expectClose(found.E2, across.E1, 1e-10);
        expectClose(found.nu12 / found.E1, across.nu12 / across.E1, 1e-10);
        expectClose(found.G13, across.G23!, 1e-10);
        expectClose(found.expansion?.alpha1, across.expansion!.alpha2, 1e-9);
        expectClose(found.moistureExpansion?.beta2, across.moistureExpansion!.beta1, 1e-9);
      }),
    );
  });

  it('with the same fibre in both is the cloth of that fibre', () => {
    fc.assert(
      fc.property(anyShare, (warpShare) => {
        const mixed = only({ ...cloth, weftFibre: warm.carbon, warpShare });
        const { weftFibre: _, ...single } = cloth;
        const plain = only({ ...single, warpShare });
        for (const key of ['thickness', 'density', 'E1', 'E2', 'G12', 'nu12', 'G13', 'G23'] as const) {
          expectClose(mixed[key], plain[key]!, 1e-11);
        }
        expectClose(mixed.expansion?.alpha1, plain.expansion!.alpha1, 1e-8);
        expectClose(mixed.moistureExpansion?.beta1, plain.moistureExpansion!.beta1, 1e-10);
        expect(mixed.notes).toEqual(plain.notes);
        expect(mixed.sources).toEqual(plain.sources);
      }),
    );
  });

  it('expands and swells so that its layers balance, with the same moisture in all resin', () => {
    fc.assert(
      fc.property(anyShare, (warpShare) => {
        const found = only({ ...cloth, warpShare });
        const layers = [
          { at: 0, ply: layer(warm.carbon, 0.3 * warpShare) },
          { at: 90, ply: layer(warm.glass, 0.3 * (1 - warpShare)) },
        ] as const;
        const resinShare = (of: Ply) => of.resinArealMass! / arealMass(of)!;
        const residual = (cloth: readonly number[], free: (of: Ply) => readonly number[]) =>
          [0, 1].map((row) =>
            layers.reduce((force, { at, ply }) => {
              const Q = turned(reducedStiffness(ply), at);
              const [along, across] = free(ply);
              const own = at === 0 ? [along!, across!] : [across!, along!];
              return (
                force + ply.thickness * (Q[row]![0]! * (cloth[0]! - own[0]!) + Q[row]![1]! * (cloth[1]! - own[1]!))
              );
            }, 0),
          );
        const heat = residual([found.expansion!.alpha1, found.expansion!.alpha2], ({ expansion: e }) => [
          e!.alpha1,
          e!.alpha2,
        ]);
        // Per moisture m in the resin a ply holds m times its resin share.
        const swelling = (of: Ply) =>
          [of.moistureExpansion!.beta1, of.moistureExpansion!.beta2].map((beta) => beta * resinShare(of));
        const moisture = residual(swelling(found), swelling);
        const scale = found.thickness * found.E1;
        for (const force of heat) expect(Math.abs(force)).toBeLessThan(1e-10 * scale * 1e-5);
        for (const force of moisture) expect(Math.abs(force)).toBeLessThan(1e-10 * scale);
      }),
    );
  });

  it('crimps each of its yarns by the thickness of the other', () => {
    const { crimpFactor: _, ...free } = cloth;
    const found = only({ ...free, yarnCount: 500, harness: 4 });
    const [warp, weft] = [layer(warm.carbon, 0.12), layer(warm.glass, 0.18)];
    const clothThickness = warp.thickness + weft.thickness;
    const k = crimpFactorFromGeometry({
      clothThickness,
      warpShare: warp.thickness / clothThickness,
      yarnCount: 500,
      harness: 4,
      ud: warp,
      weftUd: weft,
    });
    const flat = only(cloth);
    expectClose(k.warp.rise, weft.thickness, 1e-11);
    expectClose(found.E1 / flat.E1, k.E1, 1e-11);
    expectClose(found.E2 / flat.E2, k.E2, 1e-11);
  });

  it('says once what holds for both fibres, and names the sources of both', () => {
    const aramid = { ...carbon, name: 'aramid', E1: 83e9, E2: 5e9, G12: 2e9, density: 1440, sources: ['nrc-1992'] };
    const found = only({ ...cloth, weftFibre: aramid, fibreVolumeFraction: 0.7 });
    expect(found.sources).toContain('nrc-1992');
    expect(found.sources).toContain('scenario');
    const texts = found.notes.map(({ text }) => text);
    expect(new Set(texts).size).toBe(texts.length);
    expect(texts.filter((text) => text.includes('nu23 of aramid'))).toHaveLength(1);
    expect(found.expansion).toBeUndefined();
  });

  it('has half its mass in the warp when no share is given', () => {
    const { warpShare: _, ...halved } = cloth;
    expect(only(halved)).toEqual(only({ ...cloth, warpShare: 0.5 }));
  });

  it('passes voids on', () => {
    const porous = { ...cloth, voidFraction: 0.02, voidModel: 'porous-matrix' } as const;
    expect(only(porous).voidFraction).toBe(0.02);
    expect(only(porous).G12).toBeLessThan(only({ ...porous, voidModel: 'mass-only' }).G12);
  });

  it('has no mass where its layers have none', () => {
    const bare = ply({
      E1: 100e9,
      E2: 8e9,
      G12: 4e9,
      nu12: 0.3,
      thickness: 1e-4,
      moistureExpansion: { beta1: 0, beta2: 0.6 },
    });
    const found = hybridWovenPly(bare, bare, { crimpFactor: 1 });
    expectClose(found.thickness, 2e-4);
    expect([found.density, found.fibreArealMass, found.resinArealMass]).toEqual([undefined, undefined, undefined]);
    expect(found.G13).toBeUndefined();
  });

  it('is refused with no warp, no weft or a crimp factor out of range', () => {
    for (const warpShare of [0, 1]) {
      expect(codesOf(() => fabricPlies({ ...cloth, warpShare }))).toEqual(['out-of-range']);
    }
    for (const warpShare of [0.001, 0.999]) expect(codesOf(() => fabricPlies({ ...cloth, warpShare }))).toEqual([]);
    expect(codesOf(() => fabricPlies({ ...cloth, crimpFactor: 0.5 }))).toEqual(['out-of-range']);
    expect(codesOf(() => fabricPlies({ ...cloth, architecture: 'ud' }))).toContain('contradiction');
  });
});

describe('a multiaxial with layers of different fibres', () => {
  const fabric: Fabric = {
    ...{ name: 'mixed-bx', fibre: eGlass, resin: epoxy, arealMass: 0.6, fibreVolumeFraction: 0.5 },
    architecture: 'multiaxial',
    layers: [
      { angle: 45, share: 0.25 },
      { angle: 0, share: 0.5, fibre: carbon },
      { angle: -45, share: 0.25 },
    ],
  };

  it('gives each layer its own thickness and constants', () => {
    const plies = fabricPlies(fabric);
    expect(plies.map(({ angle }) => angle)).toEqual([45, 0, -45]);
    const own = [
      { fibre: eGlass, mass: 0.15 },
      { fibre: carbon, mass: 0.3 },
      { fibre: eGlass, mass: 0.15 },
    ];
    own.forEach(({ fibre, mass }, i) => {
      expectClose(plies[i]?.thickness, mass / fibre.density / 0.5);
      expectClose(plies[i]?.E1, (fibre.E1 + 3.2e9) / 2);
      expectClose(plies[i]?.fibreArealMass, mass);
    });
    expect(fabricPlies(fabric, { mirrored: true }).map(({ E1 }) => E1)).toEqual(plies.map(({ E1 }) => E1).reverse());
  });
});

describe('the fibres of a fabric', () => {
  const glassBiax: Fabric = {
    ...{ name: 'bx', fibre: eGlass, resin: epoxy, arealMass: 0.6, fibreVolumeFraction: 0.5 },
    architecture: 'multiaxial',
    layers: [
      { angle: 45, share: 0.25 },
      { angle: 0, share: 0.5, fibre: carbon },
      { angle: -45, share: 0.25 },
    ],
  };

  it('are named once each, with mass and solid thickness', () => {
    const [first, second, ...rest] = fabricFibres(glassBiax);
    expect([first?.name, second?.name, rest]).toEqual(['E-glass', 'carbon', []]);
    expectClose(first?.arealMass, 0.3);
    expectClose(second?.arealMass, 0.3);
    expectClose(first?.solidThickness, 0.3 / 2540);
    expectClose(second?.solidThickness, 0.3 / 1780);
    const [warp, weft] = fabricFibres(cloth);
    expectClose(warp?.arealMass, 0.12);
    expectClose(weft?.arealMass, 0.18);
    const { weftFibre: _, ...single } = cloth;
    expect(fabricFibres(single).map(({ name, arealMass: mass }) => [name, mass])).toEqual([['carbon', 0.3]]);
    const { warpShare: __, ...halved } = cloth;
    expect(fabricFibres(halved).map(({ arealMass: mass }) => mass)).toEqual([0.15, 0.15]);
  });

  it('fill, over the fibre fraction, the thickness of the plies', () => {
    for (const fabric of [glassBiax, cloth]) {
      const thickness = fabricPlies(fabric).reduce((sum, { thickness: t }) => sum + t, 0);
      expectClose(fabricFibreThickness(fabric) / 0.5, thickness);
    }
  });

  it('have no mass that is not more than 0', () => {
    expect(codesOf(() => fabricFibres({ ...cloth, arealMass: 0 }))).toEqual(['out-of-range']);
    expect(codesOf(() => fabricFibreThickness({ ...cloth, weftFibre: { ...eGlass, density: 0 } }))).toEqual([
      'out-of-range',
    ]);
  });
});
