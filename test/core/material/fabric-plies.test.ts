import fc from 'fast-check';
import { Matrix as Dense, inverse } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import {
  crimpFactorFromGeometry,
  type Fabric,
  fabricPlies,
  type Ply,
  plyFromConstituents,
  reducedStiffness,
  wovenPly,
} from '../../../packages/core/src/material/index.js';
import { blend, carbon, codesOf, eGlass, epoxy, expectClose, expectPrinted, type Matrix, turned } from './phases.js';

const common = { resin: epoxy, fibreVolumeFraction: 0.5 } as const;
const tw300: Fabric = {
  ...common,
  name: 'gl-tw300',
  fibre: eGlass,
  arealMass: 0.3,
  architecture: 'woven',
  weave: 'twill',
  crimpFactor: 0.93,
};
const bx400: Fabric = {
  ...common,
  name: 'gl-bx400',
  fibre: eGlass,
  arealMass: 0.4,
  architecture: 'multiaxial',
  layers: [
    { angle: 45, share: 0.5 },
    { angle: -45, share: 0.5 },
  ],
};
const ud300: Fabric = { ...common, name: 'ca-ud300', fibre: carbon, arealMass: 0.3, architecture: 'ud' };

const only = (fabric: Fabric): Ply => {
  const plies = fabricPlies(fabric);
  expect(plies).toHaveLength(1);
  return plies[0]!;
};
const thickness = (plies: readonly Ply[]) => plies.reduce((sum, ply) => sum + ply.thickness, 0);

// Numbers of the demonstration scenario (invented workshop), computed by scripts independent of this code.
describe('the fabrics of the scenario at fibre fraction 0.50', () => {
  it('are 0.2362, 0.3150 and 0.3371 mm thick', () => {
    expectPrinted(thickness(fabricPlies(tw300)) * 1e3, 0.2362, 5e-5);
    expectPrinted(thickness(fabricPlies(bx400)) * 1e3, 0.315, 5e-5);
    expectPrinted(thickness(fabricPlies(ud300)) * 1e3, 0.3371, 5e-5);
  });

  it.each([
    [0.45, 22.2, 2.9, 0.125],
    [0.5, 24.6, 3.2, 0.125],
    [0.55, 27.1, 3.6, 0.126],
  ])('give, at %d, a glass cloth without crimp of E %d, G %d GPa and nu %d', (fibreVolumeFraction, E, G, nu) => {
    const cloth = only({ ...tw300, crimpFactor: 1, fibreVolumeFraction });
    expectPrinted(cloth.E1 / 1e9, E, 0.05);
    expectPrinted(cloth.E2 / 1e9, E, 0.05);
    expectPrinted(cloth.G12 / 1e9, G, 0.05);
    expectPrinted(cloth.nu12, nu, 5e-4);
  });

  it.each([
    [0.45, 56.0, 0.032],
    [0.5, 61.9, 0.031],
    [0.55, 67.9, 0.029],
  ])('give, at %d, a carbon cloth without crimp of E %d GPa and nu %d', (fibreVolumeFraction, E, nu) => {
    const cloth = only({ ...tw300, fibre: carbon, crimpFactor: 1, fibreVolumeFraction });
    expectPrinted(cloth.E1 / 1e9, E, 0.05);
    expectPrinted(cloth.nu12, nu, 5e-4);
  });

  it.each([
    [0.45, 9.4, 9.9, 0.63],
    [0.5, 10.5, 10.9, 0.63],
    [0.55, 11.8, 12.0, 0.62],
  ])('give, at %d, a glass biaxial of E %d, G %d GPa and nu %d along 0', (fibreVolumeFraction, E, G, nu) => {
    const plies = fabricPlies({ ...bx400, fibreVolumeFraction });
    const S = inverse(
      new Dense(blend(...plies.map((ply) => [0.5, turned(reducedStiffness(ply), ply.angle)] as const))),
    );
    expectPrinted(1e-9 / S.get(0, 0), E, 0.05);
    expectPrinted(1e-9 / S.get(2, 2), G, 0.05);
    expectPrinted(-S.get(0, 1) / S.get(0, 0), nu, 5e-3);
  });

  const edge = (() => {
    const order = [tw300, bx400, tw300, bx400, tw300];
    const plies = [
      ...order.flatMap((fabric) => fabricPlies(fabric)),
      ...order.toReversed().flatMap((fabric) => fabricPlies(fabric, { mirrored: true })),
    ];
    let z = -thickness(plies) / 2;
    return plies.map((ply) => {
      const below = z;
      z += ply.thickness;
      return { ply, below, above: z, Q: turned(reducedStiffness(ply), ply.angle) };
    });
  })();
  const h = thickness(edge.map(({ ply }) => ply));
  const compliance = (Q: (layer: (typeof edge)[number]) => Matrix) =>
    inverse(new Dense(blend(...edge.map((layer) => [layer.ply.thickness / h, Q(layer)] as const))));

  it('stack to an edge of 2.677 mm, 4939 g/m2, G 6.8 GPa, D11 33161 and D66 10317 N.mm, flexural 18.8 GPa', () => {
    expectPrinted(h * 1e3, 2.677, 5e-4);
    const mass = edge.reduce((sum, { ply }) => sum + ply.density! * ply.thickness, 0);
    expectPrinted(mass * 1e3, 4939, 0.5);
    expectPrinted(1e-9 / compliance(({ Q }) => Q).get(2, 2), 6.8, 0.05);
    const D = blend(...edge.map(({ Q, below, above }) => [(above ** 3 - below ** 3) / 3, Q] as const));
    expectPrinted(D[0]![0]! * 1e3, 33161, 0.5);
    expectPrinted(D[1]![1]! * 1e3, 33161, 0.5);
    expectPrinted(D[2]![2]! * 1e3, 10317, 0.5);
    expectPrinted(12e-9 / h ** 3 / inverse(new Dense(D)).get(0, 0), 18.8, 0.05);
  });

  it('stack to the printed edge modulus, 18.2 GPa with nu 0.33, to 0.5 %: the print leaves Q12 of the cloth whole', () => {
    const S = compliance(({ Q }) => Q);
    expectClose(1e-9 / S.get(0, 0), 18.2, 0.005);
    expectPrinted(-S.get(0, 1) / S.get(0, 0), 0.33, 0.0051);
    const [Q11, Q12, Q22, Q66] = reducedStiffness(only({ ...tw300, crimpFactor: 1 }));
    const asPrinted = turned([0.93 * Q11, Q12, 0.93 * Q22, Q66], 0);
    const printed = compliance(({ ply, Q }) => (ply.name === tw300.name ? asPrinted : Q));
    expectPrinted(1e-9 / printed.get(0, 0), 18.2, 0.05);
    expectPrinted(-printed.get(0, 1) / printed.get(0, 0), 0.33, 5e-3);
  });
});

describe('a woven cloth', () => {
  const anyFraction = fc.double({ min: 0.3, max: 0.65, noNaN: true });
  const anyShare = fc.double({ min: 0.1, max: 0.9, noNaN: true });

  it('is in its plane a layer at 0 and one at 90 degrees with the warp share of the thickness', () => {
    fc.assert(
      fc.property(anyFraction, anyShare, (fibreVolumeFraction, warpShare) => {
        const cloth = only({ ...tw300, crimpFactor: 1, fibreVolumeFraction, warpShare });
        const Q = reducedStiffness(plyFromConstituents({ ...tw300, fibreVolumeFraction }));
        const S = inverse(new Dense(blend([warpShare, turned(Q, 0)], [1 - warpShare, turned(Q, 90)])));
        expectClose(cloth.E1, 1 / S.get(0, 0), 1e-10);
        expectClose(cloth.E2, 1 / S.get(1, 1), 1e-10);
        expectClose(cloth.G12, 1 / S.get(2, 2), 1e-10);
        expectClose(cloth.nu12, -S.get(0, 1) / S.get(0, 0), 1e-10);
      }),
    );
  });

  it('takes the crimp factor on E1 and E2, none on G12 and nu12', () => {
    fc.assert(
      fc.property(anyShare, fc.double({ min: 0.6, max: 1, noNaN: true }), (warpShare, crimpFactor) => {
        const flat = only({ ...tw300, warpShare, crimpFactor: 1 });
        const crimped = only({ ...tw300, warpShare, crimpFactor });
        expectClose(crimped.E1, crimpFactor * flat.E1);
        expectClose(crimped.E2, crimpFactor * flat.E2);
        expectClose(crimped.G12, flat.G12);
        expectClose(crimped.nu12, flat.nu12);
      }),
    );
  });

  it.each([
    ['plain', 0.9],
    ['twill', 0.93],
    ['satin', 0.97],
    [undefined, 0.9],
  ] as const)('of weave %s has crimp factor %d when none is given, and says so', (weave, factor) => {
    const { weave: _, crimpFactor: __, ...bare } = tw300;
    const assumed = only(weave === undefined ? bare : { ...bare, weave });
    expect(assumed.E1).toBe(only({ ...tw300, crimpFactor: factor }).E1);
    expect(assumed.notes.map(({ level }) => level)).toContain('assumption');
    expect(only({ ...tw300, crimpFactor: factor }).notes).toEqual([]);
  });

  describe('takes its crimp', () => {
    const { crimpFactor: _, ...free } = tw300;
    const flat = only({ ...tw300, crimpFactor: 1 });
    const geometry = { weave: 'twill', clothThickness: flat.thickness, yarnCount: 700, harness: 4 } as const;
    const { E1: k, notes } = crimpFactorFromGeometry({ ...geometry, name: 'gl-tw300', ud: plyFromConstituents(tw300) });

    it('from its yarn count before the usual factor of its weave, and says how', () => {
      const found = only({ ...free, yarnCount: 700, harness: 4 });
      expectClose(found.E1, k * flat.E1);
      expectClose(found.E2, k * flat.E2);
      expectClose(found.nu12, flat.nu12);
      expect(found.G12).toBe(flat.G12);
      expect(found.notes[0]?.text).toBe(
        // tan 7.4 = pi/2 x 0.118 mm x 7 per cm.
        `gl-tw300: crimp factors ${k.toFixed(3)} and ${k.toFixed(3)} along warp and weft, from yarns tilted by up to 7.4 and 7.4 degrees`,
      );
      expect(found.notes.slice(1)).toEqual(notes);
      expect(found.sources).toContain('selvage-2026-derivation');
      expect(flat.sources).not.toContain('selvage-2026-derivation');
    });

    it('from the factor given before its yarn count, and says so', () => {
      const found = only({ ...tw300, yarnCount: 700 });
      expect(found.E1).toBe(only(tw300).E1);
      expect(found.notes.map(({ text }) => text)).toEqual([
        'gl-tw300: crimp factor 0.93 as given; the yarn count is not used',
      ]);
    });

    it('with a repeat of four yarns assumed for twill', () => {
      const found = only({ ...free, yarnCount: 700 });
      expect(found.E1).toBe(only({ ...free, yarnCount: 700, harness: 4 }).E1);
      expect(found.notes).toHaveLength(notes.length + 2);
    });

    it('apart for warp and weft when their counts or shares differ, alike for both directions', () => {
      const counts = { yarnCount: 500, weftCount: 900, harness: 3 };
      fc.assert(
        fc.property(anyShare, anyFraction, (warpShare, fibreVolumeFraction) => {
          const found = only({ ...free, ...counts, warpShare, fibreVolumeFraction });
          const across = only({
            ...{ ...free, harness: 3, yarnCount: 900, weftCount: 500 },
            warpShare: 1 - warpShare,
            fibreVolumeFraction,
          });
          expectClose(found.E1, across.E2, 1e-10);
          expectClose(found.nu12 / found.E1, across.nu12 / across.E1, 1e-10);
        }),
      );
      const found = only({ ...free, ...counts });
      expect(found.E1).toBeLessThan(found.E2);
      const [k1, k2] = [found.E1 / flat.E1, found.E2 / flat.E2];
      expectClose(found.nu12, flat.nu12 * Math.sqrt(k1 / k2));
    });

    it('refusing a geometry that cannot be', () => {
      expect(codesOf(() => fabricPlies({ ...free, yarnCount: 0 }))).toEqual(['out-of-range']);
      expect(codesOf(() => fabricPlies({ ...free, weftCount: 500 }))).toEqual(['missing-key']);
      expect(codesOf(() => fabricPlies({ ...free, yarnCount: 700, harness: 2 }))).toEqual(['contradiction']);
      expect(codesOf(() => fabricPlies({ ...free, harness: 2 }))).toEqual(['contradiction']);
      expect(codesOf(() => fabricPlies({ ...tw300, harness: 2 }))).toEqual(['contradiction']);
      expect(codesOf(() => fabricPlies({ ...tw300, harness: 3 }))).toEqual([]);
    });
  });

  const warm = {
    ...tw300,
    crimpFactor: 1,
    fibre: { ...eGlass, alpha1: 5e-6 },
    resin: { ...epoxy, alpha: 60e-6, beta: 0.6 },
  };

  it('expands so that warp and weft layers balance', () => {
    fc.assert(
      fc.property(anyShare, (warpShare) => {
        const ud = plyFromConstituents(warm);
        const cloth = only({ ...warm, warpShare });
        for (const [free, e1, e2] of [
          [
            cloth.expansion && [cloth.expansion.alpha1, cloth.expansion.alpha2],
            ud.expansion?.alpha1,
            ud.expansion?.alpha2,
          ],
          [
            cloth.moistureExpansion && [cloth.moistureExpansion.beta1, cloth.moistureExpansion.beta2],
            ud.moistureExpansion?.beta1,
            ud.moistureExpansion?.beta2,
          ],
        ] as const) {
          const force = (row: 0 | 1): number =>
            [0, 90].reduce((sum, angle) => {
              const Q = turned(reducedStiffness(ud), angle);
              const share = angle === 0 ? warpShare : 1 - warpShare;
              const elastic = [free![0]! - (angle === 0 ? e1! : e2!), free![1]! - (angle === 0 ? e2! : e1!)];
              return sum + share * (Q[row]![0]! * elastic[0]! + Q[row]![1]! * elastic[1]!);
            }, 0);
          const scale = ud.E1 * Math.abs(e2!);
          expect(Math.abs(force(0))).toBeLessThan(1e-11 * scale);
          expect(Math.abs(force(1))).toBeLessThan(1e-11 * scale);
        }
      }),
    );
  });

  it.each([
    ['glass', eGlass, 8],
    ['carbon', { ...carbon, nu23: 0.3 }, 5],
  ])(
    'of %s has G12 within 0.3 % and nu12 within 0.005 of a cloth of wavy yarns with the same E',
    (_, fibre, degrees) => {
      // Independent: in-plane compliance of a sine-shaped yarn, turned out of the plane and averaged along its path.
      const ud = plyFromConstituents({ ...tw300, fibre });
      const { E1, E2, G12, nu12, nu23, G23 } = ud;
      const steps = 400;
      let [S11, S12, S66] = [0, 0, 0];
      for (let step = 0; step < steps; step++) {
        const slope = Math.tan((degrees * Math.PI) / 180) * Math.cos((2 * Math.PI * (step + 0.5)) / steps);
        const c2 = 1 / (1 + slope * slope);
        const s2 = 1 - c2;
        S11 += (c2 * c2 * (1 / E1) + s2 * s2 * (1 / E2) + c2 * s2 * (1 / G12 - (2 * nu12) / E1)) / steps;
        S12 += (-c2 * (nu12 / E1) - s2 * (nu23! / E2)) / steps;
        S66 += (c2 / G12 + s2 / G23!) / steps;
      }
      const yarn = reducedStiffness({ E1: 1 / S11, E2, G12: 1 / S66, nu12: -S12 / S11 });
      const wavy = inverse(new Dense(blend([0.5, turned(yarn, 0)], [0.5, turned(yarn, 90)])));
      const flat = only({ ...tw300, fibre, crimpFactor: 1 });
      const crimpFactor = 1 / wavy.get(0, 0) / flat.E1;
      expect(crimpFactor).toBeLessThan(0.95);
      const cloth = only({ ...tw300, fibre, crimpFactor });
      expectClose(cloth.G12, 1 / wavy.get(2, 2), 0.003);
      expectPrinted(cloth.nu12, -wavy.get(0, 1) / wavy.get(0, 0), 0.005);
    },
  );

  it('shears through its thickness as its two layers in series', () => {
    const cloth = only({ ...tw300, warpShare: 0.7 });
    const { G13, G23 } = plyFromConstituents(tw300);
    expectClose(1 / cloth.G13!, 0.7 / G13! + 0.3 / G23!);
    expectClose(1 / cloth.G23!, 0.7 / G23! + 0.3 / G13!);
    expect(cloth.nu23).toBeUndefined();
    expect(only({ ...tw300, model: { xiE2: 1000 } }).G13).toBeUndefined();
  });

  it('is one ply with the whole mass of the cloth', () => {
    const cloth = only(tw300);
    expect(cloth.name).toBe('gl-tw300');
    expect(cloth.fibreArealMass).toBe(0.3);
    expectClose(cloth.resinArealMass, 1150 * 0.5 * cloth.thickness);
    expect(cloth.sources).toContain('ishikawa-chou-1982');
    expect(fabricPlies(tw300, { angle: 45 })[0]?.angle).toBe(45);
  });

  it('is refused with a crimp factor outside 0.5 to 1 or no warp or no weft', () => {
    expect(codesOf(() => fabricPlies({ ...tw300, crimpFactor: 0.501 }))).toEqual([]);
    for (const crimpFactor of [0.5, 1.001]) {
      expect(codesOf(() => fabricPlies({ ...tw300, crimpFactor }))).toEqual(['out-of-range']);
    }
    for (const warpShare of [0, 1]) {
      expect(codesOf(() => fabricPlies({ ...tw300, warpShare }))).toEqual(['out-of-range']);
    }
    expect(codesOf(() => wovenPly(plyFromConstituents(tw300)))).toEqual([]);
  });
});

describe('a multiaxial fabric', () => {
  it('gives its layers in order, turned over when mirrored', () => {
    const angles = (placement: Parameters<typeof fabricPlies>[1]) =>
      fabricPlies(bx400, placement).map((ply) => ply.angle);
    expect(angles({})).toEqual([45, -45]);
    expect(angles({ mirrored: true })).toEqual([-45, 45]);
    expect(angles({ angle: 15 })).toEqual([60, -30]);
    expect(angles({ angle: 90 })).toEqual([-45, 45]);
    expect(angles({ angle: -45 })).toEqual([0, -90]);
    expect(angles({ angle: 45.5 })).toEqual([-89.5, 0.5]);
  });

  it('shares its mass among them', () => {
    const layers = [
      { angle: 45, share: 0.25 },
      { angle: -45, share: 0.25 },
      { angle: 0, share: 0.5 },
    ];
    const plies = fabricPlies({ ...bx400, layers });
    expect(plies.map((ply) => ply.fibreArealMass)).toEqual([0.1, 0.1, 0.2]);
    expectClose(thickness(plies), 0.4 / 2540 / 0.5);
    expect(plies.map((ply) => ply.name)).toEqual(['gl-bx400', 'gl-bx400', 'gl-bx400']);
  });

  it('is refused without layers, or with shares that do not sum to 1', () => {
    const { layers: _, ...bare } = bx400;
    expect(codesOf(() => fabricPlies(bare))).toEqual(['missing-key']);
    expect(codesOf(() => fabricPlies({ ...bx400, layers: [{ angle: 0, share: 1 - 2e-6 }] }))).toEqual(['out-of-range']);
    expect(codesOf(() => fabricPlies({ ...bx400, layers: [{ angle: 0, share: 1 - 5e-7 }] }))).toEqual([]);
    expect(codesOf(() => fabricPlies({ ...bx400, layers: [{ angle: Number.NaN, share: 1 }] }))).toEqual([
      'not-a-number',
    ]);
  });
});

describe('any fabric', () => {
  it('passes its strengths to each ply it gives', () => {
    const strengths = { Xt: 400e6, Xc: 300e6, Yt: 400e6, Yc: 300e6, S: 60e6 };
    expect(fabricPlies({ ...bx400, strengths }).map((ply) => ply.strengths)).toEqual([strengths, strengths]);
    expect(only(ud300).strengths).toBeUndefined();
  });

  it('is refused with a property of another architecture', () => {
    expect(codesOf(() => fabricPlies({ ...ud300, weave: 'plain' }))).toEqual(['contradiction']);
    expect(codesOf(() => fabricPlies({ ...ud300, weftFibre: eGlass }))).toEqual(['contradiction']);
    for (const key of ['yarnCount', 'harness']) {
      expect(codesOf(() => fabricPlies({ ...bx400, [key]: 4 }))).toEqual(['contradiction']);
    }
    expect(codesOf(() => fabricPlies({ ...bx400, warpShare: 0.5 }))).toEqual(['contradiction']);
    expect(codesOf(() => fabricPlies({ ...bx400, crimpFactor: 0.93 }))).toEqual(['contradiction']);
    expect(codesOf(() => fabricPlies({ ...bx400, crimpFactor: 1 }))).toEqual([]);
    expect(codesOf(() => fabricPlies({ ...tw300, layers: [] }))).toEqual(['contradiction']);
    expect(codesOf(() => fabricPlies({ ...tw300, matModel: 'invariants' }))).toEqual(['contradiction']);
  });

  it('is refused at an angle that is not a number or a fraction out of range', () => {
    expect(codesOf(() => fabricPlies(ud300, { angle: Number.NaN }))).toEqual(['not-a-number']);
    expect(codesOf(() => fabricPlies({ ...ud300, fibreVolumeFraction: 0.8 }))).toEqual(['out-of-range']);
  });

  it('of no admissible constants is refused', () => {
    expect(codesOf(() => fabricPlies({ ...ud300, fibre: { ...carbon, E2: -1 } }))).toEqual(['not-admissible']);
  });
});
