import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { laminate, stiffness } from '../../../../packages/core/src/laminate/index.js';
import { ellipseBlister, stripBlister } from '../../../../packages/core/src/laminate/plate/index.js';
import { anyLaminate, expectNear, graphite, plyOf, problemCode, reversed, stackOf } from '../plies.js';
import { buckledEnergy, stripInElements } from './strip-film.js';

const film = stackOf(graphite, '[0/90/0]', 2e-4);

describe('a strip blister', () => {
  /** Energy per width, less that of the unbuckled film: e0 beyond buckling goes into bending at constant force. */
  const energy = (A11: number, e0: number, criticalStrain: (l: number) => number, l: number): number => {
    const e = criticalStrain(l);
    return l * A11 * ((e * e) / 2 + e * (e0 - e) - (e0 * e0) / 2);
  };

  it('releases what its energy loses per length, by numerical derivative', () => {
    const A11 = stiffness(film).A[0][0]!;
    const critical = (l: number) => -stripBlister(film, { length: l }).criticalStrain;
    for (const [length, strain] of [
      [0.03, -0.004],
      [0.04, -0.0025],
      [0.02, -0.01],
    ] as const) {
      const { G } = stripBlister(film, { length, strain });
      const h = 1e-5 * length;
      const up = energy(A11, -strain, critical, length + h);
      const down = energy(A11, -strain, critical, length - h);
      expectNear([G], [-(up - down) / (2 * h)], 1e-8);
    }
  });

  it('releases 296.5 J/m² in the example of 60 GPa, 0.5 mm, 20 mm and 0.4 %', () => {
    // Independent script, formula checked there by numerical differentiation; formula of Chai, Babcock & Knauss 1981.
    const plane = laminate([plyOf({ E1: 60e9, E2: 60e9, G12: 25e9, nu12: 0 }, 0, 0.5e-3)]);
    const { G, criticalStrain } = stripBlister(plane, { length: 0.02, strain: -0.004 });
    expectNear([G], [4.941466e-6 * 60e9 * 1e-3], 1e-6);
    expectNear([criticalStrain], [-0.002056168], 1e-6);
  });

  it('grows at the strain at which G is the toughness', () => {
    const { growthStrain } = stripBlister(film, { length: 0.02, toughness: 250 });
    const { G } = stripBlister(film, { length: 0.02, strain: growthStrain! });
    expectNear([G], [250], 1e-9);
    expect(stripBlister(film, { length: 0.02 })).not.toHaveProperty('growthStrain');
  });

  it('releases nothing before it buckles or under tension', () => {
    const { criticalStrain } = stripBlister(film, { length: 0.02 });
    for (const strain of [0.01, 0, criticalStrain * 0.999]) {
      expect(stripBlister(film, { length: 0.02, strain }).G).toBe(0);
    }
    expect(stripBlister(film, { length: 0.02, strain: criticalStrain * 1.001 }).G).toBeGreaterThan(0);
  });

  it('buckles as the whole film of u, v and w in finite elements, whichever side lies on the base', () => {
    for (const code of ['[45/-45]', '[30/-30]', '[0/90]', '[45/-45/45/-45]', '[45]', '[20/65/0]']) {
      const stack = stackOf(graphite, code, 1.25e-4);
      const { criticalN, criticalStrain } = stripBlister(stack, { length: 0.02 });
      // Cubic elements for w: eight of them are a few parts in ten thousand above the exact load.
      const bound = stripInElements(stiffness(stack), 0.02, 8);
      expect(-criticalN / bound).toBeLessThan(1);
      expect(-criticalN / bound).toBeGreaterThan(0.999);
      expectNear([criticalStrain], [criticalN / stiffness(stack).A[0][0]!], 1e-12);
      expectNear([stripBlister(reversed(stack), { length: 0.02 }).criticalN], [criticalN], 1e-9);
    }
  });

  it('buckles and grows as the least energy of u, v and w tells, at any strain', () => {
    fc.assert(
      fc.property(anyLaminate, fc.double({ min: 1.05, max: 8, noNaN: true }), (stack, times) => {
        const length = 100 * stack.thickness;
        const s = stiffness(stack);
        const { criticalStrain } = stripBlister(stack, { length });
        const e0 = -times * criticalStrain;
        const { G } = stripBlister(stack, { length, strain: -e0 });
        const h = 1e-4 * length;
        const slope = (buckledEnergy(s, length + h, e0) - buckledEnergy(s, length - h, e0)) / (2 * h);
        expectNear([G], [-slope], 1e-6, (s.A[0][0]! * e0 * e0) / 2);
        expectNear([buckledEnergy(s, length, -criticalStrain)], [0], 1e-9, length * s.A[0][0]! * e0 * e0);
      }),
      { numRuns: 50 },
    );
  });

  it('shears a laminated film as it bends, which lets [45/-45] buckle at half the strain of a film held from it', () => {
    const stack = stackOf(graphite, '[45/-45]', 1.25e-4);
    const { A, D } = stiffness(stack);
    const held = (4 * Math.PI ** 2 * D[0][0]!) / 0.02 ** 2 / A[0][0]!;
    const { criticalStrain } = stripBlister(stack, { length: 0.02 });
    expect(-criticalStrain / held).toBeLessThan(0.5);
    // Finite elements of an independent script: 2.457e-4.
    expectNear([criticalStrain], [-2.457e-4], 2e-4);
  });

  it.each(['[0/90]', '[45/-45]', '[30/-30]', '[0/45]', '[0/90/0]'])(
    'buckles earlier than a long ellipse of %s in it',
    (code) => {
      const stack = stackOf(graphite, code, 1.25e-4);
      const { strain } = ellipseBlister(stack, { a: 0.01, b: 0.03, strain: [-1e-3, 0, 0] });
      const { criticalStrain } = stripBlister(stack, { length: 0.02 });
      expect(criticalStrain / strain[0]).toBeLessThan(1);
      expect(criticalStrain / strain[0]).toBeGreaterThan(0.75);
    },
  );

  it('says of an unsymmetric film that it stretches and shears, and of a symmetric one nothing', () => {
    const texts = (code: string) =>
      stripBlister(stackOf(graphite, code, 1e-4), { length: 0.02 })
        .notes.map(({ text }) => text)
        .join();
    expect(texts('[0/90]')).toContain('bending stretches and shears them');
    expect(texts('[0/90/0]')).not.toContain('bending stretches and shears them');
  });

  it('says what it supposes, and warns of a short one', () => {
    expect(stripBlister(film, { length: 0.02 }).notes.map(({ level }) => level)).toEqual(['assumption']);
    expect(stripBlister(film, { length: 0.011 }).notes.at(-1)?.text).toContain('18 thicknesses long; below 20');
    const notes = (length: number) => stripBlister(film, { length }).notes.length;
    expect([notes(20.1 * film.thickness), notes(19.9 * film.thickness)]).toEqual([1, 2]);
    expect(stripBlister(film, { length: 0.02 }).sources).toEqual([
      'chai-babcock-knauss-1981',
      'selvage-2026-derivation',
    ]);
  });

  it('refuses length, strain and toughness that cannot be', () => {
    expect(problemCode(() => stripBlister(film, { length: 0 }))).toBe('out-of-range');
    expect(problemCode(() => stripBlister(film, { length: 1, strain: Number.NaN }))).toBe('out-of-range');
    for (const toughness of [0, -1, Number.POSITIVE_INFINITY]) {
      expect(problemCode(() => stripBlister(film, { length: 1, toughness }))).toBe('out-of-range');
    }
    const bad = laminate([plyOf({ ...graphite, G12: -1e9 }, 0, 1e-3)]);
    expect(problemCode(() => stripBlister(bad, { length: 1 }))).toBe('not-admissible');
  });
});

describe('an elliptic blister', () => {
  const strain = [-1e-3, 2e-4, 3e-4] as const;

  it('buckles in a clamped strip when it is slender: 4π² D/(2b)² for pressure across, no more than a third above it at 3 to 1', () => {
    const b = 0.01;
    const isotropic = laminate([plyOf({ E1: 70e9, E2: 70e9, G12: 35e9, nu12: 0 }, 0, 5e-4)]);
    const D = stiffness(isotropic).D[0][0]!;
    const at = (ratio: number) => -ellipseBlister(isotropic, { a: ratio * b, b, strain: [0, -1e-3, 0] }).N[1];
    const strip = (4 * Math.PI ** 2 * D) / (2 * b) ** 2;
    // An ellipse lies inside the strip of its width: it buckles later, less so the longer it is.
    expect(at(1)).toBeGreaterThan(at(2));
    expect(at(2)).toBeGreaterThan(at(3));
    expect(at(3)).toBeGreaterThan(strip);
    // As an independent bound, the strip as wide as the ellipse at half its length.
    expect(at(3)).toBeLessThan(strip / 0.75);
  });

  it('buckles as a circle under even compression at 14.68 D/R², where one term would give 16', () => {
    const isotropic = laminate([plyOf({ E1: 70e9, E2: 70e9, G12: 35e9, nu12: 0 }, 0, 5e-4)]);
    const D = stiffness(isotropic).D[0][0]!;
    const { N } = ellipseBlister(isotropic, { a: 0.02, b: 0.02, strain: [-1e-3, -1e-3, 0] });
    const k = (-N[0] * 4e-4) / D;
    expect(k).toBeLessThan(16);
    // First zero of J1 squared, 3.83170597² (Bessel function tables).
    expectNear([k], [3.8317059702 ** 2], 1e-6);
  });

  it('lies below the upper bound of the one-term formula, by energy', () => {
    // One term (1 - ξ² - η²)²: Nx/a² + Ny/b² = 12 D11/a⁴ + 8 (D12 + 2 D66)/(a² b²) + 12 D22/b⁴, from docs/theory/plates.md.
    const { D, A } = stiffness(film);
    const [a, b] = [0.02, 0.03];
    const found = ellipseBlister(film, { a, b, strain: [-1e-3, -1e-3, 0] });
    const N = [A[0][0]! + A[0][1]!, A[0][1]! + A[1][1]!].map((value) => value * 1e-3);
    const one = (12 * D[0][0]!) / a ** 4 + (8 * (D[0][1]! + 2 * D[2][2]!)) / (a * b) ** 2 + (12 * D[1][1]!) / b ** 4;
    const bound = one / (N[0]! / a ** 2 + N[1]! / b ** 2);
    expect(found.multiplier).toBeLessThan(bound);
  });

  it('does not change when plies, axes and strain are turned together, and mirrors with every angle', () => {
    const stack = stackOf(graphite, '[30/-45/0]', 2e-4);
    const one = ellipseBlister(stack, { a: 0.02, b: 0.03, strain });
    const quarter = laminate(stack.plies.map((ply) => ({ ...ply, angle: ply.angle + 90 })));
    const turned = ellipseBlister(quarter, { a: 0.03, b: 0.02, strain: [strain[1], strain[0], -strain[2]] });
    const opposite = laminate(stack.plies.map((ply) => ({ ...ply, angle: -ply.angle })));
    const mirrored = ellipseBlister(opposite, { a: 0.02, b: 0.03, strain: [strain[0], strain[1], -strain[2]] });
    expectNear([turned.multiplier, mirrored.multiplier], [one.multiplier, one.multiplier], 1e-6);
  });

  it('of a circle does not change when plies and strain are turned by any angle', () => {
    const [c, s] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
    const one = ellipseBlister(film, { a: 0.02, b: 0.02, strain: [-1e-3, 0, 0] });
    const tilted = laminate(film.plies.map((ply) => ({ ...ply, angle: ply.angle + 30 })));
    const turned = ellipseBlister(tilted, { a: 0.02, b: 0.02, strain: [-1e-3 * c * c, -1e-3 * s * s, -2e-3 * c * s] });
    expectNear([turned.multiplier], [one.multiplier], 1e-6);
  });

  it('buckles under shear alone, of either sign alike when the plies are along and across', () => {
    const load = (gamma: number) => ellipseBlister(film, { a: 0.02, b: 0.02, strain: [0, 0, gamma] }).multiplier;
    expectNear([load(1e-3)], [load(-1e-3)], 1e-9);
  });

  it('scales with t² and the inverse square of the axes', () => {
    const at = (thickness: number, size: number) =>
      ellipseBlister(stackOf(graphite, '[0/45]', thickness), { a: size, b: 2 * size, strain }).multiplier;
    expectNear([at(2e-4, 0.02), at(4e-4, 0.01)], [4 * at(1e-4, 0.02), 64 * at(1e-4, 0.02)], 1e-9);
  });

  it('says what it supposes, and warns of a slender one', () => {
    const round = ellipseBlister(film, { a: 0.02, b: 0.02, strain });
    expect(round.notes.map(({ level }) => level)).toEqual(['assumption', 'assumption']);
    expectNear(
      round.strain,
      strain.map((value) => value * round.multiplier),
      1e-12,
    );
    const texts = (a: number, b: number) =>
      ellipseBlister(film, { a, b, strain })
        .notes.map(({ text }) => text)
        .join();
    expect(texts(0.05, 0.01)).toContain('5.0 to 1; beyond 3');
    expect(texts(0.0302, 0.01)).toContain('beyond 3');
    expect(texts(0.01, 0.0302)).toContain('beyond 3');
    expect(texts(0.0298, 0.01)).not.toContain('beyond 3');
  });

  it('refuses tension, a strain that is no number and axes that cannot be', () => {
    const circle = { a: 0.02, b: 0.02 };
    for (const none of [
      [1e-3, 1e-3, 0],
      [0, 0, 0],
      [Number.NaN, 0, 0],
    ] as const) {
      expect(problemCode(() => ellipseBlister(film, { ...circle, strain: none }))).toBe('out-of-range');
    }
    expect(problemCode(() => ellipseBlister(film, { a: 0, b: 1, strain }))).toBe('out-of-range');
    const bad = laminate([plyOf({ ...graphite, G12: -1e9 }, 0, 1e-3)]);
    expect(problemCode(() => ellipseBlister(bad, { ...circle, strain }))).toBe('not-admissible');
  });
});
