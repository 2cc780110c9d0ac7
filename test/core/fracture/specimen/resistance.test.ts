import { describe, expect, it } from 'vitest';
import { simulateDcb, simulateEnf } from '../../../../packages/core/src/fracture/index.js';
import { resistanceOf } from '../../../../packages/core/src/fracture/specimen/resistance.js';
import { slidingPair } from '../../../../packages/core/src/fracture/specimen/sliding-pair.js';
import { armOf, cloth, expectNear, mm, rowsOf } from './support.js';

describe('the resistance curve', () => {
  const grown = [
    { crackLength: 1, byLoad: 5, work: 1, stored: 1, released: 0 },
    { crackLength: 2, byLoad: 6, work: 7, stored: 2, released: 0 },
    { crackLength: 2, byLoad: 9, work: 10, stored: 5, released: 0 },
  ];

  it('ends at the last state, with the area of the last piece', () => {
    expect(resistanceOf(grown, 1)).toEqual([
      { growth: 0, byLoad: 5, byArea: 5 },
      { growth: 1, byLoad: 9, byArea: 5 },
    ]);
  });

  it('ends where a last jump began, and where growth is cut off beyond its balance', () => {
    const jump = { crackLength: 4, byLoad: 3, work: 10, stored: 1, released: 2 };
    expect(resistanceOf([...grown, jump], 1).map(({ growth, byLoad }) => [growth, byLoad])).toEqual([
      [0, 5],
      [1, 9],
    ]);
    expect(resistanceOf(grown, 1, false)).toHaveLength(1);
    expect(resistanceOf(grown.slice(0, 1), 1)).toEqual([]);
  });

  it('reaches what is read where an arm breaks', () => {
    const weak = armOf(cloth, { tension: 0.006, compression: 0.006 });
    const { events, states, resistance } = simulateDcb({
      arms: [weak, weak],
      width: 20 * mm,
      length: 150 * mm,
      crackLength: 50 * mm,
      bondToughness: 400,
      rows: rowsOf(52 * mm, 5 * mm, 18),
    });
    const broken = events.at(-1);
    expect(broken?.kind).toBe('arm');
    expectNear(resistance.at(-1)?.byLoad ?? 0, broken?.byLoad ?? 1, 1e-9);
    expectNear(resistance.at(-1)?.growth ?? 0, (states.at(-1)?.crackLength ?? 0) - 50 * mm, 1e-9);
  });

  it('of a bent specimen leaves out where the load is near: the bond reads as it is', () => {
    const arm = armOf(cloth);
    const bent = { arms: [arm, arm] as const, width: 20 * mm, span: 100 * mm, bondToughness: 1200, rows: [] };
    const { resistance, states } = simulateEnf({ ...bent, crackLength: 40 * mm });
    expect(resistance.length).toBeGreaterThan(5);
    for (const { byLoad } of resistance) expectNear(byLoad, 1200, 0.01);
    // Up to three decay lengths before the load, not less; states go on to the load.
    const near = 50 * mm - 3 / slidingPair([arm, arm]).decay;
    expect(40 * mm + (resistance.at(-1)?.growth ?? 0)).toBeLessThanOrEqual(near);
    expect(40 * mm + (resistance.at(-1)?.growth ?? 0)).toBeGreaterThan(near - 1 * mm);
    expect(states.at(-1)?.crackLength).toBeGreaterThan(49.9 * mm);
    // Between two loads, too, once the first is passed.
    const two = simulateEnf({ ...bent, loadSpan: 40 * mm, crackLength: 20 * mm });
    const read = two.resistance.map(({ growth }) => 20 * mm + growth);
    expect(read.some((a) => a > 35 * mm)).toBe(true);
    expect(read.every((a) => a >= 30 * mm || a <= 30 * mm - 3 / slidingPair([arm, arm]).decay)).toBe(true);
  });
});
