import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  crimpFactorFromGeometry,
  type Fabric,
  fabricCrimp,
  fabricPlies,
  plyFromConstituents,
} from '../../../packages/core/src/material/index.js';
import { carbon, codesOf, eGlass, epoxy, expectClose } from './phases.js';

const cloth: Fabric = {
  name: 'cloth',
  fibre: eGlass,
  resin: epoxy,
  arealMass: 0.3,
  architecture: 'woven',
  weave: 'twill',
  fibreVolumeFraction: 0.5,
};
const only = (fabric: Fabric) => fabricPlies(fabric)[0]!;
const share = fc.double({ min: 0.1, max: 0.9, noNaN: true });

describe('the crimp of a fabric', () => {
  it('is what its ply has lost against straight yarns, of one fibre or of two', () => {
    fc.assert(
      fc.property(share, fc.constantFrom(undefined, carbon), (warpShare, weftFibre) => {
        const woven: Fabric = { ...cloth, yarnCount: 600, weftCount: 800, warpShare, ...(weftFibre && { weftFibre }) };
        const { yarnCount: _, weftCount: __, ...bare } = woven;
        const [crimped, flat] = [only(woven), only({ ...bare, crimpFactor: 1 })];
        const found = fabricCrimp(woven)!;
        expectClose(found.k1, crimped.E1 / flat.E1, 1e-12);
        expectClose(found.k2, crimped.E2 / flat.E2, 1e-12);
      }),
    );
  });

  it('says where it comes from, with the way of the yarns where the weave decides', () => {
    expect(fabricCrimp({ ...cloth, crimpFactor: 0.95 })).toMatchObject({ k1: 0.95, k2: 0.95, basis: 'given' });
    expect(fabricCrimp(cloth)).toMatchObject({ k1: 0.93, basis: 'usual' });
    const found = fabricCrimp({ ...cloth, yarnCount: 700 })!;
    const ud = plyFromConstituents(cloth);
    const own = crimpFactorFromGeometry({ weave: 'twill', clothThickness: ud.thickness, yarnCount: 700, ud });
    expect(found.basis).toBe('geometry');
    expectClose(found.geometry?.E1, own.E1);
    expectClose(found.geometry?.warp.angle, own.warp.angle);
    expectClose(found.geometry?.high?.E2, own.high!.E2);
    expect(fabricCrimp({ ...cloth, yarnCount: 700, crimpFactor: 0.9 })).not.toHaveProperty('geometry');
  });

  it('is nothing for a fabric that is not woven', () => {
    const { weave: _, ...bare } = cloth;
    expect(fabricCrimp({ ...bare, architecture: 'ud' })).toBeUndefined();
    expect(fabricCrimp({ ...bare, architecture: 'mat' })).toBeUndefined();
  });

  it('is refused as the fabric is', () => {
    expect(codesOf(() => fabricCrimp({ ...cloth, harness: 2 }))).toEqual(['contradiction']);
    expect(codesOf(() => fabricCrimp({ ...cloth, fibreVolumeFraction: 0.9 }))).toContain('out-of-range');
  });
});

describe('strengths of a multiaxial', () => {
  const strengths = { Xt: 7e8, Xc: 5e8, Yt: 4e7, Yc: 1.3e8, S: 5e7 };
  const own = { ...strengths, Xt: 13e8 };
  const { weave: _, ...bare } = cloth;
  const layers = [
    { angle: 0, share: 0.4, strengths: own },
    { angle: 45, share: 0.6 },
  ] as const;

  it('are those of the layer, else those of the fabric, else none, in the mirrored half too', () => {
    const fabric: Fabric = { ...bare, architecture: 'multiaxial', layers, strengths };
    expect(fabricPlies(fabric).map((ply) => ply.strengths)).toEqual([own, strengths]);
    expect(fabricPlies(fabric, { mirrored: true }).map((ply) => ply.strengths)).toEqual([strengths, own]);
    const { strengths: __, ...weak } = fabric;
    expect(fabricPlies(weak).map((ply) => ply.strengths)).toEqual([own, undefined]);
  });

  it('are refused when they are not positive', () => {
    const bad = [{ angle: 0, share: 1, strengths: { ...own, S: 0 } }];
    expect(codesOf(() => fabricPlies({ ...bare, architecture: 'multiaxial', layers: bad }))).toEqual(['out-of-range']);
  });
});
