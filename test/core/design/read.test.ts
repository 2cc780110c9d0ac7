import { type Problem, readDesign, readDesignBytes, renderProblems, SelvageError } from '@selvage/core';
import { describe, expect, it } from 'vitest';

const ply = '{ kind: ply, E1: 38 GPa, E2: 10 GPa, G12: 3.2 GPa, nu12: 0.28, thickness: 0.25 mm }';
const design = (rest: string): string => `format: 1\ntitle: T\nmaterials:\n  ud: ${ply}\n${rest}`;
const laminates = 'laminates:\n  skin: { material: ud, stack: "[0/90]s" }\n';

function problems(read: () => unknown): readonly Problem[] {
  try {
    read();
  } catch (error) {
    if (error instanceof SelvageError) return error.problems;
    throw error;
  }
  throw new Error('was read without a problem');
}
const of = (text: string): readonly Problem[] => problems(() => readDesign(text));
const first = (text: string): Problem => {
  const [found] = of(text);
  if (found === undefined) throw new Error('no problem');
  return found;
};

describe('a design is read', () => {
  it('from YAML and from JSON alike', () => {
    const yaml = readDesign(design(laminates));
    const json = readDesign(
      '{"format":1,"title":"T","materials":{"ud":{"kind":"ply","E1":"38 GPa","E2":"10 GPa","G12":"3.2 GPa","nu12":0.28,"thickness":"0.25 mm"}},"laminates":{"skin":{"material":"ud","stack":"[0/90]s"}}}',
    );
    expect({ ...json, source: 0 }).toEqual({ ...yaml, source: 0 });
  });
  it('with a byte-order mark and Windows line ends', () => {
    const windows = new TextEncoder().encode(`\uFEFF${design(laminates).replaceAll('\n', '\r\n')}`);
    expect({ ...readDesignBytes(windows), source: 0 }).toEqual({ ...readDesign(design(laminates)), source: 0 });
  });
  it('with quantities in SI', () => {
    expect(readDesign(design(laminates)).materials?.ud).toMatchObject({ E1: 38e9, thickness: 0.25e-3 });
  });
});

describe('what is wrong is said with its place', () => {
  const cases: [what: string, text: string, code: string, line: number, column: number][] = [
    ['an unknown key', design(`${laminates}lods: {}\n`), 'unknown-key', 7, 1],
    ['a missing key', 'format: 1\nlaminates: { a: { stack: [0] } }\n', 'missing-key', 1, 1],
    ['a wrong type', design('laminates: 5\n'), 'wrong-type', 5, 12],
    ['a key given twice', design(`${laminates}title: U\n`), 'duplicate-key', 7, 1],
    ['a tab as indentation', 'format: 1\nlaminates:\n\tskin: {}\n', 'tab', 3, 1],
    ['no YAML at all', design('laminates: {'), 'syntax', 5, 13],
    ['two documents', `${design(laminates)}---\na: 1\n`, 'several-documents', 7, 1],
    [
      'a number without unit',
      design(`${laminates}loads: { a: { laminate: skin, N: [1, 0 N/m, 0 N/m] } }\n`),
      'unit-missing',
      7,
      35,
    ],
    [
      'a wrong dimension',
      design(`${laminates}loads: { a: { laminate: skin, N: [1 MPa, 0 N/m, 0 N/m] } }\n`),
      'unit-mismatch',
      7,
      37,
    ],
    [
      'a misspelled unit',
      design(`${laminates}loads: { a: { laminate: skin, N: [1 kn/m, 0 N/m, 0 N/m] } }\n`),
      'unit-unknown',
      7,
      37,
    ],
    [
      'a name that cannot be one',
      design(`${laminates}threads: { 7up: { linearDensity: 75 tex } }\n`),
      'wrong-type',
      7,
      12,
    ],
    [
      'a number out of range',
      design(`${laminates}threads: { t: { linearDensity: -75 tex } }\n`),
      'out-of-range',
      7,
      32,
    ],
    [
      'a word that is no choice',
      design('laminates: { a: { stack: [0], process: { kind: oven } } }\n'),
      'not-a-choice',
      5,
      48,
    ],
    [
      'an unknown kind of material',
      'format: 1\ntitle: T\nmaterials: { a: { kind: plie } }\nlaminates: { a: { stack: [0] } }\n',
      'not-a-choice',
      3,
      25,
    ],
  ];
  it.each(cases)('%s', (_, text, code, line, column) => {
    expect(first(text)).toMatchObject({ code, where: { line, column } });
  });

  it('all problems of a file at once, in the order of the file', () => {
    const found = of(design('laminates: { a: { stack: [0], oops: 1 } }\nunits: miles\ntargets: 7\n'));
    expect(found.map((problem) => problem.code)).toEqual(['unknown-key', 'not-a-choice', 'wrong-type']);
  });
  it('an unknown key with the nearest right spelling', () => {
    expect(first(design('laminates: { a: { stak: [0], stack: [0] } }\n')).hint).toBe('did you mean `stack`?');
  });
  it('one problem, not two, when a needed key is misspelled', () => {
    expect(of(design('laminates: { a: { stak: [0] } }\n'))).toHaveLength(1);
  });
  it('a key given twice with both places', () => {
    const found = first(design(`${laminates}title: U\n`));
    expect(found.also?.[0]?.where).toMatchObject({ line: 2, column: 1 });
  });
  it('an orientation code without quotes with the remedy', () => {
    expect(first(design('laminates:\n  skin: { material: ud, stack: [0/90]s }\n')).hint).toContain('quotes');
  });
  it('55 where 55 % is meant', () => {
    const text = design(
      `laminates: { a: { material: ud, stack: [0], process: { kind: bag, fibreVolumeFraction: 55 } } }\n`,
    );
    expect(first(text)).toMatchObject({ code: 'out-of-range', hint: 'did you mean `55 %`?' });
  });
  it('a density in g/cm^3 written as kg/m^3', () => {
    expect(first(design(`${laminates}threads: { t: { linearDensity: 75 tex, density: 1.44 kg/m^3 } }\n`)).code).toBe(
      'out-of-range',
    );
  });
  const block = (line: string): string =>
    `format: 1\ntitle: T\nmaterials:\n  ud:\n    kind: ply\n${line}\n    E2: 10 GPa\n    G12: 3 GPa\nlaminates: { a: { stack: [0] } }\n`;
  it.each([
    ['too deep', '      E1: 38 GPa', 6, 7],
    ['too shallow', '  E1: 38 GPa', 7, 5],
  ])('a line indented %s, once, with what is allowed', (_, line, at, column) => {
    const found = of(block(line));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ code: 'syntax', where: { line: at, column } });
    expect(found[0]?.allowed).toContain('one column');
  });
  it('a colon without its space', () => {
    expect(of(block('    E1:38 GPa'))).toMatchObject([
      { code: 'syntax', message: expect.stringContaining('colon of `E1`'), where: { line: 6, column: 5 } },
    ]);
  });
  it('with an excerpt and carets under the fault', () => {
    const text = renderProblems([first(design(`${laminates}lods: {}\n`))], { fileName: 'd.yaml' });
    expect(text).toBe(
      [
        'd.yaml:7:1: error[unknown-key]: unknown key `lods` in the design',
        '   7 | lods: {}',
        '     | ^^^^ did you mean `loads`?',
        '     allowed: format, title, units, notes, materials, threads, laminates, stitching, loads, coupons, targets, tolerances, search',
      ].join('\n'),
    );
  });
});

describe('files that are no designs are refused', () => {
  it('without any laminate', () =>
    expect(first(design('laminates: {}\n'))).toMatchObject({ code: 'missing-key', where: { line: 5, column: 1 } }));
  it.each([
    ['empty', ''],
    ['a comment only', '# nothing\n'],
  ])('%s', (_, text) => expect(first(text).code).toBe('missing-key'));
  it('aliases that unfold without end', () => {
    const bomb = ['a: &a [x, x, x, x, x, x, x, x, x, x]'];
    for (let i = 1; i < 9; i++)
      bomb.push(
        `${'abcdefghi'[i]}: &${'abcdefghi'[i]} [${Array(10)
          .fill(`*${'abcdefghi'[i - 1]}`)
          .join(', ')}]`,
      );
    expect(first(bomb.join('\n')).code).toBe('too-many-aliases');
  });
  it('huge ones, by characters and by bytes', () => {
    expect(first(`# ${'x'.repeat(2 ** 21)}`).code).toBe('too-large');
    expect(problems(() => readDesignBytes(new Uint8Array(2 ** 21)))[0]?.code).toBe('too-large');
  });
  it.each([
    ['Latin-1', new Uint8Array([0x74, 0x3a, 0x20, 0xe9, 0x0a]), 4],
    ['a zero byte', new Uint8Array([0x74, 0x3a, 0x20, 0x00]), 4],
  ])('%s', (_, bytes, column) => {
    expect(problems(() => readDesignBytes(bytes))[0]).toMatchObject({ code: 'not-text', where: { line: 1, column } });
  });
  it('UTF-16', () =>
    expect(problems(() => readDesignBytes(new Uint8Array([0xff, 0xfe, 0x61, 0])))[0]?.code).toBe('not-text'));
  it('names that every object inherits are not taken for entries', () => {
    expect(of(design('laminates:\n  __proto__: { stack: [0] }\n'))[0]?.code).toBe('unknown-key');
    expect(of(design('laminates: { a: { stack: [0], constructor: 1 } }\n'))[0]?.code).toBe('unknown-key');
  });
});
