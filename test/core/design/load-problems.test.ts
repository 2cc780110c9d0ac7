import { assemble, compute, readDesign } from '@selvage/core';
import { describe, expect, it } from 'vitest';
import { dataOf, head, problemsOf, underlined } from './load-support.js';

const on = (laminate: string, rest: string): string => `{ laminate: ${laminate}, ${rest} }`;
const strength = (rest: string): string => on('skin', `N: [1 kN/m, 0 N/m, 0 N/m], strength: { ${rest} }`);

describe('a problem of a load case stands at the key at fault', () => {
  const cases: [what: string, load: string, code: string, underlined: string][] = [
    ['too few moistures', on('skin', 'moisture: [1 %, 2 %]'), 'out-of-range', '[1 %, 2 %]'],
    ['a moisture in grams', on('bent', 'moisture: [1 %, 2 g]'), 'unit-mismatch', 'g'],
    ['a moisture of more than everything', on('bent', 'moisture: [1 %, 2]'), 'out-of-range', '2'],
    ['a moisture that is no number', on('bent', 'moisture: { a: 1 }'), 'wrong-type', '{ a: 1 }'],
    ['moisture on a ply that does not swell', on('plain', 'moisture: 1 %'), 'not-computable', '1 %'],
    ['heat on a ply without expansion', on('plain', 'temperatureChange: -60 K'), 'not-computable', '-60 K'],
    ['a gradient on a ply without expansion', on('plain', 'temperatureGradient: 5 K/mm'), 'not-computable', '5 K/mm'],
    [
      'a force and a strain of one component',
      on('skin', 'N: [1 kN/m, null, null], strain: [0.1 %, null, null]'),
      'contradiction',
      '[0.1 %, null, null]',
    ],
    [
      'a moment and a curvature of one component',
      on('skin', 'M: [null, 1 N, null], curvature: [null, 2 1/m, null]'),
      'contradiction',
      '[null, 2 1/m, null]',
    ],
    ['an unknown criterion', strength('criterion: hashim'), 'not-a-choice', 'hashim'],
    ['an unknown discount', strength('discount: half'), 'not-a-choice', 'half'],
    ['no stiffness left at all', strength('remainingStiffness: 0'), 'out-of-range', '0'],
    ['a ply that loses nothing', strength('remainingStiffness: 1'), 'out-of-range', '1'],
    ['no collapse', strength('collapse: 0'), 'out-of-range', '0'],
    ['an unknown component', strength('envelope: [Nx, Nz]'), 'not-a-choice', 'Nz'],
    ['one component', strength('envelope: [Nx]'), 'out-of-range', '[Nx]'],
    ['one component twice', strength('envelope: [Nx, Nx]'), 'contradiction', '[Nx, Nx]'],
    [
      'five criteria in one figure',
      strength('envelopeCriteria: [puck, puck, puck, puck, puck]'),
      'out-of-range',
      '[puck, puck, puck, puck, puck]',
    ],
    ['an open surface of Tsai-Wu', strength('F12star: -1'), 'out-of-range', '-1'],
    ['an unknown variant of Tsai-Hill', strength('tsaiHill: signs'), 'not-a-choice', 'signs'],
    ['a shear strength in kN', strength('transverseShearStrength: 50 kN'), 'unit-mismatch', 'kN'],
    ['a share above 1', strength('hashinAlpha: 1.2'), 'out-of-range', '1.2'],
    ['an unknown pair of inclinations', strength('puck: aramid'), 'not-a-choice', 'aramid'],
    ['one inclination', strength('puck: [0.3]'), 'out-of-range', '[0.3]'],
    ['a negative inclination', strength('puck: [0.3, -0.1]'), 'out-of-range', '-0.1'],
    ['an inclination beyond S/Yt', strength('puck: [1.7, 0.3]'), 'out-of-range', '[1.7, 0.3]'],
    [
      'Puck wanted for a cloth',
      on('woven', 'N: [1 kN/m, 0 N/m, 0 N/m], strength: { criterion: puck }'),
      'not-computable',
      'puck',
    ],
    [
      'Puck drawn for a cloth',
      on('woven', 'N: [1 kN/m, 0 N/m, 0 N/m], strength: { envelopeCriteria: [hashin, puck] }'),
      'not-computable',
      'puck',
    ],
    ['an unknown key', strength('colapse: 0.2'), 'unknown-key', 'colapse'],
    ['a number for a section', on('skin', 'strength: 2'), 'wrong-type', '2'],
  ];
  it.each(cases)('%s', (_, load, code, stretch) => {
    const [found, ...others] = problemsOf(load);
    expect(others).toEqual([]);
    expect(found?.code).toBe(code);
    expect(found === undefined ? '' : underlined(found)).toBe(stretch);
  });

  it('a list of moistures that does not fit says how many plies there are', () => {
    expect(problemsOf(on('skin', 'moisture: [1 %, 2 %]'))[0]?.message).toContain('the laminate has 8 plies');
  });

  it('all of several load cases at once', () => {
    const more = '  m: { laminate: plain, temperatureChange: 5 K }\n  n: { laminate: nobody }\n';
    expect(problemsOf(on('bent', 'moisture: [1 %]'), more).map(({ code }) => code)).toEqual([
      'out-of-range',
      'not-computable',
      'unknown-name',
    ]);
  });
});

describe('what cannot be judged is named, and the rest is there', () => {
  it('a cloth that Puck cannot take leaves five criteria and a warning', () => {
    const data = dataOf(on('woven', 'N: [1 kN/m, 0 N/m, 0 N/m]'));
    expect(Object.keys(data.failure)).toEqual(['maxStress', 'maxStrain', 'tsaiHill', 'tsaiWu', 'hashin']);
    expect(Object.keys(data.envelope.criteria)).toEqual(['maxStress', 'tsaiWu', 'hashin']);
    expect(
      data.notes.some(({ text }: { text: string }) =>
        /criterion puck is left out.*cloth or mat only \(cloth\)/.test(text),
      ),
    ).toBe(true);
    expect(data.notes.some(({ text }: { text: string }) => /Cloth \(cloth\)/.test(text))).toBe(true);
    const chosen = dataOf(on('woven', 'N: [1 kN/m, 0 N/m, 0 N/m], strength: { puck: [0.15, 0.15] }'));
    expect(Object.keys(chosen.failure)).not.toContain('puck');
  });

  it('a cloth among unidirectional plies is left out of Puck by name, and the rest is judged', () => {
    const mixed = `${head}  mixed: { stack: "[0cloth/0ud/90ud]s" }\nloads:\n  l: `;
    const load = '{ laminate: mixed, N: [50 kN/m, 0 N/m, 0 N/m], strength: { criterion: puck, puck: [0.15, 0.15] } }';
    const { data } = compute(assemble(readDesign(mixed + load)));
    const { failure, progressive, notes } = JSON.parse(JSON.stringify(data)).loads.l;
    expect(failure.puck.ply).toBe(3);
    expect(
      progressive.steps.flatMap(({ plies }: { plies: { name: string }[] }) => plies.map(({ name }) => name)),
    ).toContain('cloth');
    expect(JSON.stringify(notes)).toMatch(/cloth and mat \(cloth\) are left out/);
  });

  it('a prescribed deformation is not followed layer by layer', () => {
    const data = dataOf(on('skin', 'strain: [0.1 %, null, null]'));
    expect(data.progressive).toBeUndefined();
    expect(data.envelope.components).toEqual(['Nx', 'Ny']);
    expect(data.notes.some(({ text }: { text: string }) => /prescribes a deformation/.test(text))).toBe(true);
  });

  it('a laminate without strengths has no strength, and says nothing of it in the notes', () => {
    const data = dataOf(on('plain', 'N: [1 kN/m, 0 N/m, 0 N/m]'));
    expect(data.failure).toEqual({});
    expect(data.envelope).toBeUndefined();
    expect(data.progressive).toBeUndefined();
    expect(data.notes).toEqual([]);
  });

  it('a laminate of more plies than can be followed keeps its first failure', () => {
    const data = dataOf(on('thick', 'M: [1 N, 0 N, 0 N]'));
    expect(data.failure.hashin.ratio).toBeGreaterThan(0);
    expect(data.progressive).toBeUndefined();
    expect(data.notes.some(({ text }: { text: string }) => /204 plies, more than 200/.test(text))).toBe(true);
  });
});
