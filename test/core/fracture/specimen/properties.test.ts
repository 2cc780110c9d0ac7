import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BridgingRow, SpecimenResult } from '../../../../packages/core/src/fracture/index.js';
import { simulateDcb, simulateEnf } from '../../../../packages/core/src/fracture/index.js';
import { armOf, mm } from './support.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const plain = fc.record({
  h: between(0.6, 4).map((h) => h * mm),
  E: between(15e9, 130e9),
  G: between(2e9, 6e9),
  E3: between(5e9, 12e9),
});

/** A law that yields and then tightens, as bends over a face do. */
const tightening = fc
  .record({
    rise: between(0.01, 0.1),
    F: between(5, 60),
    dip: between(0.5, 1.2),
    high: between(1.3, 4),
    left: between(0, 0.3),
  })
  .map(({ rise, F, dip, high, left }) => ({
    opening: [0, rise, 2 * rise, 3 * rise, 3 * rise, 8 * rise].map((w) => w * mm),
    force: [0, F, dip * F, high * F, left * F, 0],
  }));

/** A law that may stretch, drop, pull out, or begin with slack. Openings in mm. */
const plainCurve = fc
  .record({
    slack: fc.constantFrom(0, 0, 0.05),
    rise: between(0.01, 0.3),
    F: between(5, 200),
    share: between(0, 0.9),
    slide: between(0.01, 1.5),
  })
  .map(({ slack, rise, F, share, slide }) => {
    const top = slack + rise;
    return {
      opening: [0, ...(slack > 0 ? [slack] : []), top, top, top + slide].map((w) => w * mm),
      force: [0, ...(slack > 0 ? [0] : []), F, share * F, 0],
    };
  });

const curve = fc.oneof({ weight: 3, arbitrary: plainCurve }, { weight: 1, arbitrary: tightening });

const rows = fc
  .tuple(curve, fc.array(fc.record({ place: between(12, 78), count: between(0.5, 8) }), { maxLength: 14 }))
  .map(([law, all]) =>
    all.map(
      ({ place, count }): BridgingRow => ({
        position: place * mm,
        penetrations: count,
        curve: law,
        failure: 'threadAtCrack',
      }),
    ),
  );

function expectSound({
  states,
  events,
  resistance,
  peakForce,
  verdict,
  energyError,
  zoneLength,
}: SpecimenResult): void {
  expect(energyError).toBeLessThan(0.005);
  let last = states[0];
  for (const state of states) {
    for (const value of Object.values(state)) expect(Number.isFinite(value)).toBe(true);
    const { work, elastic, bond, thread, friction = 0, released = 0 } = state;
    expect(Math.abs(work - elastic - bond - thread - friction - released)).toBeLessThanOrEqual(0.005 * work);
    expect(state.displacement).toBeGreaterThanOrEqual(last?.displacement ?? 0);
    expect(state.crackLength).toBeGreaterThanOrEqual(last?.crackLength ?? 0);
    expect(thread).toBeGreaterThanOrEqual((last?.thread ?? 0) - 1e-12);
    expect(released).toBeGreaterThanOrEqual(last?.released ?? 0);
    expect(elastic).toBeGreaterThanOrEqual(0);
    last = state;
  }
  for (const { load, displacement, crackLength } of events) {
    for (const value of [load, displacement, crackLength]) expect(Number.isFinite(value)).toBe(true);
  }
  for (const { growth, byLoad, byArea } of resistance)
    for (const value of [growth, byLoad, byArea]) expect(Number.isFinite(value)).toBe(true);
  expect(Number.isFinite(peakForce) && Number.isFinite(zoneLength)).toBe(true);
  expect(verdict.margin ?? 1).toBeGreaterThan(0);
}

describe('every simulated specimen', () => {
  it('pulled open closes its energy balance to 0.5 %, goes one way, and is the same each time', () => {
    fc.assert(
      fc.property(plain, plain, rows, between(100, 1500), (one, two, all, bondToughness) => {
        const specimen = {
          arms: [armOf(one), armOf(two, { tension: 0.015, compression: 0.01 })] as const,
          width: 20 * mm,
          length: 110 * mm,
          crackLength: 30 * mm,
          bondToughness,
          rows: all,
          until: { crackLength: 70 * mm },
        };
        const result = simulateDcb(specimen);
        expectSound(result);
        expect(simulateDcb(specimen)).toEqual(result);
      }),
      { numRuns: 40 },
    );
  });

  it('bent closes its energy balance to 0.5 %, with and without friction', () => {
    fc.assert(
      fc.property(
        plain,
        plain,
        rows,
        between(300, 3000),
        fc.constantFrom(0, 0.3),
        fc.constantFrom(undefined, 50 * mm),
        (one, two, all, bondToughness, friction, loadSpan) => {
          const result = simulateEnf({
            arms: [armOf(one), armOf(two, { tension: 0.02, compression: 0.02 })],
            width: 20 * mm,
            span: 100 * mm,
            overhang: 10 * mm,
            ...(loadSpan !== undefined && { loadSpan }),
            friction,
            crackLength: 30 * mm,
            bondToughness,
            rows: all,
          });
          expectSound(result);
        },
      ),
      { numRuns: 40 },
    );
  });
});
