import { describe, expect, it } from 'vitest';
import { type BoundaryValueProblem, solveBoundaryValue } from '../../../packages/core/src/numeric/index.js';

/** y'' = k² y with y(0) = 0 and y'(1) = k cosh k / scale: y = sinh(k x) / scale. A jump of y' may be asked for at one point. */
function hyperbolic(k: number, jumpAt = -1, scale = 1): BoundaryValueProblem {
  return {
    size: 2,
    left: 1,
    slope(z, at, f, J) {
      f[0] = z[at + 1]!;
      f[1] = k * k * z[at]!;
      J[1] = 1;
      J[2] = k * k;
    },
    jump(point, z, J) {
      if (point !== jumpAt) return false;
      // A spring of stiffness 3: the slope gains 3 y.
      z[1] = z[1]! + 3 * z[0]!;
      J[2] = 3;
      return true;
    },
    first(z, at, r, J) {
      r[0] = z[at]!;
      J[0] = 1;
    },
    last(z, at, r, J) {
      r[0] = z[at + 1]! - (k * Math.cosh(k)) / scale;
      J[1] = 1;
    },
  };
}

const even = (count: number) => new Float64Array(count).fill(1 / count);
const solved = (k: number, count: number) =>
  solveBoundaryValue(hyperbolic(k), even(count), new Float64Array(2 * (count + 1)))!;

describe('solveBoundaryValue', () => {
  it('finds a hyperbolic sine', () => {
    const z = solved(2, 64);
    for (let i = 0; i <= 64; i++) expect(z[2 * i]).toBeCloseTo(Math.sinh((2 * i) / 64), 6);
  });

  it('is of fourth order', () => {
    const off = (count: number) => Math.abs(solved(2, count)[2 * count]! - Math.sinh(2));
    expect(Math.log2(off(8) / off(16))).toBeCloseTo(4, 1);
  });

  it('keeps growing and decaying solutions apart over forty e-folds', () => {
    const z = solveBoundaryValue(hyperbolic(40, -1, Math.sinh(40)), even(400), new Float64Array(802))!;
    expect(z[2 * 400]).toBeCloseTo(1, 4);
    expect((z[2 * 200]! * Math.sinh(40)) / Math.sinh(20)).toBeCloseTo(1, 4);
  });

  it('puts a spring at a point', () => {
    // Left of 1/2 y = c sinh 2x; right of it the slope is larger by 3 y(1/2), and ends at 2 cosh 2.
    const z = solveBoundaryValue(hyperbolic(2, 32), even(64), new Float64Array(130))!;
    const c = (2 * Math.cosh(2)) / (2 * Math.cosh(2) + 3 * Math.sinh(1) * Math.cosh(1));
    expect(z[2 * 32]).toBeCloseTo(c * Math.sinh(1), 6);
    expect(z[2 * 64]).toBeCloseTo(c * Math.sinh(2) + ((3 * c * Math.sinh(1)) / 2) * Math.sinh(1), 6);
  });

  it('says so when Newton does not settle', () => {
    const none: BoundaryValueProblem = { ...hyperbolic(1), slope: (_z, _at, f) => f.fill(Number.NaN) };
    expect(solveBoundaryValue(none, even(4), new Float64Array(10))).toBeUndefined();
  });
});
