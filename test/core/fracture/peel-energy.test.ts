import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { simulatePeel } from '../../../packages/core/src/fracture/index.js';
import { arm, breaking, coupon, fading, numbersIn, openBalance, rowsOf } from './peel-support.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const laws = fc.oneof(
  fc
    .record({ peak: between(5, 150), at: between(0.05e-3, 0.6e-3), left: between(0, 0.9), tail: between(1.2, 6) })
    .map(({ peak, at, left, tail }) => breaking(peak, at, left * peak, tail * at)),
  fc.record({ peak: between(2, 60), end: between(0.2e-3, 2e-3) }).map(({ peak, end }) => fading(peak, end)),
  fc.record({ peak: between(5, 80), end: between(0.1e-3, 0.6e-3) }).map(({ peak, end }) => ({
    curve: { opening: [0, end / 4, end], force: [0, 0, peak] },
    failure: 'threadAtAnchor' as const,
  })),
  // Yields and then tightens.
  fc
    .record({
      F: between(5, 40),
      dip: between(0.5, 1.2),
      high: between(1.3, 3),
      left: between(0, 0.3),
      rise: between(0.02e-3, 0.1e-3),
    })
    .map(({ F, dip, high, left, rise }) => ({
      curve: {
        opening: [0, rise, 2 * rise, 3 * rise, 3 * rise, 8 * rise],
        force: [0, F, dip * F, high * F, left * F, 0],
      },
      failure: 'threadAtAnchor' as const,
    })),
);

const specimens = fc
  .record({
    thickness: between(0.3e-3, 2e-3),
    E: between(8e9, 120e9),
    G: between(80, 2000),
    law: laws,
    spacing: between(2e-3, 8e-3),
    penetrations: between(1, 12),
    strain: fc.option(between(0.01, 0.05), { nil: undefined }),
  })
  .map(({ thickness, E, G, law, spacing, penetrations, strain }) => {
    const one = arm(
      thickness,
      E,
      strain === undefined ? {} : { failureStrain: { tension: strain, compression: strain } },
    );
    return coupon({
      arms: [one, one],
      bondToughness: G,
      rows: rowsOf(3, 0.053, spacing, law, penetrations),
      length: 0.06 + 4 * spacing,
    });
  });

describe('the energy balance of a peel', () => {
  it('closes to 0.5 % for any arms and rows', () => {
    fc.assert(
      fc.property(specimens, (specimen) => {
        const result = simulatePeel(specimen);
        expect(result.energyError).toBeLessThan(0.005);
        expect(openBalance(result)).toBeLessThan(0.005);
        expect(numbersIn(result).every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  it('is not met by any other toughness: more toughness takes more work in proportion once the arms stand upright', () => {
    const spent = (G: number) => {
      const { resistance } = simulatePeel(coupon({ bondToughness: G, length: 0.3 }));
      return resistance.at(-1)!.byArea;
    };
    expect(spent(800) / spent(400)).toBeCloseTo(2, 2);
  });
});
