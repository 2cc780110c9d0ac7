import table from '@selvage/reference-data/examples/tables/sandwich-strip.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { type Laminate, laminate, respond, stiffness } from '../../../../packages/core/src/laminate/index.js';
import {
  allenDeflection,
  deepCoreWrinklingStress,
  type Sandwich,
  type SandwichOptions,
  sandwichChecks,
  thinFaceWeakCoreLimit,
  wrinklingDepth,
} from '../../../../packages/core/src/laminate/sandwich/index.js';
import { shearStressDistribution, transverseShear } from '../../../../packages/core/src/laminate/shear/index.js';
import { corePly, type Ply } from '../../../../packages/core/src/material/index.js';
import { expectNear, graphite, plyOf, problemCode, stackOf, turned } from '../plies.js';

const strengths = { Xt: 2.2e6, Xc: 1.3e6, Yt: 2.2e6, Yc: 1.3e6, S: 1.1e6 };
const foam = (thickness: number): Ply => corePly({ E: 85e6, G: 28e6, nu: 0.35, thickness, density: 80, strengths });
const cloth = (thickness: number, angle = 0): Ply =>
  plyOf({ E1: 60e9, E2: 58e9, G12: 4e9, nu12: 0.05, G13: 3.5e9, G23: 3.5e9 }, angle, thickness);
const plain = laminate([cloth(0.5e-3), foam(10e-3), cloth(0.5e-3)]);

function checked(stack: Parameters<typeof sandwichChecks>[0], options?: SandwichOptions): Sandwich {
  const found = sandwichChecks(stack, options);
  if (!found.isSandwich) throw new Error(found.reason);
  return found;
}

describe('hand-book sandwich theory beside the independent script and exact elasticity', () => {
  it.each(table.rows)('Ef $Ef, Ec $Ec, tf $tf at a span of $span', (row) => {
    // Plane strain as moduli without Poisson effect.
    const layer = (E: number, nu: number, G: number, t: number): Ply => {
      const plane = E / (1 - nu * nu);
      return plyOf({ E1: plane, E2: plane, G12: G, nu12: 0, G13: G, G23: G }, 0, t);
    };
    const face = layer(row.Ef, table.nuFace, row.Gf, row.tf);
    const stack = laminate([face, { ...layer(row.Ec, table.nuCore, row.Gc, row.tc), core: true }, face]);
    const span = row.span * stack.thickness;
    for (const { allen } of [checked(stack).x, checked(stack).y]) {
      const { thinFaces, thickFaces } = allenDeflection(allen, { span, pressure: 1 });
      expectNear([thinFaces, thickFaces], [row.thinFaces, row.thickFaces], table.tolerance);
      expectNear([span ** 4 / (Math.PI ** 4 * allen.D)], [row.bending], table.tolerance);
      // Allen's thick-face beam is within 1.2 % of exact elasticity over the table.
      expect(Math.abs(thickFaces / row.exact - 1)).toBeLessThan(0.012);
    }
  });

  it('gives Gc d²/c, with which the shear stiffness by equal energy agrees within 1.3 % for thin faces', () => {
    const { x, d } = checked(plain);
    expectNear([d, x.allen.S], [10.5e-3, (28e6 * 10.5e-3 ** 2) / 10e-3], 1e-12);
    // The band of reference table transverse-shear.json: ratios 0.988 to 1.0074.
    expect(Math.abs(x.H / x.allen.S - 1)).toBeLessThan(0.013);
    expectNear([x.H], [transverseShear(plain).H[0][0]], 1e-12);
  });

  it('has the limit H = Gc d²/c exactly as faces get thin and stiff and the core gets weak in its plane', () => {
    const stiff = (thickness: number) =>
      plyOf({ E1: 1e12, E2: 1e12, G12: 4e11, nu12: 0, G13: 4e11, G23: 4e11 }, 0, thickness);
    const soft = { ...foam(10e-3), E1: 1e2, E2: 1e2, G12: 50, nu12: 0 };
    const { x } = checked(laminate([stiff(1e-6), soft, stiff(1e-6)]));
    expectNear([x.H], [x.allen.S], 1e-4);
  });

  it('has D for unequal faces about their common neutral plane, as the stiffness of the laminate free to stretch', () => {
    const stack = laminate([cloth(0.5e-3), foam(10e-3), cloth(1.5e-3)]);
    const { x, d } = checked(stack);
    const [k1, k2] = [60e9 * 0.5e-3, 60e9 * 1.5e-3];
    expectNear([d, x.allen.apart], [11e-3, (k1 * k2 * 11e-3 ** 2) / (k1 + k2)], 1e-12);
    expectNear([x.allen.local, x.allen.core], [(60e9 * (0.125e-9 + 3.375e-9)) / 12, (85e6 * 1e-6) / 12], 1e-12);
    expectNear([x.allen.D], [x.allen.apart + x.allen.local + x.allen.core], 1e-12);
    const { curvature } = respond(stack, { M: [1, 0, 0] });
    expectNear([1 / curvature[0]], [x.allen.D], 0.01);
  });

  it('refuses a span or pressure that cannot be', () => {
    const { allen } = checked(plain).x;
    for (const load of [
      { span: 0, pressure: 1 },
      { span: Number.NaN, pressure: 1 },
      { span: 1, pressure: Number.POSITIVE_INFINITY },
    ]) {
      expect(problemCode(() => allenDeflection(allen, load))).toBe('out-of-range');
    }
  });
});

describe('a sandwich without stiffness', () => {
  it('is refused rather than bent without limit', () => {
    const { allen } = checked(plain).x;
    const load = { span: 1, pressure: 1 };
    const faults = [{ D: 0 }, { D: Number.NaN }, { S: 0 }, { S: -1 }, { S: Number.POSITIVE_INFINITY }];
    for (const fault of [...faults, { local: -1 }, { local: 2 * allen.D }]) {
      expect(problemCode(() => allenDeflection({ ...allen, ...fault }, load))).toBe('out-of-range');
    }
    expect(() => allenDeflection({ ...allen, S: 0 }, load)).toThrow('S = 0 N/m');
    expect(() => allenDeflection({ ...allen, D: 0 }, load)).toThrow('D = 0 N m');
  });
});

describe('hand-book stiffness of faces that are unsymmetric among themselves', () => {
  const layers = { ...graphite, nu12: 0 };
  const stackWith = (code: string): Laminate => {
    const face = stackOf(layers, code, 1.25e-4).plies;
    return laminate([...face, { ...foam(10e-3), nu12: 0 }, ...face.toReversed()]);
  };

  it.each(['[90/90/0/0]', '[0/0/90/90]', '[0/90]', '[0/0/0/90]'])(
    '%s counts with its neutral plane: D by the sum over the plies',
    (code) => {
      const stack = stackWith(code);
      let z = -stack.thickness / 2;
      let D = 0;
      for (const { angle, thickness: t, E1, E2 } of stack.plies) {
        D += (angle === 90 ? E2 : E1) * (t * (z + t / 2) ** 2 + t ** 3 / 12);
        z += t;
      }
      const { x } = checked(stack);
      expectNear([x.allen.D], [D], 1e-9);
      expectNear([x.difference], [D * stiffness(stack).d[0]![0]! - 1], 1e-9, 1);
      // The force of the faces times their distance is the moment: a core of its own carries next to nothing.
      expectNear([x.H], [x.allen.S], 3e-3);
      const { coreShear } = checked(stack, { shear: { Vx: 1000 } });
      expectNear([coreShear!.nominal], [1000 / x.allen.d], 1e-12);
      expectNear([coreShear!.stress], [coreShear!.nominal], 1e-2);
    },
  );

  it('is as far apart as the neutral planes, which the mid-planes miss', () => {
    // The 0 plies, a quarter of a millimetre beside the 90 plies, carry in the ratio of the moduli.
    const { x, y, d } = checked(stackWith('[90/90/0/0]'));
    const shift = (0.125e-3 * (181 - 10.3)) / (181 + 10.3);
    expectNear([x.allen.d, y.allen.d], [d - 2 * shift, d + 2 * shift], 1e-9);
  });

  it('is warned of where it is more than a per cent off the laminate, and is silent where it is not', () => {
    const said = (code: string) => {
      const face = stackOf(graphite, code, 1.25e-4).plies;
      const found = checked(laminate([...face, foam(5e-3), ...face.toReversed()]));
      return { found, text: found.notes.map(({ text }) => text).join() };
    };
    const coupled = said('[45/-45/0]');
    expect(coupled.found.y.difference).toBeGreaterThan(0.01);
    expect(coupled.found.y.criteria.weakCore).toBeGreaterThan(100);
    expect(coupled.text).toContain('The hand-book D along y is 2.3 % above');
    expect(coupled.text).not.toContain('The hand-book D along x');
    expect(said('[90/90/0/0]').text).not.toContain('The hand-book D');
  });
});

describe('the assumptions of hand-book theory', () => {
  it('are judged by 3 (d/t)² and 6 Ef t d²/(Ec c³), each against 100', () => {
    const { x, y } = checked(plain);
    expect(thinFaceWeakCoreLimit).toBe(100);
    expectNear([x.criteria.thinFaces], [3 * 21 ** 2], 1e-12);
    expectNear([x.criteria.weakCore], [(6 * 60e9 * 0.5e-3 * 10.5e-3 ** 2) / (85e6 * 1e-6)], 1e-12);
    expectNear([y.criteria.weakCore], [(6 * 58e9 * 0.5e-3 * 10.5e-3 ** 2) / (85e6 * 1e-6)], 1e-12);
  });

  it('are, at their limit, an error of one per cent in the bending stiffness', () => {
    const t = 1e-3;
    const d = t * Math.sqrt(thinFaceWeakCoreLimit / 3);
    const { x } = checked(laminate([cloth(t), foam(d - t), cloth(t)]));
    expectNear([x.criteria.thinFaces, x.allen.local / x.allen.apart], [100, 0.01], 1e-9);
  });

  it('are as good as the thicker and the softer face allow', () => {
    const { x } = checked(laminate([cloth(0.5e-3), foam(10e-3), cloth(1e-3)]));
    expectNear([x.criteria.thinFaces], [3 * 10.75 ** 2], 1e-12);
    expectNear([x.criteria.weakCore], [(6 * 60e9 * 0.5e-3 * 10.75e-3 ** 2) / (85e6 * 1e-6)], 1e-12);
  });

  it('are silent for a good sandwich and warn for thick faces and for a stiff core', () => {
    const said = (found: Sandwich): string => found.notes.map(({ text }) => text).join('\n');
    const good = checked(laminate([cloth(0.5e-3), foam(20e-3), cloth(0.5e-3)]));
    // one on the checks, one on the core: its G and its nu are not those of one isotropic material
    expect(good.notes.map(({ level }) => level)).toEqual(['assumption', 'assumption']);
    const thick = checked(laminate([cloth(3e-3), foam(10e-3), cloth(3e-3)]));
    expect(said(thick)).toContain('The faces are not thin: 3 (d/t)² is 56.3, under 100');
    const wood = corePly({ E: 3.4e9, G: 130e6, nu: 0.3, thickness: 10e-3, density: 150 });
    expect(said(checked(laminate([cloth(0.5e-3), wood, cloth(0.5e-3)])))).toMatch(
      /The core is not weak along x: 6 Ef t d²\/\(Ec c³\) is 5\.8\d, under 100[\s\S]*not weak along y/,
    );
  });
});

describe('wrinkling of the faces', () => {
  it('is 0.5 (Ef Ec Gc)^(1/3) along x and y, with theory, half space and depth beside it', () => {
    const { tool, bag } = checked(plain);
    expectNear(
      [tool.x.stress, tool.y.stress],
      [0.5 * Math.cbrt(60e9 * 85e6 * 28e6), 0.5 * Math.cbrt(58e9 * 85e6 * 28e6)],
      1e-12,
    );
    expectNear([tool.x.inTheory / tool.x.stress], [(2 * 3) / Math.cbrt(36)], 1e-12);
    expectNear([tool.x.deepCore], [deepCoreWrinklingStress(60e9, 85e6, 0.35)], 1e-12);
    expectNear([tool.x.depth], [wrinklingDepth({ Ef: 60e9, Ec: 85e6, Gc: 28e6 }, 0.5e-3)], 1e-12);
    expect(bag).toEqual(tool);
    const bold = checked(plain, { coefficient: 0.8 });
    expectNear([bold.tool.x.stress], [1.6 * tool.x.stress], 1e-12);
  });

  it('takes a Poisson ratio of a core above 0.5 as 0.5 for the half space', () => {
    const odd = { ...foam(10e-3), nu12: 0.8 };
    const { tool } = checked(laminate([cloth(0.5e-3), odd, cloth(0.5e-3)]));
    expectNear([tool.x.deepCore], [deepCoreWrinklingStress(60e9, 85e6, 0.5)], 1e-12);
  });

  it('takes the modulus of a laminated face in bending: stiff outside, stiff inside', () => {
    const face = (code: string) => stackOf(graphite, code, 1e-4).plies;
    const found = (code: string) => checked(laminate([...face(code), foam(10e-3), ...face(code)])).tool;
    expect(found('[0/90]s').x.faceModulus).toBeGreaterThan(4 * found('[90/0]s').x.faceModulus);
    expectNear([found('[0/90]s').x.faceModulus], [found('[90/0]s').y.faceModulus], 1e-9);
  });

  it('has the ratio of the wrinkling stress to the compression of each face under a load', () => {
    const load = { N: [-50e3, 0, 0], M: [30, 0, 0] } as const;
    const { tool, bag } = checked(plain, { load });
    const { plies } = respond(plain, load);
    expectNear(
      [tool.x.faceStress!, bag.x.faceStress!],
      [plies[0]!.middle.stress[0], plies[2]!.middle.stress[0]],
      1e-12,
    );
    expectNear([tool.x.ratio!], [-tool.x.stress / tool.x.faceStress!], 1e-12);
    expect(tool.y.faceStress).toBeDefined();
  });

  it('has the mean stress of a face of several plies', () => {
    const faces = stackOf(graphite, '[0/90]', 2e-4).plies;
    const stack = laminate([...faces, foam(5e-3), ...faces.toReversed()]);
    const load = { N: [-1e5, 0, 0] } as const;
    const { plies } = respond(stack, load);
    const mean = (plies[0]!.middle.stress[0] + plies[1]!.middle.stress[0]) / 2;
    expectNear([checked(stack, { load }).tool.x.faceStress!], [mean], 1e-12);
  });

  it('takes stresses as given, and has no ratio for tension or where none is known', () => {
    const { tool, bag } = checked(plain, { faceStress: { tool: [-100e6, 50e6] } });
    expectNear([tool.x.ratio!], [tool.x.stress / 100e6], 1e-12);
    expect(tool.y).not.toHaveProperty('ratio');
    expect(tool.y.faceStress).toBe(50e6);
    expect(bag.x).not.toHaveProperty('faceStress');
  });

  it('warns when the waves of both faces meet in a thin core', () => {
    const { notes, tool } = checked(laminate([cloth(0.5e-3), foam(4e-3), cloth(0.5e-3)]));
    expect(tool.x.depth).toBeGreaterThan(2e-3);
    expect(notes.map(({ text }) => text).join()).toContain(
      `Wrinkles along x would reach ${((100 * tool.x.depth) / 4e-3).toPrecision(3)} % of the core's thickness into it, more than half`,
    );
    const count = (c: number) => checked(laminate([cloth(0.5e-3), foam(c), cloth(0.5e-3)])).notes.length;
    // The core is thick enough when half of it is the depth; the softer direction y reaches a little less far.
    expect(count(2 * 0.998 * tool.y.depth) - count(2 * 1.002 * tool.x.depth)).toBe(2);
    expect(count(2 * 0.998 * tool.x.depth) - count(2 * 1.002 * tool.x.depth)).toBe(1);
  });
});

describe('shear of the core', () => {
  it('is found by equilibrium, a little below V/d for a weak core, with its ratio to the strength', () => {
    const { coreShear, core } = checked(plain, { shear: { Vx: 5000, Vy: 0 } });
    const { peakXz } = shearStressDistribution(plain, { Vx: 5000 });
    expectNear([coreShear!.stress], [peakXz.stress], 1e-3);
    expectNear([coreShear!.nominal], [5000 / 10.5e-3], 1e-12);
    expect(Math.abs(coreShear!.stress / coreShear!.nominal - 1)).toBeLessThan(0.01);
    expect(core.shearStrength).toBe(1.1e6);
    expectNear([coreShear!.ratio!], [1.1e6 / coreShear!.stress], 1e-12);
  });

  it('takes both forces together', () => {
    const both = checked(plain, { shear: { Vx: 3000, Vy: 4000 } }).coreShear!;
    expectNear([both.nominal], [5000 / 10.5e-3], 1e-12);
    expectNear([both.stress], [checked(plain, { shear: { Vx: 5000 } }).coreShear!.stress], 1e-3);
  });

  it('is not judged without a strength, which is said, nor without a force', () => {
    const { strengths: _, ...bare } = foam(10e-3);
    const { coreShear, notes, core } = checked(laminate([cloth(0.5e-3), bare, cloth(0.5e-3)]), { shear: { Vx: 100 } });
    expect(coreShear).not.toHaveProperty('ratio');
    expect(core).not.toHaveProperty('shearStrength');
    expect(notes.at(-1)?.text).toContain('no shear strength');
    expect(checked(plain, { shear: {} }).coreShear).toEqual({ stress: 0, nominal: 0 });
    expect(checked(plain)).not.toHaveProperty('coreShear');
  });
});

describe('what counts as a sandwich', () => {
  it('is one core between two faces; anything else is told with its reason', () => {
    const reasonOf = (...plies: Ply[]) => {
      const found = sandwichChecks(laminate(plies));
      return found.isSandwich ? undefined : found.reason;
    };
    const [face, core] = [cloth(1e-3), foam(5e-3)];
    expect(reasonOf(face, core, face)).toBeUndefined();
    expect(reasonOf(face, face)).toBe('no ply is a core');
    expect(reasonOf(core, face)).toBe('the core has no face on the tool side');
    expect(reasonOf(face, core)).toBe('the core has no face on the bag side');
    expect(reasonOf(face, core, face, core, face)).toBe('there is more than one core');
  });

  it('may have a core of several plies: in series for shear, softest and weakest elsewhere', () => {
    const hard = corePly({
      E: 160e6,
      G: 48e6,
      nu: 0.3,
      thickness: 5e-3,
      density: 130,
      strengths: { ...strengths, S: 2e6 },
    });
    const { core } = checked(laminate([cloth(1e-3), foam(10e-3), hard, cloth(1e-3)]));
    expectNear([core.thickness, core.E, core.shearStrength!], [15e-3, 85e6, 1.1e6], 1e-12);
    expectNear([core.Gx, core.Gy], [15 / (10 / 28e6 + 5 / 48e6), 15 / (10 / 28e6 + 5 / 48e6)], 1e-12);
    const grained = { ...foam(10e-3), G13: 40e6, G23: 20e6 };
    expectNear([checked(laminate([cloth(1e-3), grained, cloth(1e-3)])).core.Gx], [40e6], 1e-12);
    expectNear([checked(laminate([cloth(1e-3), grained, cloth(1e-3)])).core.Gy], [20e6], 1e-12);
  });

  it('takes the modulus and the shear strength through the thickness where its core gives them', () => {
    const balsa = { E: 0.1e9, E3: 3e9, G: 130e6, nu: 0.3, shearStrength: 2e6, density: 150, thickness: 10e-3 };
    const { core, tool, notes } = checked(laminate([cloth(1e-3), corePly(balsa), cloth(1e-3)]), { shear: { Vx: 1e3 } });
    expectNear([core.E, core.shearStrength!], [3e9, 2e6], 1e-12);
    expectNear([tool.x.stress], [0.5 * Math.cbrt(60e9 * 3e9 * 130e6)], 1e-12);
    expect(core.modulusAssumed).toBe(false);
    expect(notes.map(({ text }) => text).join()).not.toContain('E3');
    expect(checked(plain).core.modulusAssumed).toBe(true);
    expect(
      checked(plain)
        .notes.map(({ text }) => text)
        .join(),
    ).toContain('needs its own, E3');
  });

  it('says that each direction is judged alone as soon as a face is compressed', () => {
    const said = (N: readonly [number, number, number]) =>
      checked(plain, { load: { N } }).notes.some(({ text }) =>
        text.startsWith('Wrinkling is judged along x and along y'),
      );
    expect(said([-1e4, 0, 0])).toBe(true);
    expect(said([1e4, 1e4, 0])).toBe(false);
  });

  it('exchanges its directions when it is turned, and its faces when it is reversed', () => {
    const stack = laminate([cloth(0.5e-3), foam(10e-3), cloth(1e-3, 20)]);
    const [one, quarter] = [checked(stack), checked(turned(stack, 90))];
    expectNear(
      [quarter.x.allen.D, quarter.tool.x.stress, quarter.x.H],
      [one.y.allen.D, one.tool.y.stress, one.y.H],
      1e-9,
    );
    const back = checked(laminate(stack.plies.toReversed()));
    expectNear([back.tool.x.stress, back.x.allen.D], [one.bag.x.stress, one.x.allen.D], 1e-9);
  });

  it('names its sources, and refuses values that cannot be', () => {
    expect(checked(plain).sources).toEqual(['whitney-1973', 'vlachoutsis-1992', 'hoff-mautner-1945', 'allen-1969']);
    expect(problemCode(() => sandwichChecks(plain, { coefficient: 0 }))).toBe('out-of-range');
    for (const stress of [[Number.NaN, 0], [0, Number.NEGATIVE_INFINITY], [1e6]]) {
      const wrong = stress as unknown as readonly [number, number];
      expect(problemCode(() => sandwichChecks(plain, { faceStress: { tool: wrong } }))).toBe('not-a-number');
      expect(problemCode(() => sandwichChecks(plain, { faceStress: { bag: wrong } }))).toBe('not-a-number');
    }
    expect(problemCode(() => sandwichChecks(plain, { shear: { Vx: Number.NaN } }))).toBe('not-a-number');
    expect(problemCode(() => sandwichChecks(plain, { load: { N: [Number.NaN, 0, 0] } }))).toBe('not-a-number');
  });
});
