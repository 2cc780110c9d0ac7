import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chamis,
  halpinTsai,
  halpinTsaiEta,
  inverseRule,
  ruleOfMixtures,
} from '../../../packages/core/src/material/index.js';
import { codesOf, expectClose, expectPrinted } from './phases.js';

const stiff = fc.double({ min: 10, max: 500, noNaN: true });
const soft = fc.double({ min: 0.5, max: 9, noNaN: true });
const inside = fc.double({ min: 0.05, max: 0.95, noNaN: true });

// CLT-25: Kaw, Mechanics of Composite Materials, 2nd ed. 2006, examples 3.3 to 3.8 (recalled, not re-read).
// Full-precision values by an independent script; printed values with the book's own rounding.
describe('glass and epoxy at fibre volume fraction 0.70 (Kaw 2006)', () => {
  const Vf = 0.7;
  const Gf = 85 / (2 * (1 + 0.2));
  const Gm = 3.4 / (2 * (1 + 0.3));

  it('has E1 60.52 GPa and nu12 0.23 by the rule of mixtures', () => {
    expectPrinted(ruleOfMixtures(85, 3.4, Vf), 60.52, 0.005);
    expectClose(ruleOfMixtures(85, 3.4, Vf), 60.52, 1e-9);
    expectClose(ruleOfMixtures(0.2, 0.3, Vf), 0.23, 1e-9);
  });

  it('carries 0.9831 of the load in the fibre', () => {
    expectPrinted((85 * Vf) / ruleOfMixtures(85, 3.4, Vf), 0.9831, 5e-5);
  });

  it('has E2 10.37 GPa and G12 4.014 GPa by the inverse rule', () => {
    expectPrinted(inverseRule(85, 3.4, Vf), 10.37, 0.005);
    expectClose(inverseRule(85, 3.4, Vf), 10.3658536585, 1e-11);
    expectPrinted(inverseRule(Gf, Gm, Vf), 4.014, 0.001);
    expectClose(inverseRule(Gf, Gm, Vf), 4.01322001889, 1e-11);
  });

  it('has E2 20.20 GPa and G12 6.169 GPa by Halpin-Tsai', () => {
    expectPrinted(halpinTsaiEta(85, 3.4, 2), 0.8889, 5e-5);
    expectPrinted(halpinTsai(85, 3.4, Vf, 2), 20.2, 0.005);
    expectClose(halpinTsai(85, 3.4, Vf, 2), 20.2, 1e-9);
    expectPrinted(halpinTsaiEta(Gf, Gm, 1), 0.9288, 5e-5);
    expectPrinted(halpinTsai(Gf, Gm, Vf, 1), 6.169, 0.001);
    expectClose(halpinTsai(Gf, Gm, Vf, 1), 6.16800417564, 1e-11);
  });
});

describe('mixing rules', () => {
  it('give the resin without fibre and the fibre without resin', () => {
    for (const rule of [
      ruleOfMixtures,
      inverseRule,
      chamis,
      (f: number, m: number, v: number) => halpinTsai(f, m, v, 2),
    ]) {
      expectClose(rule(73, 3.2, 0), 3.2);
      expectClose(rule(73, 3.2, 1), 73);
    }
  });

  it('leave equal phases as they are', () => {
    fc.assert(
      fc.property(soft, inside, fc.double({ min: 0, max: 50, noNaN: true }), (P, Vf, xi) => {
        for (const value of [
          ruleOfMixtures(P, P, Vf),
          inverseRule(P, P, Vf),
          chamis(P, P, Vf),
          halpinTsai(P, P, Vf, xi),
        ]) {
          expectClose(value, P);
        }
      }),
    );
  });

  it('make Halpin-Tsai the inverse rule at xi = 0 and the rule of mixtures at large xi', () => {
    fc.assert(
      fc.property(stiff, soft, inside, (Pf, Pm, Vf) => {
        expectClose(halpinTsai(Pf, Pm, Vf, 0), inverseRule(Pf, Pm, Vf), 1e-11);
        expectClose(halpinTsai(Pf, Pm, Vf, 1e10), ruleOfMixtures(Pf, Pm, Vf), 1e-6);
      }),
    );
  });

  it('keep Halpin-Tsai between the two bounds and rising with xi', () => {
    const xi = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(stiff, soft, inside, xi, fc.double({ min: 0.01, max: 10, noNaN: true }), (Pf, Pm, Vf, low, step) => {
        const P = halpinTsai(Pf, Pm, Vf, low);
        expect(P).toBeLessThan(halpinTsai(Pf, Pm, Vf, low + step));
        expect(P).toBeGreaterThanOrEqual(inverseRule(Pf, Pm, Vf) * (1 - 1e-12));
        expect(P).toBeLessThanOrEqual(ruleOfMixtures(Pf, Pm, Vf) * (1 + 1e-12));
      }),
    );
  });

  it('put the square-root form at 1.6 for moduli 4 and 1 at fraction 0.25, by hand', () => {
    expectClose(chamis(4, 1, 0.25), 1.6);
  });

  it('make the square-root form a square fibre in series with resin', () => {
    fc.assert(
      fc.property(stiff, soft, inside, (Pf, Pm, Vf) => {
        const side = Math.sqrt(Vf);
        expectClose(chamis(Pf, Pm, Vf), (Pf * Pm) / (side * Pm + (1 - side) * Pf), 1e-11);
      }),
    );
  });

  it('refuse a fraction outside 0 to 1, a modulus that is not positive and a negative xi', () => {
    expect(codesOf(() => ruleOfMixtures(73, 3.2, 1.001))).toEqual(['out-of-range']);
    expect(codesOf(() => inverseRule(73, 3.2, 1.001))).toEqual(['out-of-range']);
    expect(codesOf(() => ruleOfMixtures(Number.NaN, 3.2, 0.5))).toEqual(['not-a-number']);
    expect(codesOf(() => inverseRule(0, 3.2, 0.5))).toEqual(['out-of-range']);
    expect(codesOf(() => chamis(73, -1, 0.5))).toEqual(['out-of-range']);
    expect(codesOf(() => halpinTsai(73, 3.2, 0.5, -0.1))).toEqual(['out-of-range']);
    expect(codesOf(() => halpinTsai(73, 3.2, 0.5, Number.POSITIVE_INFINITY))).toEqual(['not-a-number']);
  });
});
