import {
  assemble,
  compareMicromechanics,
  compute,
  type Fabric,
  fabricPlies,
  libraryFibre,
  libraryResin,
  type Ply,
  readDesign,
  renderProblem,
} from '@selvage/core';
import { describe, expect, it } from 'vitest';
import { problemsIn, textAt } from './faults.js';

const design = (material: string, rest = ''): string =>
  `format: 1\ntitle: T\nmaterials:\n  f: { kind: fabric, resin: epoxy-infusion, ${material} }\n${rest === '' ? 'laminates: { a: { material: f, stack: [0] } }' : rest}\n`;
const model = (material: string, rest = '') => assemble(readDesign(design(material, rest)));
const plies = (material: string, rest = ''): readonly Ply[] => model(material, rest).laminates[0]!.laminate.plies;
const texts = (material: string, rest = ''): string =>
  model(material, rest)
    .laminates[0]!.laminate.notes.map(({ level, text }) => `${level}: ${text}`)
    .join('\n');

const glass = libraryFibre('e-glass')!;
const carbon = libraryFibre('carbon-standard')!;
const resin = libraryResin('epoxy-infusion')!;
const common = { name: 'f', fibre: glass, resin, fibreVolumeFraction: 0.5 } as const;

/** What the file gives against what the library's own fabric gives, but for the notes that the file adds. */
function expectAs(material: string, fabric: Fabric): void {
  const bare = (ply: Ply) => ({ ...ply, notes: [], sources: [] });
  expect(plies(material).map(bare)).toEqual(fabricPlies(fabric).map(bare));
}

const cloth = 'architecture: woven, weave: twill, fibre: e-glass, arealMass: 300 g/m^2, fibreVolumeFraction: 0.5';
const woven: Fabric = { ...common, architecture: 'woven', weave: 'twill', arealMass: 0.3 };
const strengths = '{ Xt: 400 MPa, Xc: 300 MPa, Yt: 380 MPa, Yc: 280 MPa, S: 60 MPa }';
const strong = { Xt: 400e6, Xc: 300e6, Yt: 380e6, Yc: 280e6, S: 60e6 };

describe('keys of a fabric do what the library does', () => {
  it('yarnCount, weftCount and harness: crimp from the weave', () => {
    expectAs(`${cloth}, yarnCount: 7 1/cm, weftCount: 9 1/cm, harness: 3`, {
      ...woven,
      yarnCount: 700,
      weftCount: 900,
      harness: 3,
    });
    expect(texts(`${cloth}, yarnCount: 7 1/cm`)).toContain('from yarns tilted by up to');
  });
  it('counts per inch', () => {
    expectAs(`${cloth}, yarnCount: 18 1/in`, { ...woven, yarnCount: 18 / 0.0254 });
  });
  it('weftFibre: a cloth of two fibres', () => {
    const hybrid: Fabric = { ...woven, weftFibre: carbon, warpShare: 0.4, yarnCount: 600 };
    expectAs(`${cloth}, weftFibre: carbon-standard, warpShare: 40 %, yarnCount: 6 1/cm`, hybrid);
  });
  it('yarnLinearDensity and weftLinearDensity: mass and share of the warp, which a note says', () => {
    const yarns = 'yarnCount: 5 1/cm, yarnLinearDensity: 200 tex, weftCount: 6 1/cm, weftLinearDensity: 250 tex';
    // 500/m of 200 tex and 600/m of 250 tex: 100 and 150 g/m^2.
    const counts = { yarnCount: 500, weftCount: 600 };
    const [found] = plies(`${cloth.replace('arealMass: 300 g/m^2, ', '')}, ${yarns}`);
    const [own] = fabricPlies({ ...woven, ...counts, arealMass: 0.25, warpShare: 0.4 });
    expect(found!.fibreArealMass! / 0.25).toBeCloseTo(1, 12);
    expect(found!.E1 / own!.E1).toBeCloseTo(1, 12);
    expect(texts(`${cloth.replace('arealMass: 300 g/m^2, ', '')}, ${yarns}`)).toContain(
      'assumption: f: areal mass 250 g/m^2 and warp share 40.0 % from its yarns',
    );
    const [weighed] = plies(`${cloth.replace('300', '260')}, ${yarns}`);
    expect(weighed!.fibreArealMass).toBe(0.26);
    expect(texts(`${cloth.replace('300', '260')}, ${yarns}`)).toContain('warp share 40.0 % from its yarns');
  });
  it('counts that differ without a share are remarked', () => {
    expect(texts(`${cloth}, yarnCount: 6 1/cm, weftCount: 8 1/cm`)).toContain(
      'half of its mass is taken to lie in the warp',
    );
    expect(texts(`${cloth}, yarnCount: 6 1/cm, weftCount: 8 1/cm, warpShare: 45 %`)).not.toContain('half of its mass');
  });
  it('layers[].fibre and layers[].strengths: a multiaxial of two fibres', () => {
    const layers = `layers: [{ angle: 0, arealMass: 150 g/m^2, fibre: carbon-standard, strengths: ${strengths} }, { angle: 45, arealMass: 200 g/m^2 }]`;
    expectAs(`architecture: multiaxial, fibre: e-glass, fibreVolumeFraction: 0.5, ${layers}`, {
      ...common,
      architecture: 'multiaxial',
      arealMass: 0.35,
      layers: [
        { angle: 0, share: 0.15 / 0.35, fibre: carbon, strengths: strong },
        { angle: 45, share: 0.2 / 0.35 },
      ],
    });
  });
  it('a multiaxial whose layers all name their fibre needs none itself', () => {
    const layers =
      'layers: [{ angle: 0, arealMass: 150 g/m^2, fibre: carbon-standard }, { angle: 45, arealMass: 200 g/m^2, fibre: e-glass }]';
    const [first, second] = plies(`architecture: multiaxial, fibreVolumeFraction: 0.5, ${layers}`);
    expect(first!.E1).toBeGreaterThan(2 * second!.E1);
  });
  it('voidFraction with voidModel', () => {
    const voids = { voidFraction: 0.03, voidModel: 'porous-matrix' } as const;
    expectAs(`${cloth}, crimpFactor: 0.93, voidFraction: 3 %, voidModel: porous-matrix`, {
      ...woven,
      ...voids,
      crimpFactor: 0.93,
    });
    const [porous] = plies(`${cloth}, voidFraction: 3 %, voidModel: porous-matrix`);
    const [massOnly] = plies(`${cloth}, voidFraction: 3 %, voidModel: mass-only`);
    expect(porous!.G12).toBeLessThan(0.95 * massOnly!.G12);
    expect(porous!.density).toBe(massOnly!.density);
  });
  it('matModel', () => {
    const mat = 'architecture: mat, fibre: e-glass, arealMass: 450 g/m^2, fibreVolumeFraction: 0.2';
    for (const matModel of ['invariants', 'tsai-pagano'] as const)
      expectAs(`${mat}, matModel: ${matModel}`, {
        ...common,
        architecture: 'mat',
        arealMass: 0.45,
        fibreVolumeFraction: 0.2,
        matModel,
      });
  });
  it('transverseModel, shearModel and xi', () => {
    const ud = 'architecture: ud, fibre: e-glass, arealMass: 300 g/m^2, fibreVolumeFraction: 0.5';
    const fabric: Fabric = { ...common, architecture: 'ud', arealMass: 0.3 };
    expectAs(`${ud}, xi: { E2: 3, G12: 1.5 }`, { ...fabric, model: { xiE2: 3, xiG12: 1.5 } });
    expectAs(`${ud}, xi: { G12: 0 }`, { ...fabric, model: { G12: 'inverse' } });
    expectAs(`${ud}, transverseModel: chamis`, { ...fabric, model: { E2: 'chamis', G12: 'chamis' } });
    expectAs(`${ud}, transverseModel: inverse, shearModel: halpin-tsai, xi: { G12: 2 }`, {
      ...fabric,
      model: { E2: 'inverse', G12: 'halpin-tsai', xiG12: 2 },
    });
    expectAs(`${ud}, shearModel: chamis, xi: { E2: 4 }`, { ...fabric, model: { G12: 'chamis', xiE2: 4 } });
  });
  it('strengths: of the cloth, so that a load on it finds its limit', () => {
    expectAs(`${cloth}, strengths: ${strengths}`, { ...woven, strengths: strong });
    const rest =
      'laminates: { a: { material: f, stack: [0] } }\nloads: { pull: { laminate: a, N: [10 kN/m, 0 N/m, 0 N/m] } }';
    const results = compute(model(`${cloth}, strengths: ${strengths}`, rest));
    const pull = results.data.loads as Record<string, { failure: Record<string, { ratio: number }> }>;
    const [ply] = results.model.laminates[0]!.laminate.plies;
    expect(pull.pull!.failure.maxStress!.ratio).toBeCloseTo((400e6 * ply!.thickness) / 10e3, 9);
  });
});

describe('strengths of a fabric are not scaled with its fibre fraction', () => {
  const bag = (fraction: number): string =>
    `laminates: { a: { material: f, stack: [0], process: { kind: bag, fibreVolumeFraction: ${fraction} } } }`;
  const own = `${cloth}, strengths: ${strengths}`;
  it('which a note says, with the fraction', () => {
    expect(texts(own)).toContain(
      'assumption: f: strengths as given, taken to hold at fibre fraction 50.0 %; they are not scaled with it',
    );
    expect(texts(own.replace(', fibreVolumeFraction: 0.5', ''), bag(0.45))).toContain(
      'taken to hold at fibre fraction 45.0 %',
    );
  });
  it('and a warning when the laminate has another fraction, of its bag or its closed tool', () => {
    const warning = 'warning: f: strengths are given for fibre fraction 50.0 % and used at 45.0 %';
    expect(texts(own, bag(0.45))).toContain(warning);
    const tool = 'laminates: { a: { material: f, stack: [0], process: { kind: closedTool, gap: 0.2 mm } } }';
    expect(texts(own, tool)).toContain('warning: f: strengths are given for fibre fraction 50.0 % and used at 59.1 %');
    const [ply] = plies(own, bag(0.45));
    expect(ply!.strengths).toEqual(strong);
  });
  it('and a warning when one set serves layers of two fibres', () => {
    const layers =
      'layers: [{ angle: 0, arealMass: 150 g/m^2, fibre: carbon-standard }, { angle: 45, arealMass: 200 g/m^2 }]';
    const multi = `architecture: multiaxial, fibre: e-glass, fibreVolumeFraction: 0.5, strengths: ${strengths}, ${layers}`;
    expect(texts(multi)).toContain('warning: f: one set of strengths is used for layers of different fibres');
  });
  it('a fraction of the fabric that the bag replaces is named', () => {
    expect(texts(cloth, bag(0.45))).toContain(
      'the fibre fraction 50.0 % of the design file is not used, the process of the laminate makes it 45.0 %',
    );
    expect(texts(cloth, bag(0.5))).not.toContain('is not used');
  });
});

const problems = (material: string) => problemsIn(() => model(material));

describe('keys that contradict each other or do nothing', () => {
  const ud = 'architecture: ud, fibre: e-glass, arealMass: 300 g/m^2, fibreVolumeFraction: 0.5';
  const layer = '{ angle: 0, arealMass: 300 g/m^2, fibre: e-glass }';
  type Case = [what: string, material: string, code: string, at: string, other: string | undefined];
  const foreign = (
    [
      ['weave', 'twill'],
      ['warpShare', '0.5'],
      ['crimpFactor', '1'],
      ['yarnCount', '8 1/cm'],
      ['weftFibre', 'e-glass'],
      ['matModel', 'invariants'],
      ['layers', '[{ angle: 0, arealMass: 300 g/m^2 }]'],
    ] as const
  ).map(([key, value]): Case => [`${key} of a unidirectional`, `${ud}, ${key}: ${value}`, 'contradiction', key, 'ud']);
  const cases: Case[] = [
    ...foreign,
    ['matModel of a cloth', `${cloth}, matModel: invariants`, 'contradiction', 'matModel', 'woven'],
    [
      'weave of a library mat',
      'from: e-glass-mat-300, weave: twill, fibreVolumeFraction: 0.2',
      'contradiction',
      'weave',
      'e-glass-mat-300',
    ],
    ['crimp given twice', `${cloth}, crimpFactor: 0.9, yarnCount: 8 1/cm`, 'contradiction', 'yarnCount', '0.9'],
    ['weftCount alone', `${cloth}, weftCount: 8 1/cm`, 'missing-key', 'weftCount', undefined],
    ['harness alone', `${cloth}, harness: 4`, 'missing-key', 'harness', undefined],
    [
      'a linear density without count',
      `${cloth}, yarnLinearDensity: 200 tex`,
      'missing-key',
      'yarnLinearDensity',
      undefined,
    ],
    [
      'a linear density of the weft alone',
      `${cloth}, yarnCount: 8 1/cm, weftLinearDensity: 200 tex`,
      'missing-key',
      'weftLinearDensity',
      undefined,
    ],
    [
      'the share given twice',
      `${cloth}, yarnCount: 8 1/cm, yarnLinearDensity: 190 tex, warpShare: 0.5`,
      'contradiction',
      'warpShare',
      '190 tex',
    ],
    [
      'a mass that the yarns do not have',
      `${cloth}, yarnCount: 8 1/cm, yarnLinearDensity: 300 tex`,
      'contradiction',
      '300 g/m^2',
      '300 tex',
    ],
    ['a harness that is not of the weave', `${cloth}, yarnCount: 8 1/cm, harness: 2`, 'contradiction', '2', 'twill'],
    ['a harness of no whole number', `${cloth}, yarnCount: 8 1/cm, harness: 4.5`, 'contradiction', '4.5', 'twill'],
    [
      'xi of E2 without its equation',
      `${cloth}, xi: { E2: 2 }, transverseModel: chamis`,
      'contradiction',
      'E2',
      'chamis',
    ],
    [
      'xi of G12 without its equation',
      `${cloth}, xi: { G12: 2 }, shearModel: inverse`,
      'contradiction',
      'G12',
      'inverse',
    ],
    ['a model of voids without voids', `${cloth}, voidModel: mass-only`, 'missing-key', 'voidModel', undefined],
    [
      'a fibre that no layer uses',
      `architecture: multiaxial, fibre: s-glass, fibreVolumeFraction: 0.5, layers: [${layer}]`,
      'contradiction',
      'fibre',
      `[${layer}]`,
    ],
    [
      'strengths that no layer uses',
      `architecture: multiaxial, fibreVolumeFraction: 0.5, strengths: ${strengths}, layers: [${layer.replace(' }', `, strengths: ${strengths} }`)}]`,
      'contradiction',
      'strengths',
      `[${layer.replace(' }', `, strengths: ${strengths} }`)}]`,
    ],
    ['an unknown fibre of the weft', `${cloth}, weftFibre: e-glas`, 'unknown-name', 'e-glas', undefined],
    [
      'an unknown fibre of a layer',
      'architecture: multiaxial, fibre: e-glass, fibreVolumeFraction: 0.5, layers: [{ angle: 0, arealMass: 300 g/m^2, fibre: carbn-standard }, { angle: 90, arealMass: 300 g/m^2 }]',
      'unknown-name',
      'carbn-standard',
      undefined,
    ],
    ['a count without unit', `${cloth}, yarnCount: 8`, 'unit-missing', '8', undefined],
    ['a count that is a length', `${cloth}, yarnCount: 8 mm`, 'unit-mismatch', 'mm', undefined],
    [
      'a void model that is none',
      `${cloth}, voidFraction: 0.01, voidModel: porous`,
      'not-a-choice',
      'porous',
      undefined,
    ],
    ['a negative xi', `${cloth}, xi: { E2: -1 }`, 'out-of-range', '-1', undefined],
  ];
  it.each(cases)('%s', (_, material, code, at, other) => {
    const found = problems(material);
    expect(found).toHaveLength(1);
    const [problem] = found;
    expect(problem?.code).toBe(code);
    expect(textAt(problem?.where)).toBe(at);
    expect(problem?.also?.map(({ where }) => textAt(where))).toEqual(other === undefined ? undefined : [other]);
    expect(`${problem?.hint ?? ''}${problem?.allowed ?? ''}`).not.toBe('');
  });
  it('all of them at once, each with both places as the command prints them', () => {
    const found = problems(`${cloth}, crimpFactor: 0.9, yarnCount: 8 1/cm, matModel: invariants, weftFibre: e-glas`);
    expect(found.map(({ code }) => code)).toEqual(['contradiction', 'contradiction', 'unknown-name']);
    const printed = renderProblem(found[0]!);
    expect(printed).toContain('`yarnCount` and `crimpFactor` both decide the crimp');
    expect(printed).toContain('^^^ the factor');
    expect(printed).toContain('keep a measured factor, else the count');
  });
});

describe('materials in the JSON document', () => {
  /** Some member of the document; its numbers are compared as they are. */
  interface Json {
    readonly [key: string]: Json;
  }
  const materials = (text: string): Json => compute(assemble(readDesign(text))).data.materials as unknown as Json;
  const hybrid = `${cloth}, weftFibre: carbon-standard, yarnCount: 6 1/cm, voidFraction: 2 %, xi: { G12: 1.4 }`;

  it('hold what the library computes', () => {
    const found = materials(design(hybrid)).f!;
    const fabric: Fabric = { ...woven, weftFibre: carbon, yarnCount: 600, voidFraction: 0.02, model: { xiG12: 1.4 } };
    const [ply] = fabricPlies(fabric);
    const cured = found.cured!['0']!;
    expect(cured.plies!['0']).toMatchObject({ E1: ply!.E1, nu12: ply!.nu12, alpha1: ply!.expansion!.alpha1 });
    expect(cured).toMatchObject({ laminates: ['a'], thickness: ply!.thickness, resinArealMass: ply!.resinArealMass });
    const mass = ply!.density! * ply!.thickness;
    expect(Number(cured.resinMassFraction)).toBeCloseTo(ply!.resinArealMass! / mass, 12);
    for (const [name, fibre] of [
      ['e-glass', glass],
      ['carbon-standard', carbon],
    ] as const) {
      const { properties } = compareMicromechanics({ ...fabric, fibre });
      for (const { property, values, bounds, relativeSpread } of properties) {
        const models = cured.models![name]!;
        const used = values.find(({ role }) => role === 'used')!;
        expect(models.used![property]).toBe(used.value);
        expect(models.usedModel![property]).toBe(used.rule);
        for (const { rule, value } of values) expect(models[rule]![property]).toBe(value);
        expect(models.series![property]).toBe(bounds?.reuss);
        expect(models.parallel![property]).toBe(bounds?.voigt);
        expect(models.relativeSpread![property]).toBe(relativeSpread);
      }
      expect(cured.models![name]!.xi).toEqual({ E2: 2, G12: 1.4 });
    }
  });

  it('have one cured state for each fibre fraction, with its laminates', () => {
    const rest = `laminates:
  a: { material: f, stack: [0] }
  b: { material: f, stack: [0, 90], process: { kind: closedTool, gap: 0.5 mm } }
  c: { material: f, stack: [90], process: { kind: bag, fibreVolumeFraction: 0.5 } }`;
    const { cured } = materials(design(cloth, rest)).f as unknown as { cured: { laminates: string[] }[] };
    expect(cured.map(({ laminates }) => laminates)).toEqual([['a', 'c'], ['b']]);
  });

  it('are read by targets with their units', () => {
    const target = (quantity: string, atLeast: string): string =>
      `  - { quantity: materials.f.${quantity}, atLeast: ${atLeast} }`;
    const targets = [
      target('cured.0.thickness', '0.1 mm'),
      target('cured.0.resinMassFraction', '10 %'),
      target('cured.0.crimp.warpAngle', '1 deg'),
      target('cured.0.crimp.warpFactor', '0.8'),
      target('cured.0.models.e-glass.used.G23', '1 GPa'),
      target('cured.0.models.e-glass.used.alpha2', '10e-6 1/K'),
      target('cured.0.models.e-glass.relativeSpread.E2', '0.01'),
      target('cured.0.models.e-glass.xi.G12', '1'),
      target('cured.0.plies.0.strengths.Xt', '100 MPa'),
      target('warpShare', '10 %'),
    ].join('\n');
    const text = `${design(`${hybrid}, strengths: ${strengths}`)}targets:\n${targets}\n`;
    const results = compute(assemble(readDesign(text)));
    expect(results.targets.map(({ kind }) => kind)).toEqual([
      'length',
      'fraction',
      'angle',
      'number',
      'modulus',
      'expansion',
      'number',
      'number',
      'stress',
      'fraction',
    ]);
    expect(results.targets.every(({ met }) => met)).toBe(true);
  });
});
