import { describe, expect, it } from 'vitest';
import { simulatePeel } from '../../../packages/core/src/fracture/index.js';
import { naturalArm, naturalUnits } from '../../../packages/core/src/fracture/peel-model.js';
import { followPeel } from '../../../packages/core/src/fracture/peel-path.js';
import { preparePeel } from '../../../packages/core/src/fracture/peel-specimen.js';
import { unequalPeel } from '../../../packages/core/src/fracture/peel-unequal.js';
import { arm, breaking, coupon, openBalance, rowsOf } from './peel-support.js';

const last = <T>(list: readonly T[]): T => list.at(-1)!;
const unlike = [arm(0.6e-3), arm(0.9e-3)] as const;

describe('a peel of unequal arms', () => {
  it('ends at G b/2 like one of equal arms: the toughness by load does not ask how stiff an arm is', () => {
    const { states, resistance } = simulatePeel(coupon({ arms: unlike, length: 0.3 }));
    expect(last(states).load / ((500 * 0.025) / 2)).toBeCloseTo(1, 2);
    for (const { byLoad, byArea } of resistance) {
      expect(byLoad / 500).toBeCloseTo(1, 3);
      expect(byArea / 500).toBeCloseTo(1, 2);
    }
  });

  it('gives the half model where both arms happen to be alike', () => {
    const specimen = coupon({ rows: rowsOf(1, 0.055, 0.005, breaking()), length: 0.07 });
    const { peel, limits } = preparePeel(specimen);
    const one = naturalArm(arm(), naturalUnits(arm(), 500));
    const half = followPeel(peel, limits);
    const both = followPeel(
      { ...peel, model: unequalPeel(one, one), limits: [...peel.limits, ...peel.limits] },
      limits,
    );
    expect(both.points.length).toBe(half.points.length);
    half.points.forEach((point, i) => {
      const other = both.points[i]!;
      expect(other.load / point.load).toBeCloseTo(1, 5);
      expect(other.displacement / point.displacement).toBeCloseTo(1, 5);
      expect(other.elastic / point.elastic).toBeCloseTo(1, 5);
      expect(other.strain / point.strain).toBeCloseTo(1, 5);
    });
  });

  const rows = rowsOf(2, 0.055, 0.005, breaking());
  const result = simulatePeel(coupon({ arms: unlike, rows, length: 0.08 }));

  it('does not care which arm is called the first', () => {
    const turned = simulatePeel(coupon({ arms: [unlike[1], unlike[0]], rows, length: 0.08 }));
    expect(turned.peakForce / result.peakForce).toBeCloseTo(1, 3);
    expect(last(turned.states).displacement / last(result.states).displacement).toBeCloseTo(1, 2);
  });

  it('closes its energy balance to 0.5 %', () => {
    expect(result.energyError).toBeLessThan(0.005);
    expect(openBalance(result)).toBeLessThan(0.005);
  });

  it('says how the bonded part is held', () => {
    expect(result.notes.some(({ text }) => text.includes('free to turn'))).toBe(true);
  });

  it('breaks the arm that comes to its strain first', () => {
    const weak = arm(0.6e-3, 20e9, { failureStrain: { tension: 0.015, compression: 0.015 } });
    const strong = rowsOf(4, 0.055, 0.005, breaking(600));
    const broken = simulatePeel(coupon({ arms: [arm(0.9e-3), weak], rows: strong, length: 0.08 }));
    expect(broken.verdict.first).toBe('arm');
    expect(last(broken.states).armStrain).toBeGreaterThan(0.0149);
  });
});
