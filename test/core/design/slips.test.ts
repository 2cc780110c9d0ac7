import { assemble, compute, type Problem, readDesign, SelvageError } from '@selvage/core';
import { describe, expect, it } from 'vitest';

const design = (ply: string, rest: string): string => `format: 1
title: Slips
materials:
  ud: { kind: ply, E1: 140 GPa, E2: 9 GPa, G12: 5 GPa, nu12: 0.3, thickness: 0.2 mm, density: 1550 kg/m^3${ply} }
laminates:
  skin: { material: ud, stack: "[0/90]s" }
${rest}`;

function problemsOf(text: string): readonly Problem[] {
  try {
    compute(assemble(readDesign(text)));
  } catch (error) {
    if (error instanceof SelvageError) return error.problems;
    throw error;
  }
  return [];
}

const strengths = ', strengths: { Xt: 1500 MPa, Xc: 1200 MPa, Yt: 50 MPa, Yc: 200 MPa, S: 70 MPa }';
const load = (what: string): string => `loads:\n  pull: { laminate: skin, ${what} }\n`;

describe('slips of a design file', () => {
  it('a small number without unit is offered the unit in which it is that number, another the usual one', () => {
    const small = problemsOf(design(', expansion: { alpha1: -0.3e-6, alpha2: 28e-6 1/K }', ''));
    expect(small.map(({ hint }) => hint)).toEqual(['write for example `-3e-7 1/K`']);
    const usual = problemsOf(design(', expansion: { alpha1: 28, alpha2: 28e-6 1/K }', ''));
    expect(usual.map(({ hint }) => hint)).toEqual(['write for example `28 1e-6/K`']);
    expect(problemsOf(design(', expansion: { alpha1: -3e-7 1/K, alpha2: 28 1e-6/K }', ''))).toEqual([]);
  });

  it.each([
    ['a strain in 10^-6 written as a number', load('strain: [300, 0, 0]'), '10 %'],
    ['a strain in percent written as a number', load('strain: [0.2, null, null]'), '10 %'],
    ['heat beyond what a laminate sees', load('N: [1 kN/m, 0 N/m, 0 N/m], temperatureChange: -6000 K'), '-500 K'],
  ])('%s is out of range', (_, rest, limit) => {
    const [problem, ...more] = problemsOf(design(', expansion: { alpha1: 0 1/K, alpha2: 28e-6 1/K }', rest));
    expect(problem?.code).toBe('out-of-range');
    expect(problem?.allowed).toContain(limit);
    expect(more).toEqual([]);
  });

  it('an expansion without its 10^-6 and a modulus no solid has are out of range', () => {
    const [hot] = problemsOf(design(', expansion: { alpha1: 0 1/K, alpha2: 29 1/K }', ''));
    expect([hot?.code, hot?.path]).toEqual(['out-of-range', ['materials', 'ud', 'expansion', 'alpha2']]);
    const [stiff] = problemsOf(design('', '').replace('140 GPa', '1e30 GPa'));
    expect([stiff?.code, stiff?.path]).toEqual(['out-of-range', ['materials', 'ud', 'E1']]);
  });

  it('a percentage above its limit is not offered a second percent sign', () => {
    const [problem] = problemsOf(design('', load('N: [1 kN/m, 0 N/m, 0 N/m], moisture: 150 %')));
    expect([problem?.code, problem?.hint]).toEqual(['out-of-range', undefined]);
  });

  it.each(['tsai-wu', 'tsaiwu', 'Tsai-Wu', 'Tsai Wu'])('the criterion %s is offered as tsaiWu', (name) => {
    const text = design(strengths, load(`N: [1 kN/m, 0 N/m, 0 N/m], strength: { criterion: ${name} }`));
    expect(problemsOf(text).map(({ hint }) => hint)).toEqual(['did you mean `tsaiWu`?']);
  });

  it.each(['[1 kN/m, 0 N/m]', '[1 kN/m, 0 N/m, 0 N/m, 0 N/m]'])('N: %s is told that it takes three entries', (N) => {
    const [problem] = problemsOf(design('', load(`N: ${N}`)));
    expect([problem?.code, problem?.allowed]).toEqual([
      'out-of-range',
      'force per width: a list of three, [x, y, xy]; null for a component that follows',
    ]);
  });

  it('a force left open needs a strain from which it follows', () => {
    const [problem, ...more] = problemsOf(design('', load('N: [null, 0 N/m, 0 N/m]')));
    expect([problem?.code, problem?.path, more]).toEqual(['contradiction', ['loads', 'pull', 'N', 0], []]);
    expect(problemsOf(design('', load('N: [null, 0 N/m, 0 N/m], strain: [0.1 %, null, null]')))).toEqual([]);
  });

  it('a target on a ratio says that strengths are missing, and one on null that there is no value', () => {
    const target = (quantity: string): string => `targets:\n  - { quantity: ${quantity}, atLeast: 1 }\n`;
    const pull = load('N: [1 kN/m, 0 N/m, 0 N/m]');
    const [missing] = problemsOf(design('', pull + target('loads.pull.failure.puck.ratio')));
    expect(missing?.message).toContain('a layer of the laminate has no strengths');
    const idle = load('N: [0 N/m, 0 N/m, 0 N/m]');
    const [none] = problemsOf(design(strengths, idle + target('loads.pull.failure.maxStress.ratio')));
    expect(none?.message).toBe('`loads.pull.failure.maxStress.ratio` has no value in this design');
    expect(none?.hint).toContain('nothing sets it a limit');
  });
});
