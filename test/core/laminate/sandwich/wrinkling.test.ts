import examples from '@selvage/reference-data/examples/sandwich.json' with { type: 'json' };
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  deepCoreWrinklingStress,
  wrinklingCoefficientInDesign,
  wrinklingCoefficientInTheory,
  wrinklingDepth,
  wrinklingStress,
} from '../../../../packages/core/src/laminate/sandwich/index.js';
import { expectNear, problemCode } from '../plies.js';

const kinds: Record<string, (inputs: { readonly nu?: number }) => Record<string, number>> = {
  'wrinkling-coefficient': () => ({ c: wrinklingStress({ Ef: 1, Ec: 1, Gc: 1 }, wrinklingCoefficientInTheory) }),
  'wrinkling-deep-core': ({ nu = Number.NaN }) => ({ B1: deepCoreWrinklingStress(1, 1, nu) }),
};

describe.each(examples)('$source, $where ($access): $title', ({ kind, inputs, values }) => {
  const computed = kinds[kind]!(inputs);
  it.each(Object.entries(values))('%s is as printed and as the independent script has it', (key, value) => {
    expect(Math.abs(computed[key]! - value!.value)).toBeLessThanOrEqual(value!.tolerance);
    expect(Math.abs(computed[key]! / value!.oracle - 1)).toBeLessThan(1e-6);
  });
});

const anyModuli = fc.record({
  Ef: fc.double({ min: 1e9, max: 200e9, noNaN: true }),
  Ec: fc.double({ min: 1e6, max: 1e9, noNaN: true }),
  Gc: fc.double({ min: 1e6, max: 1e9, noNaN: true }),
});

describe('wrinkling of a face', () => {
  it('is the minimum of the energy over wave length and depth, at the stated depth', () => {
    fc.assert(
      fc.property(anyModuli, fc.double({ min: 1e-4, max: 3e-3, noNaN: true }), (moduli, t) => {
        const { Ef, Ec, Gc } = moduli;
        // Hoff & Mautner's energy as stress; the wave that is best for a depth follows from π² Ef t²/(12 l²) = Ec l²/(π² w t).
        const energy = (w: number): number => 2 * Math.sqrt(((Ef * t * t) / 12) * (Ec / (w * t))) + (Gc * w) / (3 * t);
        const depth = wrinklingDepth(moduli, t);
        const lowest = wrinklingStress(moduli, wrinklingCoefficientInTheory);
        expectNear([energy(depth)], [lowest], 1e-12);
        expect(energy(depth * 1.001)).toBeGreaterThan(lowest);
        expect(energy(depth * 0.999)).toBeGreaterThan(lowest);
      }),
    );
  });

  it('takes 0.5 for the coefficient, the usual value in design (common practice; Hoff & Mautner 1945 recommend it)', () => {
    expect(wrinklingCoefficientInDesign).toBe(0.5);
    expectNear([wrinklingStress({ Ef: 8, Ec: 27, Gc: 64 })], [12], 1e-12);
  });

  it('on an isotropic half space lies a tenth to a sixth below that of the linear decay, which is an upper bound by energy', () => {
    for (const nu of [0.25, 0.3]) {
      const [Ef, Ec] = [60e9, 100e6];
      const decay = wrinklingStress({ Ef, Ec, Gc: Ec / (2 * (1 + nu)) }, wrinklingCoefficientInTheory);
      const ratio = deepCoreWrinklingStress(Ef, Ec, nu) / decay;
      expect(ratio).toBeGreaterThan(0.83);
      expect(ratio).toBeLessThan(0.9);
    }
  });

  it('scales on a deep core with Ef^(1/3) Ec^(2/3)', () => {
    expectNear([deepCoreWrinklingStress(8, 27, 0.2)], [18 * deepCoreWrinklingStress(1, 1, 0.2)], 1e-12);
  });

  it('refuses moduli, coefficients and ratios that cannot be', () => {
    const moduli = { Ef: 1, Ec: 1, Gc: 1 };
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(problemCode(() => wrinklingStress({ ...moduli, Ec: bad }))).toBe('out-of-range');
      expect(problemCode(() => wrinklingStress(moduli, bad))).toBe('out-of-range');
      expect(problemCode(() => wrinklingDepth(moduli, bad))).toBe('out-of-range');
      expect(problemCode(() => deepCoreWrinklingStress(bad, 1, 0.3))).toBe('out-of-range');
    }
    for (const nu of [-1, 0.501, Number.NaN]) {
      expect(problemCode(() => deepCoreWrinklingStress(1, 1, nu))).toBe('out-of-range');
    }
  });
});
