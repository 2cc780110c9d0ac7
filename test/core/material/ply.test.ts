import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { admissibility, arealMass, ply } from '../../../packages/core/src/material/index.js';
import { codesOf, expectClose, problemsOf } from './phases.js';

// The contract's minimal ply.
const given = { E1: 181e9, E2: 10.3e9, G12: 7.17e9, nu12: 0.28, thickness: 0.125e-3 };

describe('a ply given directly', () => {
  it('warns of moduli that were meant in GPa, once', () => {
    const soft = ply({ E1: 140, E2: 9.5, G12: 5, nu12: 0.3, thickness: 0.2e-3 });
    expect(soft.notes).toEqual([
      expect.objectContaining({ level: 'warning', text: expect.stringContaining('E1 = 140 Pa') }),
    ]);
    expect(ply(soft).notes).toHaveLength(1);
    expect(ply({ ...soft, E1: 140e9, E2: 9.5e9, G12: 5e9, notes: [] }).notes).toEqual([]);
  });

  it('lies at angle 0 under the name ply and keeps what it was given', () => {
    expect(ply(given)).toEqual({ ...given, name: 'ply', angle: 0, notes: [], sources: [] });
    const full = {
      ...given,
      name: 'ud',
      angle: -45,
      density: 1600,
      strengths: { Xt: 1500e6, Xc: 1500e6, Yt: 40e6, Yc: 246e6, S: 68e6 },
      expansion: { alpha1: 0.02e-6, alpha2: 22.5e-6 },
      fibreVolumeFraction: 0.6,
      sources: ['jones-1999'],
      notes: [],
    };
    expect(ply(full)).toEqual(full);
  });

  it('weighs density times thickness, or nothing known', () => {
    expectClose(arealMass(ply({ ...given, density: 1600 })), 0.2);
    expect(arealMass(ply(given))).toBeUndefined();
  });

  it('is refused when a modulus is not positive', () => {
    for (const key of ['E1', 'E2', 'G12', 'G13', 'G23']) {
      expect(codesOf(() => ply({ ...given, [key]: 0 }))).toEqual(['not-admissible']);
      expect(codesOf(() => ply({ ...given, [key]: Number.NaN }))).toEqual(['not-a-number']);
    }
  });

  it('is refused when nu12 breaks sqrt(E1/E2), naming the bound', () => {
    const bound = Math.sqrt(181 / 10.3);
    expect(codesOf(() => ply({ ...given, nu12: bound * 1.001 }))).toEqual(['not-admissible']);
    expect(codesOf(() => ply({ ...given, nu12: -bound * 1.001 }))).toEqual(['not-admissible']);
    expect(codesOf(() => ply({ ...given, nu12: bound * 0.999 }))).toEqual([]);
    expect(problemsOf(() => ply({ ...given, nu12: 5 }))[0]?.message).toBe(
      'nu12 = 5 must lie between -4.19199 and 4.19199, both excluded',
    );
  });

  it('is refused when nu23 leaves -1 to 1 - 2 nu12^2 E2/E1', () => {
    const bound = 1 - (2 * 0.28 ** 2 * 10.3) / 181;
    expect(codesOf(() => ply({ ...given, nu23: bound * 1.001 }))).toEqual(['not-admissible']);
    expect(codesOf(() => ply({ ...given, nu23: -1 }))).toEqual(['not-admissible']);
    expect(codesOf(() => ply({ ...given, nu23: bound * 0.999 }))).toEqual([]);
    // Where the bound is far below 1: 1 - 2 * 0.25 * 0.8 = 0.6.
    const stout = { ...given, E1: 10e9, E2: 8e9, nu12: 0.5 };
    expect(codesOf(() => ply({ ...stout, nu23: 0.599 }))).toEqual([]);
    expect(codesOf(() => ply({ ...stout, nu23: 0.601 }))).toEqual(['not-admissible']);
  });

  it('is refused for lengths, masses, fractions and strengths out of range, all named at once', () => {
    const problems = problemsOf(() =>
      ply({
        ...given,
        thickness: 0,
        density: -1,
        fibreVolumeFraction: 1.001,
        voidFraction: 1.001,
        fibreArealMass: -1,
        strengths: { Xt: 1, Xc: 1, Yt: 0, Yc: 1, S: 1 },
      }),
    );
    expect(problems.map(({ code }) => code)).toEqual(Array(6).fill('out-of-range'));
    expect(problems.map(({ message }) => message.split(' ')[0])).toEqual([
      'thickness',
      'density',
      'fibreVolumeFraction',
      'voidFraction',
      'fibreArealMass',
      'Yt',
    ]);
  });

  it('is refused for an angle or expansion that is not a number', () => {
    expect(codesOf(() => ply({ ...given, angle: Number.NaN }))).toEqual(['not-a-number']);
    const expansion = { alpha1: Number.POSITIVE_INFINITY, alpha2: 0 };
    expect(codesOf(() => ply({ ...given, expansion }))).toEqual(['not-a-number']);
  });

  it('is admissible exactly when its plane-stress stiffness is positive definite', () => {
    const modulus = fc.double({ min: 1, max: 300, noNaN: true });
    fc.assert(
      fc.property(modulus, modulus, fc.double({ min: -20, max: 20, noNaN: true }), (E1, E2, nu12) => {
        const determinant = 1 / (E1 * E2) - (nu12 / E1) ** 2;
        fc.pre(Math.abs(determinant * E1 * E2) > 1e-9);
        expect(admissibility({ E1, E2, G12: 1, nu12 }).length === 0).toBe(determinant > 0);
      }),
    );
  });
});
