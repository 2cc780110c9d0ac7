import fc from 'fast-check';
import { expect } from 'vitest';
import { type Laminate, laminate, parseOrientationCode } from '../../../packages/core/src/laminate/index.js';
import type { Ply } from '../../../packages/core/src/material/index.js';

/** Unidirectional graphite/epoxy of the worked examples in Kaw 2006 (recalled, not re-read): clt.json CLT-01, CLT-12. */
export const graphite = {
  E1: 181e9,
  E2: 10.3e9,
  nu12: 0.28,
  G12: 7.17e9,
  expansion: { alpha1: 0.02e-6, alpha2: 22.5e-6 },
} as const;

type Given = Partial<Ply> & Pick<Ply, 'E1' | 'E2' | 'G12' | 'nu12'>;

export const plyOf = (material: Given, angle: number, thickness: number): Ply => ({
  name: 'ply',
  notes: [],
  sources: [],
  ...material,
  angle,
  thickness,
});

/** Plies of one material and thickness at the angles of an orientation code. */
export const stackOf = (material: Given, code: string, thickness: number): Laminate =>
  laminate(parseOrientationCode(code).map(({ angle }) => plyOf(material, angle, thickness)));

export const turned = ({ plies }: Laminate, by: number): Laminate =>
  laminate(plies.map((ply) => ({ ...ply, angle: ply.angle + by })));

export const reversed = ({ plies }: Laminate): Laminate => laminate(plies.toReversed());

/** Numbers spread evenly over a range through zero: any double would lie within a thousandth of zero nine times in ten. */
export const evenly = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((k) => min + ((max - min) * k) / 1_000_000);

/** Admissible materials from foam-like to carbon-like, |nu12| up to 0.9 of its bound. */
export const anyMaterial = fc
  .record({
    E1: fc.double({ min: 1e9, max: 300e9, noNaN: true }),
    ratio: fc.double({ min: 0.02, max: 1, noNaN: true }),
    shear: fc.double({ min: 0.02, max: 0.5, noNaN: true }),
    poisson: evenly(-0.3, 0.9),
    alpha1: evenly(-1e-6, 20e-6),
    alpha2: fc.double({ min: 1e-6, max: 60e-6, noNaN: true }),
  })
  .map(({ E1, ratio, shear, poisson, alpha1, alpha2 }) => ({
    E1,
    E2: E1 * ratio,
    G12: E1 * shear,
    nu12: poisson * Math.min(0.5, Math.sqrt(1 / ratio)),
    expansion: { alpha1, alpha2 },
  }));

export const anyAngle = fc.oneof(fc.integer({ min: -90, max: 90 }), evenly(-90, 90), fc.constantFrom(0, 45, -45, 90));

export const anyThickness = fc.double({ min: 5e-5, max: 2e-3, noNaN: true });

export const anyPly = fc
  .tuple(anyMaterial, anyAngle, anyThickness)
  .map(([material, angle, thickness]) => plyOf(material, angle, thickness));

export const anyLaminate = fc.array(anyPly, { minLength: 1, maxLength: 12 }).map(laminate);

/** Numbers agree within `tolerance` of the largest magnitude among the expected ones, or of `scale` where that is given. */
export function expectNear(
  actual: readonly number[],
  expected: readonly number[],
  tolerance: number,
  scale = Math.max(...expected.map(Math.abs)),
): void {
  expect(actual.length).toBe(expected.length);
  actual.forEach((value, i) => {
    const off = Math.abs(value - expected[i]!);
    expect(off, `entry ${i}: ${value} for ${expected[i]}`).toBeLessThanOrEqual(tolerance * scale);
  });
}

/** The code of the first problem that a call throws. */
export function problemCode(call: () => unknown): string | undefined {
  try {
    call();
  } catch (error) {
    return (error as { problems?: { code: string }[] }).problems?.[0]?.code;
  }
  return undefined;
}
