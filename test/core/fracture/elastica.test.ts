import { describe, expect, it } from 'vitest';
import { emptySection, firstIntegral, sectionAt } from '../../../packages/core/src/fracture/elastica-section.js';
import { type BentArmInput, bentArm } from '../../../packages/core/src/fracture/index.js';
import { codeOf, simpson } from './support.js';

/** P = α EI/L² per width, straight away from the arm. */
const cantilever = (alpha: number, rest: Partial<BentArmInput> = {}): BentArmInput => ({
  arm: { bendingStiffness: 2 },
  length: 0.1,
  force: { along: 0, away: (alpha * 2) / 0.1 ** 2 },
  ...rest,
});
const tip = (input: BentArmInput) => bentArm(input).points.at(-1)!;

/**
 * The cantilever under an upright force at its tip by Legendre's integrals: with the tip's angle φ, k² = (1 + sin φ)/2, k sin ϑ = 1/√2,
 * √α = K(k) - F(k, ϑ), δ/L = 1 - 2 (E(k) - E(k, ϑ))/√α, x/L = √(2 sin φ/α).
 */
function closedForm(phi: number): { alpha: number; y: number; x: number } {
  const k2 = (1 + Math.sin(phi)) / 2;
  const start = Math.asin(Math.SQRT1_2 / Math.sqrt(k2));
  const root = simpson((t) => 1 / Math.sqrt(1 - k2 * Math.sin(t) ** 2), start, Math.PI / 2, 4000);
  const E = simpson((t) => Math.sqrt(1 - k2 * Math.sin(t) ** 2), start, Math.PI / 2, 4000);
  return { alpha: root ** 2, y: 1 - (2 * E) / root, x: Math.sqrt(2 * Math.sin(phi)) / root };
}

describe('a bent arm', () => {
  it.each([0.05, 0.3, 0.7, 1.1, 1.4, 1.55])('follows the closed form of the cantilever to a tip angle of %f', (phi) => {
    const { alpha, y, x } = closedForm(phi);
    const end = tip(cantilever(alpha));
    expect(end.angle).toBeCloseTo(phi, 5);
    expect(end.y / 0.1).toBeCloseTo(y, 5);
    expect(end.x / 0.1).toBeCloseTo(x, 5);
  });

  // Bisshopp & Drucker 1945, recalled, not re-read: P L²/EI and δ/L to three places.
  it.each([
    [1, 0.302],
    [2, 0.494],
    [5, 0.714],
    [10, 0.811],
  ])('sags as tabled under %f EI/L²', (alpha, sag) => {
    expect(tip(cantilever(alpha)).y / 0.1).toBeCloseTo(sag, 2.9);
  });

  it('bends by P L³/3EI under a small force', () => {
    expect(tip(cantilever(1e-4)).y / 0.1).toBeCloseTo(1e-4 / 3, 12);
  });

  it('stretches and shears by its own stiffness where it has one', () => {
    const arm = { bendingStiffness: 2, axialStiffness: 4e4, shearStiffness: 3e3 };
    const small = tip({ arm, length: 0.1, force: { along: 4, away: 0 } });
    expect(small.x / 0.1 - 1).toBeCloseTo(4 / 4e4, 7);
    const plain = tip({ arm, length: 0.1, force: { along: 0, away: 0.3 } });
    expect(plain.y).toBeCloseTo((0.3 * 0.1 ** 3) / 6 + (0.3 * 0.1) / 3e3, 9);
  });

  it('converges with the fourth power of the interval', () => {
    const exact = closedForm(1.1);
    const off = (intervals: number) => Math.abs(tip(cantilever(exact.alpha, { intervals })).y / 0.1 - exact.y);
    expect(Math.log2(off(8) / off(16))).toBeGreaterThan(3.7);
    expect(Math.log2(off(16) / off(32))).toBeGreaterThan(3.8);
    expect(Math.log2(off(16) / off(32))).toBeLessThan(4.2);
  });

  it('keeps its first integral along the arm', () => {
    const { points } = bentArm(cantilever(8, { intervals: 60 }));
    const V = (8 * 2) / 0.1 ** 2;
    const section = emptySection();
    const constants = points.map(({ angle, moment }) => {
      sectionAt({ bend: 1 / 2, stretch: 0, shear: 0 }, angle, 0, V, section);
      return firstIntegral(1 / 2, moment, 0, V, section);
    });
    for (const one of constants) expect(one / constants[0]!).toBeCloseTo(1, 5);
  });

  it('balances moments: at the clamp force times reach', () => {
    const { points } = bentArm(cantilever(6));
    expect(points[0]!.moment).toBeCloseTo(((6 * 2) / 0.1 ** 2) * points.at(-1)!.x, 4);
  });

  it.each([
    ['a length of 0', { length: 0 }],
    ['a stiffness below 0', { arm: { bendingStiffness: -1 } }],
    ['an endless stretch', { arm: { bendingStiffness: 1, axialStiffness: Number.POSITIVE_INFINITY } }],
    ['a force that is none', { force: { along: Number.NaN, away: 0 } }],
    ['half intervals', { intervals: 2.5 }],
    ['one interval', { intervals: 1 }],
  ])('refuses %s', (_what, wrong) => {
    expect(codeOf(() => bentArm(cantilever(1, wrong)))).toBe('out-of-range');
  });

  it('says so where a straight arm is pushed past what Newton can follow', () => {
    const pushed = { arm: { bendingStiffness: 2 }, length: 0.1, force: { along: Number.MAX_VALUE, away: 1 } };
    expect(codeOf(() => bentArm(pushed))).toBe('not-computable');
  });
});
