import { describe, expect, it } from 'vitest';
import { arealMass, laminate } from '../../../packages/core/src/laminate/index.js';
import { graphite, plyOf, problemCode } from './plies.js';

const ply = plyOf(graphite, 0, 0.25e-3);

describe('a laminate', () => {
  it('is as thick as its plies together', () => {
    expect(laminate([ply, { ...ply, thickness: 0.75e-3 }]).thickness).toBe(1e-3);
  });

  it('gathers the notes and sources of its plies once', () => {
    const noted = { ...ply, notes: [{ level: 'warning', text: 'dry' } as const], sources: ['jones-1999'] };
    const stack = laminate([noted, ply, noted]);
    expect(stack.notes).toEqual([{ level: 'warning', text: 'dry' }]);
    expect(stack.sources).toEqual(['jones-1999']);
  });

  it('needs a ply', () => {
    expect(problemCode(() => laminate([]))).toBe('missing-key');
  });

  it('refuses angles that are not finite and thicknesses that are not above zero', () => {
    expect(problemCode(() => laminate([{ ...ply, angle: Number.NaN }]))).toBe('out-of-range');
    for (const thickness of [0, -1e-4, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(problemCode(() => laminate([{ ...ply, thickness }]))).toBe('out-of-range');
    }
  });
});

describe('areal mass', () => {
  const known = { ...ply, density: 1600, fibreArealMass: 0.25, resinArealMass: 0.15 };

  it('adds up densities times thicknesses, fibres and resin', () => {
    const mass = arealMass(laminate([known, known]));
    expect(mass.total).toBeCloseTo(2 * 1600 * 0.25e-3, 12);
    expect(mass.fibre).toBeCloseTo(0.5, 12);
    expect(mass.resin).toBeCloseTo(0.3, 12);
  });

  it('is absent where a ply does not know it', () => {
    expect(arealMass(laminate([known, ply]))).toEqual({});
    expect(arealMass(laminate([{ ...ply, density: 1600 }]))).toEqual({ total: 0.4 });
  });

  it('takes a core as free of fibre and resin', () => {
    const core = { ...ply, thickness: 5e-3, density: 80, core: true };
    expect(arealMass(laminate([known, core, known]))).toMatchObject({ fibre: 0.5, resin: 0.3 });
  });
});
