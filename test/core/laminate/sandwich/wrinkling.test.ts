import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  deepCoreWrinklingStress,
  wrinklingCoefficientInDesign,
  wrinklingCoefficientInTheory,
  wrinklingDepth,
  wrinklingStress,
} from '../../../../packages/core/src/laminate/sandwich/index.js';
import { evenly, expectNear, problemCode } from '../plies.js';

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

  it('on an isotropic half space is the minimum over the wave length of bending the face and pressing the half space', () => {
    // The half space answers a wave of wave number p with 2 Ec p/((3 - nu)(1 + nu)) per deflection (Allen 1969, ch. 8).
    const stress = (Ef: number, Ec: number, nu: number, t: number, p: number): number =>
      (Ef * t * t * p * p) / 12 + (2 * Ec) / ((3 - nu) * (1 + nu) * p * t);
    fc.assert(
      fc.property(
        fc.double({ min: 1e9, max: 200e9, noNaN: true }),
        fc.double({ min: 1e6, max: 1e9, noNaN: true }),
        evenly(-0.5, 0.5),
        fc.double({ min: 1e-4, max: 3e-3, noNaN: true }),
        (Ef, Ec, nu, t) => {
          let [low, high] = [Math.log(1e-4 / t), Math.log(1e2 / t)];
          for (let i = 0; i < 200; i++) {
            const [p, q] = [low + (high - low) / 3, high - (high - low) / 3];
            if (stress(Ef, Ec, nu, t, Math.exp(p)) > stress(Ef, Ec, nu, t, Math.exp(q))) low = p;
            else high = q;
          }
          expectNear([deepCoreWrinklingStress(Ef, Ec, nu)], [stress(Ef, Ec, nu, t, Math.exp(low))], 1e-9);
        },
      ),
    );
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
