import { describe, expect, it } from 'vitest';
import { arealMass, corePly } from '../../../packages/core/src/material/index.js';
import { codesOf, expectClose } from './phases.js';

// The foam of the demonstration scenario: 130 kg/m3, E 0.13, G 0.048 GPa (invented).
const foam = { name: 'foam-130', thickness: 6e-3, E: 130e6, G: 48e6, density: 130 };

describe('a core', () => {
  it('is a ply isotropic in its plane that keeps its shear modulus through the thickness apart', () => {
    const core = corePly({ ...foam, nu: 0.3 });
    expect(core.core).toBe(true);
    expect(core.E1).toBe(130e6);
    expect(core.E2).toBe(130e6);
    expectClose(core.G12, 50e6);
    expect(core.G13).toBe(48e6);
    expect(core.G23).toBe(48e6);
    expectClose(arealMass(core), 0.78);
    expect(core.notes).toEqual([]);
  });

  it('takes its Poisson ratio from E and G when it is left out, and says so', () => {
    const core = corePly(foam);
    expectClose(core.nu12, 130 / 96 - 1);
    expectClose(core.G12, 48e6);
    expect(core.notes.map(({ level }) => level)).toEqual(['assumption']);
  });

  it('is refused without nu when E and G cannot be of one isotropic material', () => {
    expect(codesOf(() => corePly({ ...foam, E: 120e6, G: 40e6 }))).toEqual(['missing-key']);
    expect(codesOf(() => corePly({ ...foam, E: 119.9e6, G: 40e6 }))).toEqual([]);
    expect(codesOf(() => corePly({ ...foam, G: 20e6, nu: 0.3 }))).toEqual([]);
    expect(codesOf(() => corePly({ ...foam, G: 80e6 }))).toEqual(['missing-key']);
  });

  it('warns of a shear modulus above the modulus, as only a honeycomb has', () => {
    const levels = (G: number): string[] => corePly({ ...foam, nu: 0.3, G }).notes.map(({ level }) => level);
    expect([levels(1.01 * foam.E), levels(0.99 * foam.E)]).toEqual([['warning'], ['assumption']]);
  });

  it('keeps its modulus and shear strength through the thickness, and refuses what is not positive', () => {
    expect(corePly({ ...foam, E3: 200e6, shearStrength: 1.5e6 })).toMatchObject({ E3: 200e6, shearStrength: 1.5e6 });
    expect(codesOf(() => corePly({ ...foam, E3: 0 }))).toEqual(['not-admissible']);
    expect(codesOf(() => corePly({ ...foam, shearStrength: 0 }))).toEqual(['out-of-range']);
  });

  it('is refused with moduli, thickness or density that are not positive', () => {
    expect(codesOf(() => corePly({ ...foam, E: 0 }))).toEqual(['not-admissible']);
    expect(codesOf(() => corePly({ ...foam, G: -1 }))).toEqual(['not-admissible']);
    expect(codesOf(() => corePly({ ...foam, thickness: 0 }))).toEqual(['out-of-range']);
    expect(codesOf(() => corePly({ ...foam, density: 0 }))).toEqual(['out-of-range']);
    expect(codesOf(() => corePly({ ...foam, nu: 1 }))).toEqual(['not-admissible']);
  });
});
