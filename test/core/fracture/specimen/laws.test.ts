import { describe, expect, it } from 'vitest';
import { simulateDcb, simulateEnf } from '../../../../packages/core/src/fracture/index.js';
import { bridgingLaw } from '../../../../packages/core/src/stitch/index.js';
import { penetration, plain } from '../../stitch/bridging/support.js';
import { armOf, cloth, mm } from './support.js';

const arm = armOf(cloth);
const rowsOf = (angle: number, beddingIn: number, anchorEfficiency: number) => {
  const input = penetration({ parameters: { ...plain, beddingIn, anchorEfficiency } });
  const curve = angle === 0 ? bridgingLaw(input) : bridgingLaw({ ...input, path: { angle } });
  return Array.from({ length: 18 }, (_, i) => ({
    position: (52.5 + 5 * i) * mm,
    penetrations: 5,
    curve,
    failure: curve.failure,
  }));
};

describe('laws of the library in specimens', () => {
  it.each([
    [0, 0.6],
    [0.5, 0.6],
    [0, 1],
  ])('bridge a double cantilever: bedding-in %f, anchor efficiency %f', (beddingIn, anchorEfficiency) => {
    const rows = rowsOf(0, beddingIn, anchorEfficiency);
    const { energyError, events, resistance } = simulateDcb({
      arms: [arm, arm],
      width: 20 * mm,
      length: 150 * mm,
      crackLength: 50 * mm,
      bondToughness: 400,
      rows,
      until: { crackLength: 100 * mm },
    });
    expect(energyError).toBeLessThan(0.001);
    expect(events.filter(({ kind }) => kind === rows[0]?.failure).length).toBeGreaterThan(3);
    expect(Math.max(...resistance.map(({ byLoad }) => byLoad))).toBeGreaterThan(600);
  });

  it.each([
    [90, 0],
    [90, 0.5],
    [60, 0],
  ])('bridge a bent specimen: path at %d degrees, bedding-in %f', (angle, beddingIn) => {
    const rows = rowsOf(angle, beddingIn, 0.6);
    const bare = {
      arms: [arm, arm] as const,
      width: 20 * mm,
      span: 200 * mm,
      loadSpan: 100 * mm,
      crackLength: 50 * mm,
      bondToughness: 900,
    };
    const { energyError, peakForce } = simulateEnf({ ...bare, rows });
    expect(energyError).toBeLessThan(0.001);
    expect(peakForce).toBeGreaterThan(1.05 * simulateEnf({ ...bare, rows: [] }).peakForce);
  });
});
