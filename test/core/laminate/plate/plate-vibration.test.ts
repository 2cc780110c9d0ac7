import { describe, expect, it } from 'vitest';
import { laminate, stiffness } from '../../../../packages/core/src/laminate/index.js';
import { plateVibration } from '../../../../packages/core/src/laminate/plate/index.js';
import { transverseShear } from '../../../../packages/core/src/laminate/shear/index.js';
import { expectNear, graphite, plyOf, problemCode, stackOf } from '../plies.js';

const material = { ...graphite, density: 1600 };
const crossPly = stackOf(material, '[0/90]s', 2e-4);

describe('vibration of a simply supported plate', () => {
  it('of a thin square isotropic plate is (π/a²) √(D/m), its modes standing as m² + n²', () => {
    const stack = laminate([plyOf({ E1: 70e9, E2: 70e9, G12: 70e9 / 2.6, nu12: 0.3, density: 2700 }, 0, 1e-3)]);
    const { modes, notes } = plateVibration(stack, { a: 0.5, b: 0.5 }, { modes: 6, rotaryInertia: false });
    const first = (Math.PI / 0.25) * Math.sqrt(stiffness(stack).D[0][0]! / 2.7);
    expectNear(
      modes.map(({ thin }) => thin),
      [1, 2.5, 2.5, 4, 5, 5].map((ratio) => ratio * first),
      1e-12,
    );
    expect(modes.map(({ m, n }) => m * m + n * n)).toEqual([2, 5, 5, 8, 10, 10]);
    expect(notes.at(-1)?.text).toContain('water');
  });

  it('has its modes in order, as many as wanted and none left out', () => {
    const { modes } = plateVibration(crossPly, { a: 0.9, b: 0.1 }, { modes: 25 });
    expect(modes.length).toBe(25);
    const values = modes.map(({ withShear }) => withShear);
    expect(values).toEqual(values.toSorted((one, other) => one - other));
    expect(modes.slice(0, 4).map(({ m, n }) => [m, n])).toEqual([
      [1, 1],
      [2, 1],
      [3, 1],
      [4, 1],
    ]);
  });

  it('scales with the inverse square of the sides, and with the root of the inverse mass', () => {
    const frequency = (a: number, arealMass: number) =>
      plateVibration(crossPly, { a, b: a }, { arealMass, rotaryInertia: false }).modes[0]!.thin;
    expectNear([frequency(0.4, 2), frequency(0.2, 8)], [frequency(0.2, 2) / 4, frequency(0.2, 2) / 2], 1e-12);
    expectNear(
      [frequency(0.2, 1600 * 8e-4)],
      [plateVibration(crossPly, { a: 0.2, b: 0.2 }, { rotaryInertia: false }).modes[0]!.thin],
      1e-12,
    );
  });

  it('with shear is that of a beam in a wide plate: ω² = k⁴ D/(m (1 + k² D/H)) without rotary inertia', () => {
    const stack = stackOf({ ...material, G13: 5e9, G23: 3e9 }, '[0/90/0]', 5e-3);
    const { withShear } = plateVibration(stack, { a: 0.2, b: 1e4 }, { rotaryInertia: false }).modes[0]!;
    const k2 = (Math.PI / 0.2) ** 2;
    const D = stiffness(stack).D[0][0]!;
    const square = (k2 * k2 * D) / (1600 * 15e-3 * (1 + (k2 * D) / transverseShear(stack).H[0][0]));
    expectNear([2 * Math.PI * withShear], [Math.sqrt(square)], 1e-7);
  });

  it('counts rotary inertia ply by ply: Σ ρ (t z² + t³/12)', () => {
    const [light, heavy] = [
      plyOf({ ...material, density: 100 }, 0, 4e-3),
      plyOf({ ...material, density: 3000 }, 90, 1e-3),
    ];
    const stack = laminate([heavy, light, heavy]);
    const I0 = 0.4 + 6;
    const I2 = 100 * (64e-9 / 12) + 2 * 3000 * (1e-3 * 2.5e-3 ** 2 + 1e-9 / 12);
    const [a, b] = [0.05, 0.04];
    const wave = (Math.PI / a) ** 2 + (Math.PI / b) ** 2;
    const without = plateVibration(stack, { a, b }, { rotaryInertia: false }).modes[0]!;
    const found = plateVibration(stack, { a, b }).modes[0]!;
    expectNear([found.thin], [without.thin / Math.sqrt(1 + (I2 * wave) / I0)], 1e-12);
    expect(found.withShear).toBeLessThan(without.withShear);
  });

  it('takes an even density for rotary inertia where the plies give none', () => {
    const bare = laminate(crossPly.plies.map(({ density: _, ...ply }) => ply));
    const given = plateVibration(bare, { a: 0.02, b: 0.02 }, { arealMass: 1600 * 8e-4 });
    const dense = plateVibration(crossPly, { a: 0.02, b: 0.02 });
    expectNear([given.modes[0]!.thin], [dense.modes[0]!.thin], 1e-12);
  });

  it('refuses plies without density and values that cannot be', () => {
    const bare = stackOf(graphite, '[0/90]s', 2e-4);
    const plate = { a: 0.2, b: 0.2 };
    expect(problemCode(() => plateVibration(bare, plate))).toBe('missing-key');
    expect(problemCode(() => plateVibration(bare, plate, { arealMass: 0 }))).toBe('out-of-range');
    expect(problemCode(() => plateVibration(crossPly, { a: 0, b: 1 }))).toBe('out-of-range');
    for (const modes of [0, 1.5, 26])
      expect(problemCode(() => plateVibration(crossPly, plate, { modes }))).toBe('out-of-range');
    const noH = [
      [1, 0],
      [0, -1],
    ] as const;
    expect(problemCode(() => plateVibration(crossPly, plate, { H: noH }))).toBe('out-of-range');
    const bad = laminate([plyOf({ ...material, G12: -1e9 }, 0, 1e-3)]);
    expect(problemCode(() => plateVibration(bad, plate))).toBe('not-admissible');
  });
});
