import { describe, expect, it } from 'vitest';
import { simulatePeel } from '../../../packages/core/src/fracture/index.js';
import { arm, breaking, coupon, fading, numbersIn, openBalance, rowsOf, thread } from './peel-support.js';

const last = <T>(list: readonly T[]): T => list.at(-1)!;
const meanOf = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;

describe('a peel without rows', () => {
  const G = 500;
  const result = simulatePeel(coupon({ length: 0.3 }));

  it('ends at a load of G b/2', () => {
    expect(last(result.states).load / ((G * 0.025) / 2)).toBeCloseTo(1, 3);
  });

  it('has the toughness of its bond by load and by area all the way, though the load is higher at the start', () => {
    for (const { byLoad, byArea } of result.resistance) {
      expect(byLoad / G).toBeCloseTo(1, 3);
      expect(byArea / G).toBeCloseTo(1, 2);
    }
    expect(result.peakForce).toBeGreaterThan((1.2 * G * 0.025) / 2);
  });

  it('peels half as far as the grips move, once the arms stand upright', () => {
    const [one, two] = [result.states.at(-8)!, last(result.states)];
    const grown = two.crackLength - one.crackLength;
    expect((two.displacement - one.displacement) / (2 * grown)).toBeCloseTo(1, 2);
  });

  it('bends its arms to the surface strain √(3 G/(E h)) at the front', () => {
    expect(last(result.states).armStrain).toBeCloseTo(Math.sqrt((3 * G) / (20e9 * 0.6e-3)), 3);
  });

  it('fails in the bond, and would next break an arm where that has a failure strain', () => {
    expect(result.verdict).toEqual({ first: 'bond', load: result.events[0]?.load });
    const limited = [arm(0.6e-3, 20e9, { failureStrain: { tension: 0.03, compression: 0.03 } })] as const;
    const { verdict } = simulatePeel(coupon({ arms: [limited[0], limited[0]] }));
    expect(verdict).toMatchObject({ first: 'bond', next: 'arm' });
    expect(verdict.margin).toBeGreaterThan(1);
  });

  it('is the inextensible elastica on a rigid bond: P from M²/2EI = P at the front', () => {
    const { states } = simulatePeel(coupon({ arms: [thread(), thread()], length: 0.3 }));
    expect(Math.abs(last(states).load / ((G * 0.025) / 2) - 1)).toBeLessThan(1e-4);
  });
});

describe('short stiff arms', () => {
  // Small deflections: G = P² (a + χ)²/(b² D), χ² = D/S + 2 √(D/k), k = 2 E3/h: Williams 1989, recalled; equal arms, both released.
  it('start like a double cantilever beam', () => {
    const stiff = arm(6e-3, 60e9);
    const { bendingStiffness: D, shearStiffness: S, E3, thickness } = stiff;
    const chi = Math.sqrt(D / S + 2 * Math.sqrt((D * thickness) / (2 * E3)));
    const { events } = simulatePeel(coupon({ arms: [stiff, stiff], bondToughness: 50 }));
    const expected = (0.025 * Math.sqrt(50 * D)) / (0.05 + chi);
    expect(events[0]!.kind).toBe('bond');
    expect(events[0]!.load / expected).toBeCloseTo(1, 3);
  });
});

describe('a peel with rows', () => {
  it('comes to G0 + N W in the steady state of dense weak rows', () => {
    const spacing = 0.5e-3;
    const law = fading(4, 0.4e-3);
    const rows = rowsOf(170, 0.052, spacing, law, 5);
    const work = (4 * 0.4e-3) / 2;
    const steady = 500 + (5 / (0.025 * spacing)) * work;
    const result = simulatePeel(coupon({ rows, length: 0.14, mostRows: 170 }));
    const late = result.resistance.filter(({ growth }) => growth > 0.05 && growth < 0.08);
    expect(late.length).toBeGreaterThan(50);
    expect(meanOf(late.map(({ byLoad }) => byLoad)) / steady).toBeCloseTo(1, 1.7);
    expect(meanOf(late.map(({ byArea }) => byArea)) / steady).toBeCloseTo(1, 1.7);
  });

  const rows = rowsOf(4, 0.055, 0.005, breaking());
  const result = simulatePeel(coupon({ rows, length: 0.12 }));

  it('breaks its rows in order, each at nearly the load of the last', () => {
    const broken = result.events.filter(({ kind }) => kind === 'threadAtCrack');
    expect(broken.map(({ row }) => row)).toEqual([0, 1, 2, 3]);
    for (const { load } of broken) expect(load / broken[0]!.load).toBeCloseTo(1, 2);
  });

  it('jumps at constant displacement when a row breaks, and sets energy free then', () => {
    const { states } = result;
    const drops = states.filter((state, i) => i > 0 && state.displacement === states[i - 1]!.displacement);
    expect(drops.length).toBe(4);
    for (let i = 1; i < states.length; i++) {
      expect(states[i]!.displacement).toBeGreaterThanOrEqual(states[i - 1]!.displacement);
      expect(states[i]!.crackLength).toBeGreaterThanOrEqual(states[i - 1]!.crackLength);
      expect(states[i]!.released ?? 0).toBeGreaterThanOrEqual(states[i - 1]!.released ?? 0);
    }
    expect(last(states).released).toBeGreaterThan(0);
  });

  it('loses in a broken row the area under its curve', () => {
    const { curve } = breaking();
    let area = 0;
    for (let i = 1; i < curve.opening.length; i++) {
      area += ((curve.force[i]! + curve.force[i - 1]!) / 2) * (curve.opening[i]! - curve.opening[i - 1]!);
    }
    expect(last(result.states).thread / (4 * 6 * area)).toBeCloseTo(1, 6);
  });

  it('closes its energy balance to 0.5 %', () => {
    expect(result.energyError).toBeLessThan(0.005);
    expect(openBalance(result)).toBeLessThan(0.005);
  });

  it('is the same every time, and finite throughout', () => {
    const again = simulatePeel(coupon({ rows, length: 0.12 }));
    expect(JSON.stringify(again)).toBe(JSON.stringify(result));
    expect(numbersIn(result).every(Number.isFinite)).toBe(true);
  });

  it('does not depend on the order in which rows are given', () => {
    const turned = simulatePeel(coupon({ rows: [...rows].reverse(), length: 0.12 }));
    expect(turned.states).toEqual(result.states);
    expect(turned.events.flatMap(({ row }) => (row === undefined ? [] : [row]))).toEqual([3, 2, 1, 0]);
  });

  it('takes two half rows at one place for a whole one', () => {
    const halves = rows.flatMap((row) => [row, row]).map((row) => ({ ...row, penetrations: 3 }));
    const split = simulatePeel(coupon({ rows: halves, length: 0.12 }));
    expect(split.peakForce / result.peakForce).toBeCloseTo(1, 4);
    expect(last(split.states).thread / last(result.states).thread).toBeCloseTo(1, 6);
  });

  it('takes rows behind the front at the start as cut, and says so', () => {
    const some = simulatePeel(coupon({ rows: [...rowsOf(3, 0.03, 0.005, breaking()), ...rows], length: 0.12 }));
    expect(some.states).toEqual(result.states);
    expect(some.notes.map(({ text }) => text)).toContain(
      '3 rows lie behind the front at the start and are taken as cut.',
    );
  });

  it('stops at a displacement or a crack length that is asked for', () => {
    const short = simulatePeel(coupon({ rows, until: { displacement: 0.05 } }));
    expect(last(short.states).displacement).toBeGreaterThanOrEqual(0.05);
    expect(last(short.states).displacement).toBeLessThan(0.06);
    expect(short.events).toEqual([]);
    // What would have happened: the rows limit it.
    expect(short.verdict.first).toBe('threadAtCrack');
    const grown = simulatePeel(coupon({ rows, until: { crackLength: 0.053 } }));
    expect(last(grown.states).crackLength).toBeCloseTo(0.053, 12);
  });

  it('follows a toe without force and a force that is there from the start', () => {
    const toe = { curve: { opening: [0, 0.1e-3, 0.3e-3], force: [0, 0, 50] }, failure: 'threadAtAnchor' as const };
    const stiff = { curve: { opening: [0, 0.3e-3], force: [40, 0] }, failure: 'threadPullOut' as const };
    for (const law of [toe, stiff]) {
      const one = simulatePeel(coupon({ rows: rowsOf(2, 0.055, 0.005, law), length: 0.075 }));
      expect(one.energyError).toBeLessThan(0.005);
      expect(one.verdict.first).toBe(law.failure);
    }
  });

  it('bridges from the front to the farthest row that pulls', () => {
    expect(result.zoneLength).toBeGreaterThan(1e-3);
    expect(result.zoneLength).toBeLessThan(0.01);
    expect(simulatePeel(coupon()).zoneLength).toBe(0);
  });
});

describe('breaking of an arm', () => {
  const strain = 0.02;
  const limited = arm(0.6e-3, 20e9, { failureStrain: { tension: strain, compression: strain } });
  const strong = rowsOf(10, 0.055, 0.005, breaking(600, 0.3e-3, 200, 1e-3));
  const result = simulatePeel(coupon({ arms: [limited, limited], rows: strong }));

  it('comes at a toughness of E h ε²/3', () => {
    const ceiling = (20e9 * 0.6e-3 * strain ** 2) / 3;
    const [event] = result.events.slice(-1);
    expect(event!.kind).toBe('arm');
    expect((2 * event!.load) / 0.025 / ceiling).toBeGreaterThan(0.98);
    expect((2 * event!.load) / 0.025 / ceiling).toBeLessThan(1.1);
    expect(last(result.states).armStrain).toBeCloseTo(strain, 5);
  });

  it('is the verdict, with the thread that would break at a higher load', () => {
    expect(result.verdict).toMatchObject({ first: 'arm', next: 'threadAtCrack' });
    expect(result.verdict.margin).toBeGreaterThan(1);
  });

  it('goes by the weaker of tension and compression', () => {
    const lopsided = arm(0.6e-3, 20e9, { failureStrain: { tension: 0.05, compression: strain } });
    const other = simulatePeel(coupon({ arms: [lopsided, lopsided], rows: strong }));
    expect(other.peakForce / result.peakForce).toBeCloseTo(1, 1);
  });
});

describe('finer steps', () => {
  it('change little, and less each time', () => {
    const rows = rowsOf(2, 0.055, 0.005, breaking());
    const [plain, fine, finer] = [1, 2, 4].map((refine) => simulatePeel(coupon({ rows, length: 0.075, refine })));
    expect(fine!.peakForce / finer!.peakForce).toBeCloseTo(1, 4);
    expect(plain!.peakForce / finer!.peakForce).toBeCloseTo(1, 3);
    expect(finer!.energyError).toBeLessThan(plain!.energyError);
  });
});
