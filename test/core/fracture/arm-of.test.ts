import { describe, expect, it } from 'vitest';
import { type ArmOptions, armOf } from '../../../packages/core/src/fracture/index.js';
import { laminate, respond } from '../../../packages/core/src/laminate/index.js';
import type { Ply } from '../../../packages/core/src/material/index.js';
import { codeOf } from './support.js';

/** Invented, in the range of a unidirectional glass ply. */
const ply = (angle: number, rest: Partial<Ply> = {}): Ply => ({
  name: 'ud',
  angle,
  thickness: 0.25e-3,
  E1: 40e9,
  E2: 10e9,
  G12: 4e9,
  nu12: 0.28,
  strengths: { Xt: 1000e6, Xc: 600e6, Yt: 40e6, Yc: 120e6, S: 70e6 },
  notes: [],
  sources: [],
  ...rest,
});
const ud = laminate([ply(0), ply(0), ply(0), ply(0)]);
const t = 1e-3;

describe('the arm of a laminate', () => {
  it('of one direction bends like a wide plate, or like a narrow strip', () => {
    const nu21 = (0.28 * 10) / 40;
    expect(armOf(ud).bendingStiffness).toBeCloseTo(((40e9 / (1 - 0.28 * nu21)) * t ** 3) / 12, 9);
    expect(armOf(ud, { across: 'free' }).bendingStiffness).toBeCloseTo((40e9 * t ** 3) / 12, 9);
    expect(armOf(ud, { across: 'free' }).axialStiffness / (40e9 * t)).toBeCloseTo(1, 9);
    expect(armOf(ud).shearStiffness / ((5 / 6) * 4e9 * t)).toBeCloseTo(1, 9);
    expect(armOf(ud).thickness).toBeCloseTo(t, 12);
  });

  it('of two plies bends about its neutral plane', () => {
    // A stiff lower and a soft upper ply, narrow, no Poisson: neutral plane and EI of a composite beam.
    const two = laminate([ply(0, { nu12: 0 }), ply(90, { nu12: 0 })]);
    const h = 0.25e-3;
    const [s1, s2] = [40e9 * h, 10e9 * h];
    const z0 = (s1 * (-h / 2) + s2 * (h / 2)) / (s1 + s2);
    const EI = (s1 + s2) * (h ** 2 / 12) + s1 * (-h / 2 - z0) ** 2 + s2 * (h / 2 - z0) ** 2;
    for (const across of ['held', 'free'] as const) {
      expect(armOf(two, { across }).bendingStiffness / EI).toBeCloseTo(1, 9);
      expect(armOf(two, { across }).axialStiffness / (s1 + s2)).toBeCloseTo(1, 9);
    }
  });

  it('of angle plies may shear while it bends: the moment that a curvature takes with strain and twist across held', () => {
    for (const angles of [
      [45, -45],
      [30, -30, 0],
      [45, -45, 45, -45],
      [0, 90],
    ]) {
      const stack = laminate(angles.map((angle) => ply(angle)));
      const { M } = respond(stack, { strain: [null, 0, null], curvature: [1, 0, 0] });
      const { N } = respond(stack, { strain: [1, 0, null], curvature: [0, 0, 0] });
      expect(armOf(stack).bendingStiffness / M[0]).toBeCloseTo(1, 9);
      expect(armOf(stack).axialStiffness / N[0]).toBeCloseTo(1, 9);
    }
  });

  it('breaks along the fibre at strength over modulus', () => {
    // Fibres only: pressed along the fibre, the Poisson strain across would crack it a little sooner.
    const { failureStrain } = armOf(ud, { across: 'free', breaking: 'fibres' });
    expect(failureStrain!.tension).toBeCloseTo(1000 / 40e3, 9);
    expect(failureStrain!.compression).toBeCloseTo(600 / 40e3, 9);
  });

  it('breaks across the fibre first where there are plies across, unless only fibres count', () => {
    const cross = laminate([ply(0), ply(90), ply(90), ply(0)]);
    const first = armOf(cross, { across: 'free' });
    // The 90 plies reach to a quarter of the thickness from the middle: half the surface strain.
    expect(first.failureStrain!.tension).toBeLessThan(0.0085);
    expect(first.failureStrain!.tension).toBeGreaterThan(0.0075);
    expect(first.notes.some(({ text }) => text.includes('between fibres'))).toBe(true);
    const fibres = armOf(cross, { across: 'free', breaking: 'fibres' });
    expect(fibres.failureStrain!.tension).toBeCloseTo(1000 / 40e3, 3);
    expect(fibres.notes.some(({ text }) => text.includes('between fibres'))).toBe(false);
  });

  it('stretches the face along the crack', () => {
    // A 90 ply outside on one side only: along the crack it cracks soon, away from it it is only pressed.
    const lopsided = laminate([ply(0), ply(0), ply(0), ply(90)]);
    const strain = (options: ArmOptions) => armOf(lopsided, options).failureStrain!;
    expect(strain({ crackFace: 'bottom' }).tension).toBeLessThan(0.006);
    expect(strain({ crackFace: 'top' }).tension).toBeGreaterThan(0.015);
  });

  it('takes both directions of a cloth for fibres', () => {
    const cloth = ply(45, { E2: 40e9, G12: 4e9, strengths: { Xt: 400e6, Xc: 300e6, Yt: 400e6, Yc: 300e6, S: 1e3 } });
    expect(armOf(laminate([cloth])).failureStrain!.tension).toBeLessThan(1e-5);
    const fibres = armOf(laminate([cloth]), { breaking: 'fibres' }).failureStrain!;
    expect(fibres.tension).toBeGreaterThan(5e-3);
    expect(fibres.tension).toBeLessThan(0.1);
  });

  it('gives through the thickness like its plies one upon the other', () => {
    expect(armOf(ud).E3 / 10e9).toBeCloseTo(1, 9);
    expect(armOf(ud, { E3: 7e9 }).E3).toBe(7e9);
    const mixed = laminate([ply(0), ply(0, { E3: 1e9 })]);
    expect(armOf(mixed).E3 / (2 / (1 / 10e9 + 1 / 1e9))).toBeCloseTo(1, 9);
    expect(armOf(ud).notes.some(({ text }) => text.includes('2 (1 + nu23) G23'))).toBe(true);
  });

  it('has no failure strain where a ply has no strengths, and says so; a core may go without', () => {
    const { strengths: _left, ...bare } = ply(0);
    const arm = armOf(laminate([ply(0), bare]));
    expect(arm.failureStrain).toBeUndefined();
    expect(arm.notes.some(({ text }) => text.includes('has no strengths'))).toBe(true);
    const core: Ply = { ...bare, name: 'core', core: true, E1: 1e8, E2: 1e8, G12: 4e7, nu12: 0.25, thickness: 2e-3 };
    expect(armOf(laminate([ply(0), core, ply(0)])).failureStrain).toBeDefined();
  });

  it('refuses a modulus through the thickness of 0', () => {
    expect(codeOf(() => armOf(ud, { E3: 0 }))).toBe('out-of-range');
    expect(codeOf(() => armOf(ud, { E3: Number.NaN }))).toBe('out-of-range');
  });

  it('refuses plies that are not admissible', () => {
    expect(codeOf(() => armOf(laminate([ply(0, { nu12: 5 })])))).toBe('not-admissible');
  });
});
