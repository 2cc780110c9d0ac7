import { describe, expect, it } from 'vitest';
import {
  crackLever,
  type FastCoupon,
  fastForce,
  fastPeak,
  fastValue,
  leverOf,
  rowStrength,
  toughnessAtLoad,
} from '../../../../packages/core/src/fracture/coupon/fast-model.js';
import { onsetCeiling } from '../../../../packages/core/src/fracture/coupon/fast-sliding.js';
import { bentArm, simulateEnf } from '../../../../packages/core/src/fracture/index.js';
import { arm } from '../peel-support.js';

const stiff = { shearStiffness: 1e20, E3: 1e25 };
const plain: FastCoupon = {
  kind: 'peel',
  width: 0.02,
  arms: [arm(1e-3, 20e9, stiff), arm(1e-3, 20e9, stiff)],
  bond: 300,
  crack: 0.04,
  span: 0.05,
  growth: 0.05,
};
const D = plain.arms[0].bendingStiffness;
const stitches = { density: 6e4, spacing: 5e-3, perFront: 300, force: 60, opening: 0.2e-3, work: 0.01 };

/** Two cantilevers from the tip on, stepped: the place where they have opened by w, and M²/(2 D) there; pair stiffness D/2. */
function stepped(bond: number, f: number, w: number): number {
  const pair = D / 2;
  const dx = 1e-7;
  let [opening, slope, M] = [0, 0, Math.sqrt(2 * bond * pair)];
  while (opening < w) {
    M += (f * dx) / 2;
    slope += (M / pair) * dx;
    M += (f * dx) / 2;
    opening += slope * dx;
  }
  return M ** 2 / (2 * pair);
}

describe('the strength of one row', () => {
  it('is the path integral behind it, by stepping along the arms', () => {
    for (const [f, w] of [
      [2e4, 0.2e-3],
      [5e4, 0.5e-3],
      [1e3, 0.1e-3],
    ] as const) {
      expect(rowStrength(D / 2, 300, f, w) / stepped(300, f, w)).toBeCloseTo(1, 3);
    }
  });

  it('is (9/2)^(1/3) w^(2/3) f^(4/3)/D^(1/3) where the bond holds next to nothing, that of the bond where the row does', () => {
    const [f, w, pair] = [3e4, 0.3e-3, D / 2];
    expect(
      rowStrength(pair, 1e-9, f, w) / (((9 / 2) ** (1 / 3) * w ** (2 / 3) * f ** (4 / 3)) / pair ** (1 / 3)),
    ).toBeCloseTo(1, 4);
    expect(rowStrength(pair, 300, 1e-6, w)).toBeCloseTo(300, 4);
  });
});

describe('the fast reading', () => {
  it('is the bond without stitches', () => {
    expect(fastValue(plain)).toMatchObject({ steady: 300, reading: 300 });
  });

  it('joins steady value and strength of a row by the root of squares', () => {
    const { steady, reading } = fastValue({ ...plain, stitches });
    expect(steady).toBe(300 + 600);
    const single = rowStrength(D / 2, 300, 300 * 60, 0.2e-3) - 300;
    expect(reading).toBeCloseTo(300 + Math.hypot(600, single), 8);
  });

  it('has the ceiling 4 D ε²/h² of its arms', () => {
    const failureStrain = { tension: 0.02, compression: 0.015 };
    const weak = arm(1e-3, 20e9, { ...stiff, failureStrain });
    expect(fastValue({ ...plain, arms: [weak, weak] }).ceiling).toBeCloseTo((4 * D * 0.015 ** 2) / 1e-6, 6);
  });

  it('in sliding grows as cosh² of the growth over √(B/β) and never passes the steady value', () => {
    const bent: FastCoupon = { ...plain, kind: 'enf', growth: 2e-3, stitches };
    // Like arms: 1/B = 2/(E h) + h²/(2 D) = 2/(E h) + 6/(E h).
    const B = (20e9 * 1e-3) / 8;
    const beta = (6e4 * 60) / 0.2e-3;
    expect(fastValue(bent).reading).toBeCloseTo(300 * Math.cosh(2e-3 / Math.sqrt(B / beta)) ** 2, 6);
    expect(fastValue({ ...bent, growth: 1 }).reading).toBe(900);
  });
});

describe('arms in sliding', () => {
  const failureStrain = { tension: 0.02, compression: 0.015 };
  const weak = arm(1e-3, 20e9, { ...stiff, failureStrain });
  const bent: FastCoupon = { ...plain, kind: 'enf', arms: [weak, weak], crack: 0.03, span: 0.05 };

  it('show 3 D ε²/h² by load where like arms of one ply break at the tip', () => {
    // M = 4 D ε/h of both; M²/2 (1/(2 D) - 1/(8 D)).
    expect(fastValue(bent).ceiling).toBeCloseTo((3 * D * 0.015 ** 2) / 1e-6, 6);
  });

  it.each([
    ['at the tip of a long crack', 0.035],
    ['under the load where the crack is short', 0.015],
  ])('that break before the bond grows read what the simulation has: %s', (_, crackLength) => {
    const brittle = arm(1e-3, 20e9, { failureStrain: { tension: 0.004, compression: 0.004 } });
    const specimen = { width: 0.02, bondToughness: 3000, crackLength, span: 0.1, rows: [] };
    const { events } = simulateEnf({ ...specimen, arms: [brittle, brittle] });
    expect(events[0]?.kind).toBe('arm');
    const coupon: FastCoupon = { ...bent, arms: [brittle, brittle], crack: crackLength };
    expect(Math.abs(onsetCeiling(coupon, fastValue(coupon).ceiling) / events[0]!.byLoad - 1)).toBeLessThan(0.005);
  });

  it('bear a moment that rises no further than to the first of two loads', () => {
    const specimen = {
      kind: 'enf',
      width: 0.02,
      arms: plain.arms,
      bondToughness: 300,
      crackLength: 0.045,
      span: 0.1,
    } as const;
    expect([leverOf(specimen, []), crackLever(specimen)]).toEqual([0.05, 0.045]);
    const two = { ...specimen, loadSpan: 0.04 };
    expect(leverOf(two, [])).toBeCloseTo(0.03, 12);
    expect(crackLever(two)).toBeCloseTo(0.03, 12);
  });
});

describe('the load at a toughness', () => {
  it('of straight arms is b √(2 J D)/a, of upright ones b J/2', () => {
    const J = 500;
    const straight = (0.02 * Math.sqrt(J * D)) / 0.05;
    expect(fastForce({ ...plain, kind: 'dcb' }, J) / straight).toBeCloseTo(1, 3);
    expect(fastForce({ ...plain, span: 1000 }, J)).toBeCloseTo(0.02 * 250, 3);
    expect(fastForce(plain, J) / (straight ** 2.7 + 5 ** 2.7) ** (1 / 2.7)).toBeCloseTo(1, 3);
  });

  it('is within 4 % that of a cantilever bent through any angle', () => {
    for (const share of [0.3, 1, 3, 10, 30]) {
      const away = (share * D) / plain.span ** 2;
      const { points } = bentArm({ arm: { bendingStiffness: D }, length: plain.span, force: { along: 0, away } });
      const J = points[0]!.moment ** 2 / D;
      expect(Math.abs(fastForce(plain, J) / (away * plain.width) - 1)).toBeLessThan(0.04);
    }
  });

  it('is found back from it', () => {
    for (const factor of [0.5, 1, 3]) {
      const J = toughnessAtLoad(plain, 500, factor);
      expect(fastForce(plain, J)).toBeCloseTo(factor * fastForce(plain, 500), 8);
    }
  });

  it('peaks at the onset of growth where stitches hold less than that', () => {
    const short: FastCoupon = { ...plain, kind: 'dcb', crack: 0.02, span: 0.08 };
    expect(fastPeak(short, 320)).toBe(fastForce(short, 300, 0.02));
    expect(fastPeak(short, 30_000)).toBe(fastForce(short, 30_000));
  });
});
