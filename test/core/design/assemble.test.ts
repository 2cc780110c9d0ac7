import { assemble, library, type Problem, readDesign, SelvageError } from '@selvage/core';
import { describe, expect, it } from 'vitest';

const head = `format: 1
title: T
materials:
  ud: { kind: ply, E1: 38 GPa, E2: 10 GPa, G12: 3.2 GPa, nu12: 0.28, thickness: 0.25 mm, density: 1850 kg/m^3 }
  cloth: { kind: fabric, architecture: woven, weave: twill, fibre: e-glass, resin: epoxy-infusion, arealMass: 300 g/m^2, fibreVolumeFraction: 0.5 }
  biax: { kind: fabric, architecture: multiaxial, fibre: e-glass, resin: epoxy-infusion, fibreVolumeFraction: 0.5, layers: [{ angle: 45, arealMass: 200 g/m^2 }, { angle: -45, arealMass: 200 g/m^2 }] }
  dry: { kind: fabric, architecture: ud, fibre: e-glass, resin: epoxy-infusion, arealMass: 300 g/m^2 }
threads:
  t75: { linearDensity: 75 tex, density: 1440 kg/m^3 }
`;
const model = (rest: string) => assemble(readDesign(head + rest));
function problems(rest: string): readonly Problem[] {
  try {
    model(rest);
  } catch (error) {
    if (error instanceof SelvageError) return error.problems;
    throw error;
  }
  throw new Error('was assembled without a problem');
}
const angles = (rest: string): number[] => model(rest).laminates[0]?.laminate.plies.map((ply) => ply.angle) ?? [];

describe('stacks', () => {
  it('from a code with material suffixes, letters and a default', () => {
    const plies = model('laminates: { a: { material: ud, letters: { c: cloth }, stack: "[0/45c/90]" } }').laminates[0]
      ?.laminate.plies;
    expect(plies?.map((ply) => [ply.name, ply.angle])).toEqual([
      ['ud', 0],
      ['cloth', 45],
      ['ud', 90],
    ]);
  });
  it('from a list with counts and a mirror', () => {
    expect(angles('laminates: { a: { material: ud, stack: [0, { angle: 45, count: 2 }], symmetric: true } }')).toEqual([
      0, 45, 45, 45, 45, 0,
    ]);
  });
  it('a multiaxial fabric gives its layers, in reverse order in the mirrored half', () => {
    expect(angles('laminates: { a: { material: biax, stack: "[0]s" } }')).toEqual([45, -45, -45, 45]);
  });
  it('a fabric turned in the stack turns its layers', () => {
    expect(angles('laminates: { a: { material: biax, stack: [30] } }')).toEqual([75, -15]);
  });
});

describe('a bag fixes the fibre fraction, a closed tool the thickness', () => {
  it('bag: thickness = w / (rho Vf) of the fabrics', () => {
    const laminate = model(
      'laminates: { a: { material: cloth, stack: [0, 0], process: { kind: bag, fibreVolumeFraction: 0.4 } } }',
    ).laminates[0];
    // 300 g/m^2 of E-glass at 2540 kg/m^3 (the library's density), fibre fraction 0.4
    expect(laminate?.laminate.thickness).toBeCloseTo((2 * 0.3) / 2540 / 0.4, 12);
  });
  it('closed tool: the thickness is the gap, whatever the fabrics', () => {
    const laminate = model(
      'laminates: { a: { material: dry, stack: [0, 0, 90, 0], process: { kind: closedTool, gap: 0.9 mm } } }',
    ).laminates[0];
    expect(laminate?.laminate.thickness).toBeCloseTo(0.9e-3, 12);
    expect(laminate?.process).toMatchObject({ fibreVolumeFraction: expect.closeTo((4 * 0.3) / 2540 / 0.9e-3, 9) });
  });
});

describe('cores', () => {
  const layer = (core: string) => {
    const design = `${head.replace('threads:', `  foam: ${core}\nthreads:`)}laminates: { a: { stack: [{ angle: 0, material: foam }] } }`;
    return assemble(readDesign(design)).laminates[0]?.laminate.plies[0];
  };
  it.each(Object.keys(library.cores))('%s of the library needs only its thickness', (id) => {
    expect(layer(`{ kind: core, from: ${id}, thickness: 5 mm }`)).toMatchObject({ core: true, thickness: 5e-3 });
  });
  it('shear modulus of an isotropic core from E and nu', () => {
    expect(layer('{ kind: core, E: 100 MPa, nu: 0.25, density: 100 kg/m^3, thickness: 5 mm }')).toMatchObject({
      G12: 40e6,
      G13: 40e6,
    });
  });
  it('take a thermal expansion', () => {
    const core = '{ kind: core, from: pvc-130, thickness: 5 mm, alpha: 40e-6 1/K }';
    expect(layer(core)?.expansion).toEqual({ alpha1: 40e-6, alpha2: 40e-6 });
  });
});

describe('what a design overrides', () => {
  it('of a library entry is told from what it takes over', () => {
    const design = `${head.replace('threads:', '  own: { kind: fabric, from: e-glass-twill-200, resin: epoxy-infusion, arealMass: 190 g/m^2, fibreVolumeFraction: 0.5 }\nthreads:')}laminates: { a: { material: own, stack: [0] } }`;
    const entry = assemble(readDesign(design)).provenance.find((one) => one.name === 'own');
    expect(entry).toMatchObject({ library: 'e-glass-twill-200', overridden: ['arealMass'], notes: [] });
  });
  it('in a closed tool, a fibre fraction that the gap replaces is named', () => {
    const laminate = model(
      'laminates: { a: { material: cloth, stack: [0, 0], process: { kind: closedTool, gap: 0.5 mm } } }',
    ).laminates[0]?.laminate;
    expect(laminate?.notes.map((note) => note.text).join(' ')).toContain('50.0 % of the design file is not used');
  });
});

describe('the stack under the needle', () => {
  const sewn = (laminate: string, plan: string) =>
    model(`laminates: { a: ${laminate} }\nstitching: { s: { laminate: a, thread: t75, stitchType: 304, ${plan} } }`)
      .stitching[0];
  it('is the dry fabric, fibres over their dry fraction, and a core as thick as it is', () => {
    const core = head.replace(
      'threads:',
      '  foam: { kind: core, thickness: 5 mm, E: 130 MPa, G: 48 MPa, density: 130 kg/m^3 }\nthreads:',
    );
    const design = `${core}laminates: { a: { material: cloth, stack: [0, { angle: 0, material: foam }, 0] } }
stitching: { s: { laminate: a, thread: t75, stitchType: 301, pattern: parallel, pitch: 4 mm, rowSpacing: 5 mm, dryFibreVolumeFraction: 0.4 } }`;
    const { plan } = assemble(readDesign(design)).stitching[0] ?? {};
    // two cloths of 300 g/m^2 of E-glass at 2540 kg/m^3 (the library's density)
    expect(plan?.dryThickness).toBeCloseTo((2 * 0.3) / 2540 / 0.4 + 5e-3, 12);
  });
  it('a field holds whole zigzag rows: 25 mm have room for four rows 6 mm apart', () => {
    const field =
      'pattern: zigzag, pitch: 4 mm, bight: 3 mm, rowSpacing: 6 mm, field: { length: 120 mm, width: 25 mm }';
    const totals = sewn('{ material: cloth, stack: [0] }', field)?.summary.consumption.totals;
    expect(totals?.rows[0]?.rows).toBe(4);
    expect(totals?.stitches).toBe(4 * 30);
    expect(totals?.rowLength).toBeCloseTo(4 * 0.12, 12);
  });
});

describe('problems of assembly have a place in the file', () => {
  const one = 'laminates: { a: { material: ud, stack: [0] } }\n';
  const seam = (rest: string): string => `${one}stitching: { s: { laminate: a, thread: t75, ${rest} } }`;
  const cases: [what: string, rest: string, code: string, underlined: string][] = [
    ['an unknown material in a code', 'laminates: { a: { stack: "[0/45cloht]" } }', 'missing-key', '0'],
    [
      'a misspelled material in a code',
      'laminates: { a: { material: ud, stack: "[0/45cloht]" } }',
      'unknown-name',
      '45cloht',
    ],
    ['an unknown default material', 'laminates: { a: { material: udd, stack: "[0]" } }', 'unknown-name', 'udd'],
    [
      'an unknown material behind a letter',
      'laminates: { a: { letters: { c: clot }, stack: "[0c]" } }',
      'unknown-name',
      'clot',
    ],
    ['a bracket that is not closed', 'laminates: { a: { material: ud, stack: "[0/45" } }', 'orientation-code', '['],
    ['a comma in a code', 'laminates: { a: { material: ud, stack: "[0,45]" } }', 'orientation-code', ','],
    [
      '`symmetric` beside a code',
      'laminates: { a: { material: ud, stack: "[0]", symmetric: true } }',
      'contradiction',
      'symmetric',
    ],
    [
      'a resin as a layer',
      'laminates: { a: { stack: [{ angle: 0, material: epoxy-infusion }] } }',
      'unknown-name',
      'epoxy-infusion',
    ],
    ['a fabric without fibre fraction', 'laminates: { a: { material: dry, stack: [0] } }', 'missing-key', 'dry'],
    [
      'a closed tool without gap',
      'laminates: { a: { material: dry, stack: [0], process: { kind: closedTool } } }',
      'missing-key',
      'process',
    ],
    [
      'a closed tool too tight',
      'laminates: { a: { material: dry, stack: [0, 0, 0, 0], process: { kind: closedTool, gap: 0.5 mm } } }',
      'out-of-range',
      '0.5 mm',
    ],
    [
      'a gap in a bag',
      'laminates: { a: { material: dry, stack: [0], process: { kind: bag, gap: 1 mm } } }',
      'contradiction',
      'gap',
    ],
    [
      'a closed tool without fabric',
      'laminates: { a: { material: ud, stack: [0], process: { kind: closedTool, gap: 1 mm } } }',
      'contradiction',
      'process',
    ],
    [
      'an unknown thread',
      `${one}stitching: { s: { laminate: a, thread: t57, stitchType: 301, pattern: parallel, pitch: 4 mm, rowSpacing: 5 mm } }`,
      'unknown-name',
      't57',
    ],
    ['a load on an unknown laminate', `${one}loads: { l: { laminate: b } }`, 'unknown-name', 'b'],
    [
      'a bight of straight rows',
      seam('stitchType: 301, pattern: parallel, pitch: 4 mm, rowSpacing: 5 mm, bight: 2 mm'),
      'contradiction',
      'bight',
    ],
    [
      'a zigzag without bight',
      seam('stitchType: 304, pattern: zigzag, pitch: 4 mm, rowSpacing: 5 mm'),
      'missing-key',
      's',
    ],
    ['edge rows without rows', seam('stitchType: 301, pattern: edgeRows, pitch: 4 mm'), 'missing-key', 's'],
    [
      'a stagger as long as the pitch',
      seam(
        'stitchType: 301, pattern: edgeRows, pitch: 4 mm, rows: [{ offset: 6 mm, length: 1 m }, { offset: 9 mm, length: 1 m, stagger: 5 mm }]',
      ),
      'out-of-range',
      '5 mm',
    ],
    [
      'an edge row without length',
      seam('stitchType: 301, pattern: edgeRows, pitch: 4 mm, rows: [{ offset: 6 mm }]'),
      'missing-key',
      '{ offset: 6 mm }',
    ],
  ];
  it.each(cases)('%s', (_, rest, code, underlined) => {
    const [found] = problems(rest);
    const { excerpt = '', column = 1, length = 0 } = found?.where ?? {};
    expect(found?.code).toBe(code);
    expect(excerpt.slice(column - 1, column - 1 + length)).toBe(underlined);
  });
  it('an impossible fibre at the fibre, once, however many fabrics it is in', () => {
    const design = head
      .replace(
        'materials:',
        'materials:\n  odd: { kind: fibre, E1: 73 MPa, E2: 73 GPa, G12: 30 GPa, nu12: 0.22, density: 2540 kg/m^3 }',
      )
      .replaceAll('fibre: e-glass', 'fibre: odd');
    const rest = 'laminates: { a: { material: cloth, stack: [0] }, b: { material: biax, stack: [0] } }';
    const place = expect.objectContaining({ line: 4, excerpt: expect.stringContaining('odd') });
    expect(() => assemble(readDesign(`${design}${rest}`))).toThrow(
      expect.objectContaining({ problems: [expect.objectContaining({ code: 'not-admissible', where: place })] }),
    );
  });
  it('each once, and all of them', () => {
    const found = problems(
      'laminates: { a: { stack: [{ angle: 0, material: x }, { angle: 0, material: x }] }, b: { material: y, stack: [0] } }',
    );
    expect(found.map((problem) => problem.code)).toEqual(['unknown-name', 'unknown-name']);
  });
  it('a name of the library used as a layer says how to declare it', () => {
    const [found] = problems('laminates: { a: { material: ud-carbon-epoxy-181, stack: [0] } }');
    expect(found?.hint).toContain('from: ud-carbon-epoxy-181');
  });
});
