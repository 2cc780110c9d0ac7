import { assemble, compute, readDesign, sandwichChecks, shearStressDistribution, transverseShear } from '@selvage/core';
import { describe, expect, it } from 'vitest';
import { faultIn } from './faults.js';

const file = `format: 1
title: T
materials:
  ud: { kind: ply, E1: 126 GPa, E2: 11 GPa, G12: 6.6 GPa, nu12: 0.28, G13: 6 GPa, G23: 3.9 GPa, thickness: 0.2 mm }
  cloth: { kind: ply, E1: 58 GPa, E2: 58 GPa, G12: 3.6 GPa, nu12: 0.05, thickness: 0.22 mm, expansion: { alpha1: 3e-6 1/K, alpha2: 3e-6 1/K } }
  foam: { kind: core, E: 85 MPa, E3: 90 MPa, G: 28 MPa, S: 1.1 MPa, nu: 0.35, density: 80 kg/m^3, thickness: 16 mm, alpha: 40e-6 1/K }
laminates:
  strip: { material: ud, stack: "[0]" }
  solid: { material: ud, stack: "[45/0/-45/90]s" }
  lid: { stack: "[0cloth_2/0foam~]s" }
loads:
  strip-shear: { laminate: strip, shear: [3 N/mm, 0 N/mm] }
  bent: { laminate: lid, M: [300 N, 120 N, 0 N], shear: [4 kN/m, 2.5 kN/m] }
  pushed: { laminate: lid, N: [-20 kN/m, 0 N/m, 0 N/m] }
`;
const withText = (from: string | RegExp, to: string): string => {
  const changed = file.replace(from, to);
  expect(changed).not.toBe(file);
  return changed;
};
const results = (text: string = file) => compute(assemble(readDesign(text)));
const data = (text?: string) => results(text).data as unknown as Document;
interface Document {
  readonly laminates: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  readonly loads: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
}
const laminateOf = (name: string, text?: string) =>
  results(text).model.laminates.find((one) => one.name === name)!.laminate;

const fault = (text: string) => faultIn(() => results(text));

describe('what the checks through the thickness read from a design file', () => {
  it('shear moduli and the Poisson ratio across the fibre of a ply, as given', () => {
    expect(laminateOf('strip').plies[0]).toMatchObject({ G13: 6e9, G23: 3.9e9 });
    expect(laminateOf('strip', withText('G23: 3.9 GPa', 'nu23: 0.41')).plies[0]).toMatchObject({ nu23: 0.41 });
    expect(laminateOf('strip', withText(', G13: 6 GPa, G23: 3.9 GPa', '')).plies[0]).not.toHaveProperty('G13');
  });

  it('nu23 of a ply of the library, unless G23 is given', () => {
    const ud = (rest: string) =>
      withText(/ud: .*\n/, `ud: { kind: ply, from: ud-carbon-epoxy-126, thickness: 0.2 mm${rest} }\n`);
    expect(laminateOf('strip', ud('')).plies[0]).toMatchObject({ nu23: 0.4 });
    expect(laminateOf('strip', ud(', nu23: 0.3')).plies[0]).toMatchObject({ nu23: 0.3 });
    expect(laminateOf('strip', ud(', G23: 3 GPa')).plies[0]).not.toHaveProperty('nu23');
  });

  it('modulus and shear strength of a core through its thickness, the strength from the library too', () => {
    expect(laminateOf('lid').plies[2]).toMatchObject({ E3: 90e6, shearStrength: 1.1e6 });
    const listed = (rest: string) =>
      withText(/foam: .*\n/, `foam: { kind: core, from: pvc-130, thickness: 16 mm${rest} }\n`);
    expect(laminateOf('lid', listed('')).plies[2]).toMatchObject({ shearStrength: 2e6 });
    const own = results(listed(', S: 1.8 MPa'));
    expect(own.model.laminates[2]!.laminate.plies[2]).toMatchObject({ shearStrength: 1.8e6 });
    expect(own.model.provenance.find(({ name }) => name === 'foam')?.overridden).toContain('S');
  });

  it.each([
    ['G13: 6 GPa', 'G13: 0 GPa', 'out-of-range', '0 GPa'],
    ['G23: 3.9 GPa', 'G23: -1 GPa', 'out-of-range', '-1 GPa'],
    ['G23: 3.9 GPa', 'nu23: 1.2', 'not-admissible', '1.2'],
    ['E3: 90 MPa', 'E3: 0 MPa', 'out-of-range', '0 MPa'],
    ['S: 1.1 MPa', 'S: 1.1 mm', 'unit-mismatch', 'mm'],
    ['S: 1.1 MPa', 'S: 0 MPa', 'out-of-range', '0 MPa'],
    ['S: 1.1 MPa', 'S13: 1 MPa', 'unknown-key', 'S13'],
    ['[3 N/mm, 0 N/mm]', '[3, 0 N/mm]', 'unit-missing', '3'],
    ['[3 N/mm, 0 N/mm]', '[3 N/mm, 1 MPa]', 'unit-mismatch', 'MPa'],
    ['[3 N/mm, 0 N/mm]', '3 N/mm', 'wrong-type', '3 N/mm'],
    ['[3 N/mm, 0 N/mm]', '[3 N/mm, 0 N/mm, 0 N/mm]', 'out-of-range', '[3 N/mm, 0 N/mm, 0 N/mm]'],
  ])('%s as %s is refused: %s at %s', (from, to, code, at) => {
    expect(fault(withText(from, to))).toEqual([code, at]);
  });

  it('a shear force beyond the range of numbers is refused in its place', () => {
    expect(fault(withText('[3 N/mm, 0 N/mm]', '[1e306 N/m, 0 N/mm]'))).toEqual([
      'not-computable',
      '[1e306 N/m, 0 N/mm]',
    ]);
  });
});

describe('the JSON document through the thickness', () => {
  const { laminates, loads } = data();

  it('has the shear stiffness of every laminate as the library computes it', () => {
    for (const name of ['strip', 'solid', 'lid']) {
      const { H, kx, ky, sums } = transverseShear(laminateOf(name));
      expect(laminates[name]!.transverseShear).toEqual({ H, kx, ky, sums });
    }
    // One homogeneous ply: 5/6 of G13 t and G23 t.
    const t = 0.2e-3;
    const { H, kx } = transverseShear(laminateOf('strip'));
    expect(H[0][0] / ((5 / 6) * 6e9 * t)).toBeCloseTo(1, 12);
    expect(H[1][1] / ((5 / 6) * 3.9e9 * t)).toBeCloseTo(1, 12);
    expect(kx).toBeCloseTo(5 / 6, 12);
  });

  it('has what a sandwich bears as the library computes it, and nothing of it for a solid laminate', () => {
    const checks = sandwichChecks(laminateOf('lid'));
    if (!checks.isSandwich) throw new Error(checks.reason);
    const face = (side: 'tool' | 'bag', axis: 'x' | 'y') => ({
      faceModulus: checks[side][axis].faceModulus,
      wrinklingStress: checks[side][axis].stress,
      wrinklingStressInTheory: checks[side][axis].inTheory,
      wrinklingStressDeepCore: checks[side][axis].deepCore,
      wrinklingDepth: checks[side][axis].depth,
    });
    const along = (axis: 'x' | 'y') => ({
      ...checks[axis].criteria,
      bendingStiffness: checks[axis].allen.D,
      bendingStiffnessDifference: checks[axis].difference,
      shearStiffness: checks[axis].allen.S,
      H: checks[axis].H,
    });
    expect(laminates.lid!.sandwich).toEqual({
      isSandwich: true,
      coreThickness: 16e-3,
      coreModulus: 90e6,
      coreShearModulusXz: 28e6,
      coreShearModulusYz: 28e6,
      coreShearStrength: 1.1e6,
      faceDistance: checks.d,
      tool: { thickness: checks.tool.thickness, x: face('tool', 'x'), y: face('tool', 'y') },
      bag: { thickness: checks.bag.thickness, x: face('bag', 'x'), y: face('bag', 'y') },
      x: along('x'),
      y: along('y'),
    });
    expect(laminates.solid).not.toHaveProperty('sandwich');
    expect(laminates.lid!.sources).toEqual(expect.arrayContaining(['whitney-1973', 'hoff-mautner-1945', 'allen-1969']));
  });

  it('says why a laminate with a core is no sandwich', () => {
    const open = data(withText('[0cloth_2/0foam~]s', '[0cloth_2/0foam]'));
    expect(open.laminates.lid!.sandwich).toEqual({
      isSandwich: false,
      reason: 'the core has no face on the bag side',
    });
    expect(open.loads.bent).not.toHaveProperty('sandwich');
    expect(open.loads.bent).toHaveProperty('interlaminarShear');
  });

  it('has the shear stress between the layers: 1.5 V/t in one ply, and V as its sum', () => {
    const { peakXz, peakYz, points } = loads['strip-shear']!.interlaminarShear as {
      peakXz: { stress: number; z: number; ply: number };
      peakYz: { stress: number };
      points: { z: number; tauXz: number }[];
    };
    expect(peakXz.stress / ((1.5 * 3000) / 0.2e-3)).toBeCloseTo(1, 12);
    expect(Math.abs(peakXz.z)).toBeLessThan(1e-12);
    expect(peakXz.ply).toBe(1);
    expect(peakYz.stress).toBe(0);
    // Simpson's rule over pairs of intervals is exact for a parabola.
    let sum = 0;
    for (let i = 0; i + 2 < points.length; i += 2) {
      const [a, b, c] = [points[i]!, points[i + 1]!, points[i + 2]!];
      sum += ((c.z - a.z) / 6) * (a.tauXz + 4 * b.tauXz + c.tauXz);
    }
    expect(sum / 3000).toBeCloseTo(1, 12);
    expect(loads.pushed).not.toHaveProperty('interlaminarShear');
  });

  it('has the shear stress of a laminate as the library computes it', () => {
    const { peakXz, peakYz } = shearStressDistribution(laminateOf('lid'), { Vx: 4000, Vy: 2500 });
    expect(loads.bent!.interlaminarShear).toMatchObject({ peakXz, peakYz });
    expect(loads.bent!.shear).toEqual([4000, 2500]);
  });

  it('has wrinkling and core shear under a load as the library computes them', () => {
    const checks = sandwichChecks(laminateOf('lid'), { load: { M: [300, 120, 0] }, shear: { Vx: 4000, Vy: 2500 } });
    if (!checks.isSandwich) throw new Error(checks.reason);
    const face = (side: 'tool' | 'bag', axis: 'x' | 'y') => {
      const { faceStress, stress, ratio } = checks[side][axis];
      return { faceStress, wrinklingStress: stress, ratio: ratio ?? null };
    };
    expect(loads.bent!.sandwich).toEqual({
      tool: { x: face('tool', 'x'), y: face('tool', 'y') },
      bag: { x: face('bag', 'x'), y: face('bag', 'y') },
      coreShear: checks.coreShear,
    });
    // A moment compresses the tool side and stretches the bag side.
    expect(checks.tool.x.ratio).toBeGreaterThan(1);
    expect(checks.bag.x.ratio).toBeUndefined();
    expect(loads.pushed!.sandwich).not.toHaveProperty('coreShear');
    expect(loads['strip-shear']).not.toHaveProperty('sandwich');
  });

  it('has a core shear near V/d: each assumption of thin faces and a weak core costs 1 over its criterion', () => {
    const { x } = laminates.lid!.sandwich as { x: { thinFaces: number; weakCore: number } };
    const { coreShear } = loads.bent!.sandwich as { coreShear: { stress: number; nominal: number; ratio: number } };
    expect(coreShear.nominal / (Math.hypot(4000, 2500) / 16.44e-3)).toBeCloseTo(1, 12);
    expect(Math.abs(coreShear.stress / coreShear.nominal - 1)).toBeLessThan(1 / x.thinFaces + 1 / x.weakCore);
    expect(coreShear.ratio).toBeCloseTo(1.1e6 / coreShear.stress, 12);
  });

  it('has null for a ratio that there is none of, and the reason in its notes', () => {
    const bare = data(withText('S: 1.1 MPa, ', ''));
    expect((bare.loads.bent!.sandwich as { coreShear: unknown }).coreShear).toMatchObject({ ratio: null });
    expect(JSON.stringify(bare.loads.bent!.notes)).toContain('The core has no shear strength');
    expect((bare.laminates.lid!.sandwich as { coreShearStrength: unknown }).coreShearStrength).toBeNull();
  });

  it('says that a face stress of temperature does not grow with the load, where temperature acts', () => {
    const cold = data(withText('N: [-20 kN/m', 'temperatureChange: -60 K, N: [-20 kN/m'));
    expect(JSON.stringify(cold.loads.pushed!.notes)).toContain('does not grow with the load');
    expect(JSON.stringify(loads.pushed!.notes)).not.toContain('does not grow with the load');
  });
});

describe('targets through the thickness', () => {
  const met = (quantity: string, limit: string) => {
    const [target] = results(`${file}targets: [{ quantity: ${quantity}, ${limit} }]\n`).targets;
    return target!;
  };

  it('are on the ratio of the core to its shear stress', () => {
    const target = met('loads.bent.sandwich.coreShear.ratio', 'atLeast: 2');
    expect(target).toMatchObject({ kind: 'number', met: true });
    expect(met('loads.bent.sandwich.coreShear.ratio', 'atLeast: 5').met).toBe(false);
    expect(target.value).toBeCloseTo(3.81, 1);
  });

  it.each([
    ['laminates.lid.transverseShear.H.0.0', '400 N/mm', 400e3],
    ['laminates.lid.transverseShear.kx', '0.1', 0.1],
    ['laminates.lid.transverseShear.sums.1', '1 kN/m', 1000],
    ['laminates.lid.sandwich.faceDistance', '1/2 in', 0.0127],
    ['laminates.lid.sandwich.coreThickness', '1 mm', 1e-3],
    ['laminates.lid.sandwich.coreModulus', '80 MPa', 80e6],
    ['laminates.lid.sandwich.coreShearModulusXz', '20 MPa', 20e6],
    ['laminates.lid.sandwich.coreShearStrength', '0.1 ksi', 689475.7293],
    ['laminates.lid.sandwich.tool.x.wrinklingStress', '30 ksi', 206842718.8],
    ['laminates.lid.sandwich.bag.y.wrinklingStressInTheory', '200 MPa', 200e6],
    ['laminates.lid.sandwich.bag.y.wrinklingDepth', '2 mm', 2e-3],
    ['laminates.lid.sandwich.x.thinFaces', '100', 100],
    ['laminates.lid.sandwich.x.weakCore', '100', 100],
    ['laminates.lid.sandwich.x.bendingStiffness', '1 N*m', 1],
    ['laminates.lid.sandwich.x.shearStiffness', '100 kN/m', 100e3],
    ['laminates.lid.sandwich.x.H', '100 kN/m', 100e3],
    ['loads.bent.shear.0', '1 lbf/in', 175.12683524],
    ['loads.bent.interlaminarShear.peakXz.stress', '0.1 MPa', 1e5],
    ['loads.bent.interlaminarShear.peakXz.z', '-1 mm', -1e-3],
    ['loads.bent.sandwich.bag.x.faceStress', '1 MPa', 1e6],
    ['loads.bent.sandwich.tool.x.ratio', '2', 2],
    ['loads.bent.sandwich.coreShear.stress', '10 psi', 68947.57293],
    ['loads.bent.sandwich.coreShear.nominal', '10 psi', 68947.57293],
  ])('read the unit of %s', (quantity, limit, si) => {
    const target = met(quantity, `atLeast: ${limit}`);
    expect(target.atLeast! / si).toBeCloseTo(1, 9);
    expect(target.met).toBe(true);
  });

  it('are refused in another unit, and on a ratio that there is none of', () => {
    const target = (quantity: string, limit: string): [string, string] =>
      fault(`${file}targets:\n  - { quantity: ${quantity}, atLeast: ${limit} }\n`);
    expect(target('laminates.lid.sandwich.tool.x.wrinklingStress', '2 mm')).toEqual(['unit-mismatch', 'mm']);
    expect(target('loads.bent.sandwich.bag.x.ratio', '2')).toEqual(['unknown-name', 'loads.bent.sandwich.bag.x.ratio']);
  });
});
