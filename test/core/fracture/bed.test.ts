import { describe, expect, it } from 'vitest';
import { bedLength, bedOf } from '../../../packages/core/src/fracture/bed.js';
import { type BoundaryValueProblem, solveBoundaryValue } from '../../../packages/core/src/numeric/index.js';
import { arm } from './peel-support.js';

/** A long beam with shear on springs, solved point by point: EI φ' = M, M' = -T, T' = k v, v' = φ + T/S; loaded at x = 0, at rest far off. */
function solved(one: ReturnType<typeof arm>, moment: number, force: number) {
  const { bendingStiffness: D, shearStiffness: S } = one;
  const k = (2 * one.E3) / one.thickness;
  // Lengths in (D/k)^1/4, so that all unknowns are of one size.
  const l = (D / k) ** 0.25;
  const shear = D / (S * l * l);
  const problem: BoundaryValueProblem = {
    size: 4,
    left: 2,
    slope(z, at, f, J) {
      const [v, phi, M, T] = [z[at]!, z[at + 1]!, z[at + 2]!, z[at + 3]!];
      f[0] = phi + shear * T;
      f[1] = M;
      f[2] = -T;
      f[3] = v;
      J[1] = 1;
      J[3] = shear;
      J[6] = 1;
      J[11] = -1;
      J[12] = 1;
    },
    jump: () => false,
    first(z, at, r, J) {
      r[0] = z[at + 2]! - (moment * l * l) / (D * l);
      J[2] = 1;
      // Away from the bed at the front: the springs pull back as much.
      r[1] = z[at + 3]! + (force * l ** 3) / (D * l);
      J[7] = 1;
    },
    last(z, at, r, J) {
      r[0] = z[at]!;
      J[0] = 1;
      r[1] = z[at + 1]!;
      J[5] = 1;
    },
  };
  const count = 4000;
  const reach = 40;
  const z = solveBoundaryValue(
    problem,
    new Float64Array(count).fill(reach / count),
    new Float64Array(4 * (count + 1)),
  )!;
  return { lift: z[0]! * l, slope: z[1]! };
}

describe('the bed of a bonded arm', () => {
  it.each([
    ['slender', arm()],
    ['soft in shear', arm(3e-3, 60e9, { shearStiffness: 2e6 })],
    ['stiff in shear', arm(1e-3, 20e9, { shearStiffness: 1e12 })],
  ])('gives way as the equations of a beam on springs say: %s', (_what, one) => {
    const bed = bedOf(one);
    for (const [moment, force] of [
      [3, 0],
      [0, 400],
      [2, -300],
    ] as const) {
      const { lift, slope } = solved(one, moment, force);
      expect((bed.liftByMoment * moment + bed.liftByForce * force) / lift).toBeCloseTo(1, 5);
      // Toward the grips the section turns the other way.
      expect((bed.turnByMoment * moment + bed.liftByMoment * force) / -slope).toBeCloseTo(1, 5);
    }
  });

  it('releases at the front what its springs hold there: k lift²/2 = M²/2EI + Q turn + Q²/2kGA', () => {
    const one = arm(2e-3, 50e9);
    const bed = bedOf(one);
    const [M, Q] = [5, 900];
    const k = (2 * one.E3) / one.thickness;
    const lift = bed.liftByMoment * M + bed.liftByForce * Q;
    const turn = bed.turnByMoment * M + bed.liftByMoment * Q;
    const release = M ** 2 / (2 * one.bendingStiffness) + Q * turn + Q ** 2 / (2 * one.shearStiffness);
    expect((k * lift ** 2) / 2 / release).toBeCloseTo(1, 9);
  });

  it('reaches as far as its slowest decay', () => {
    // Without shear r = (1 ± i)/√2 (k/EI)^1/4.
    const stiff = arm(1e-3, 20e9, { shearStiffness: 1e15 });
    const k = (2 * stiff.E3) / stiff.thickness;
    expect(bedLength(stiff) / (Math.SQRT2 * (stiff.bendingStiffness / k) ** 0.25)).toBeCloseTo(1, 4);
    // With much shear one root is √(S/EI) and decays slowest.
    const soft = arm(1e-3, 20e9, { shearStiffness: 1e3 });
    expect(bedLength(soft) / Math.sqrt(soft.bendingStiffness / 1e3)).toBeCloseTo(1, 2);
  });
});
