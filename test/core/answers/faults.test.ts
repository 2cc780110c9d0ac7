import { describe, expect, it } from 'vitest';
import { checkAnswers, readAnswers } from '../../../packages/core/src/answers/index.js';
import { assemble, readDesign } from '../../../packages/core/src/design/index.js';
import { renderProblems, SelvageError } from '../../../packages/core/src/problem/index.js';

const model = assemble(
  readDesign(`format: 1
title: two laminates
materials:
  ud: { kind: ply, E1: 40 GPa, E2: 8 GPa, G12: 4 GPa, nu12: 0.26, thickness: 0.5 mm }
laminates:
  three: { material: ud, stack: "[0/30/-45]" }
  cross: { material: ud, stack: "[0/90]" }
loads:
  pull: { laminate: three, N: [1000 N/m, 0 N/m, 0 N/m] }
`),
);

/** What is said of a sheet: codes, and the text as printed. */
function faultsOf(text: string): { readonly codes: readonly string[]; readonly printed: string } {
  try {
    checkAnswers(model, readAnswers(text));
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    return { codes: error.problems.map(({ code }) => code), printed: renderProblems(error.problems) };
  }
  return { codes: [], printed: '' };
}

const one = (entry: string): string => `answers:\n  - { ${entry} }\n`;

describe('a sheet of answers that cannot be read', () => {
  it.each([
    ['', 'missing-key', 'the file is empty'],
    ['answers: []\n', 'missing-key', '`answers` is empty'],
    ['answers:\n', 'wrong-type', 'a list of answers'],
    ['answer: []\n', 'unknown-key', 'did you mean `answers`?'],
    ['answers:\n\t- {}\n', 'tab', 'a tab'],
    ['{}\n', 'missing-key', 'missing `answers` in the sheet of answers'],
    [one('value: 3 N'), 'missing-key', 'missing `quantity` in entry 1 of answers'],
    [one('quantity: three.A11, valu: 3 N'), 'unknown-key', 'did you mean `value`?'],
    [one('quantity: three.A11, value: [3]'), 'wrong-type', 'a number, with its unit'],
    [one('quantity: three.A11, value: 3 N/m, unit: N/m'), 'contradiction', 'has its unit already'],
    [one('quantity: three.A11, value: 3'), 'unit-missing', 'units: N/mm'],
    [one('quantity: three.A11, value: 3, unit: kN/mn'), 'unit-unknown', 'units for a force per length'],
    [one('quantity: three.A11, value: 3, unit: GPa'), 'unit-mismatch', '`GPa` is a modulus'],
    [one('quantity: three.A11, value: 3 GPa'), 'unit-mismatch', 'a force per length'],
    [one('quantity: three.A11, value: "1,5 N/m"'), 'not-a-number', 'a decimal point'],
    [one('quantity: three.A11, value: many, unit: N/m'), 'not-a-number', 'does not begin with a number'],
    [one('quantity: three.A11, value: 3·10⁹'), 'unit-missing', 'units: N/mm'],
    [one('quantity: pull.κz, value: 3 1/m'), 'unknown-name', 'did you mean `pull.kappa_x`?'],
    [one('quantity: pull.sigma1, value: 3 MPa'), 'unknown-name', '`pull.sigma1` can be 9 quantities'],
    [one('quantity: pull.σ1, value: 3 MPa'), 'unknown-name', 'loads.pull.plies.1.top.sigma1'],
    [one('quantity: three.A111, value: 3 N/m'), 'unknown-name', 'did you mean `three.A11`?'],
    [one('quantity: laminates.thre.A11, value: 3 N/m'), 'unknown-name', 'did you mean `laminates.three.A11`?'],
    [
      one('quantity: laminates.three.plies.9.Qbar11, value: 3 GPa'),
      'unknown-name',
      'after `laminates.three.plies`: 1, 2, 3',
    ],
    [one('quantity: A11, value: 3 N/m'), 'unknown-name', 'laminates.three.A11, laminates.cross.A11'],
    [
      'answers:\n  - { quantity: three.A11, value: 3 N/m }\n  - { quantity: three.A11, value: 4 N/m }\n',
      'duplicate-key',
      'first answered here',
    ],
    [
      'answers:\n  - { quantity: three.A11, value: 3 N/m }\n  - { quantity: laminates.three.A11, value: 4 N/m }\n',
      'duplicate-key',
      '`laminates.three.A11` is answered twice',
    ],
  ])('%j: %s', (text, code, words) => {
    const { codes, printed } = faultsOf(text);
    expect(codes).toContain(code);
    expect(printed).toContain(words);
  });

  it.each([
    'quantity: three.A11, value: 3, unit: GPa',
    'quantity: three.A11, value: 3 GPa',
    'quantity: three.A11, value: −3×10⁹ GPa',
    'quantity: three.A11, value: 3·10^9, unit: GPa',
  ])('puts the carets under the unit of { %s }', (entry) => {
    const [, line = '', carets = ''] = faultsOf(one(entry)).printed.split('\n');
    expect(carets.indexOf('^')).toBe(line.indexOf('GPa'));
    expect(carets.trimEnd().length).toBe(line.indexOf('GPa') + 3);
  });

  it('says all that is wrong at once, in the order of the file', () => {
    const { codes } = faultsOf(
      'answers:\n  - { quantity: three.A11, value: 3 }\n  - { quantity: nothing, value: 3 N }\n  - { quantity: three.D11, value: 3 N }\n',
    );
    expect(codes).toEqual(['unit-missing', 'unknown-name', 'unit-mismatch']);
  });

  it('keeps the digits as they were written', () => {
    const { entries } = readAnswers(
      'answers:\n  - { quantity: a, value: 45.20, unit: mm }\n  - { quantity: b, value: 1.50e+3 N }\n',
    );
    expect(entries.map(({ value }) => value)).toEqual(['45.20', '1.50e+3 N']);
  });

  it('reads bytes and refuses those that are not UTF-8', () => {
    expect(readAnswers(new TextEncoder().encode(one('quantity: a, value: 1'))).entries).toHaveLength(1);
    expect(() => readAnswers(new Uint8Array([0xff, 0xfe, 0x61]))).toThrow(/UTF-16/);
  });
});

describe('the name of a quantity', () => {
  const keyOf = (name: string, value: string): string | undefined =>
    checkAnswers(model, readAnswers(one(`quantity: "${name}", value: ${value}`))).answers[0]?.key;

  it.each([
    ['three.A11', '1 N/m', 'laminates.three.A11'],
    ['cross.plies.2.Qbar11', '1 Pa', 'laminates.cross.plies.2.Qbar11'],
    ['eps0_x', '1', 'loads.pull.eps0_x'],
    ['plies.3.top.sigma1', '1 Pa', 'loads.pull.plies.3.top.sigma1'],
    ['pull.κx', '1·10⁻³ 1/mm', 'loads.pull.kappa_x'],
    ['pull.ε⁰x', '−1', 'loads.pull.eps0_x'],
    ['ε0_x', '1', 'loads.pull.eps0_x'],
    ['cross.plies.2.Q̄11', '1 Pa', 'laminates.cross.plies.2.Qbar11'],
    ['plies.3.top.σ₁', '1 Pa', 'loads.pull.plies.3.top.sigma1'],
    ['three.νxy', '1', 'laminates.three.nuxy'],
    ['three.νxy,b', '1', 'laminates.three.nuxyb'],
    ['three.Q11', '1 Pa', 'laminates.three.plies.1.Q11'],
    ['pull.3.top.τ12', '1 Pa', 'loads.pull.plies.3.top.tau12'],
    ['three.plies.2.z_k', '1 m', 'laminates.three.plies.2.z_k'],
    ['laminates.three.inPlane.Ex', '1 Pa', 'laminates.three.Ex'],
    ['laminates.three.flexural.nuxy', '1', 'laminates.three.nuxyb'],
    ['laminates.three.A.0.0', '1 N/m', 'laminates.three.A.0.0'],
  ])('%s may leave out what is clear', (name, value, key) => {
    expect(keyOf(name, value)).toBe(key);
  });
});
