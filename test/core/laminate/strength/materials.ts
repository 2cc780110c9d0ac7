import fc from 'fast-check';
import type { Criterion, StrengthPly } from '../../../../packages/core/src/laminate/strength/index.js';
import type { Strengths } from '../../../../packages/core/src/material/index.js';
import { evenly, graphite } from '../plies.js';

/** Carbon/epoxy, E1 = 181 GPa: strengths of the worked examples in Kaw 2006 (recalled, not re-read). */
export const carbon = {
  ...graphite,
  strengths: { Xt: 1500e6, Xc: 1500e6, Yt: 40e6, Yc: 246e6, S: 68e6 },
} as const;

/** Glass/epoxy, E1 = 45.6 GPa: Soden, Hinton & Kaddour 1998, Table 1 (recalled, not re-read). */
export const glass = {
  E1: 45.6e9,
  E2: 16.2e9,
  G12: 5.83e9,
  nu12: 0.278,
  expansion: { alpha1: 8.6e-6, alpha2: 26.4e-6 },
  strengths: { Xt: 1280e6, Xc: 800e6, Yt: 40e6, Yc: 145e6, S: 73e6 },
} as const;

const anyStrengths: fc.Arbitrary<Strengths> = fc.record({
  Xt: evenly(500e6, 3000e6),
  Xc: evenly(300e6, 2000e6),
  Yt: evenly(20e6, 100e6),
  Yc: evenly(80e6, 300e6),
  S: evenly(40e6, 120e6),
});

/** A ply far from isotropic, with strengths. */
export const anyStrongPly: fc.Arbitrary<StrengthPly> = anyStrengths.map((strengths) => ({ ...carbon, strengths }));

/** A stress of each size from a tenth of the strengths to ten times, in all octants. */
export const anyStress = fc
  .tuple(evenly(-1, 1), evenly(-1, 1), evenly(-1, 1), evenly(-1, 1))
  .filter(([a, b, c]) => Math.hypot(a, b, c) > 0.05)
  .map(([a, b, c, size]): [number, number, number] => {
    const scale = 10 ** size;
    return [1500e6 * a * scale, 100e6 * b * scale, 70e6 * c * scale];
  });

/**
 * The left side of each criterion as its authors print it, 1 on the failure surface: not solved for any ratio, and Puck's
 * border between modes B and C by the ratio of the stresses.
 */
export function exposure(criterion: Criterion, [s1, s2, t]: readonly number[], ply: StrengthPly): number {
  const { Xt, Xc, Yt, Yc, S } = ply.strengths;
  const [a = 0, b = 0, c = 0] = [s1, s2, t];
  const along = (value: number) => Math.max(value / Xt, -value / Xc);
  const across = (value: number) => Math.max(value / Yt, -value / Yc);
  const X = a >= 0 ? Xt : Xc;
  const Y = b >= 0 ? Yt : Yc;
  switch (criterion) {
    case 'maxStress':
      return Math.max(along(a), across(b), Math.abs(c) / S);
    case 'maxStrain': {
      const e1 = (a - ply.nu12 * b) / ply.E1;
      const e2 = (b - (ply.nu12 * ply.E2 * a) / ply.E1) / ply.E2;
      return Math.max(
        (e1 * ply.E1) / Xt,
        (-e1 * ply.E1) / Xc,
        (e2 * ply.E2) / Yt,
        (-e2 * ply.E2) / Yc,
        Math.abs(c) / S,
      );
    }
    case 'tsaiHill':
      return (a / X) ** 2 - (a * b) / X ** 2 + (b / Y) ** 2 + (c / S) ** 2;
    case 'tsaiWu':
      return (
        (1 / Xt - 1 / Xc) * a +
        (1 / Yt - 1 / Yc) * b +
        (a * a) / (Xt * Xc) +
        (b * b) / (Yt * Yc) +
        (c / S) ** 2 -
        (a * b) / Math.sqrt(Xt * Xc * Yt * Yc)
      );
    case 'hashin':
      return Math.max(a >= 0 ? (a / Xt) ** 2 + (c / S) ** 2 : -a / Xc, (b / Y) ** 2 + (c / S) ** 2);
    case 'puck': {
      const [plus, minus] = [0.35, 0.3];
      const RA = (S / (2 * minus)) * (Math.sqrt(1 + (2 * minus * Yc) / S) - 1);
      const pAcross = (minus * RA) / S;
      const tc = S * Math.sqrt(1 + 2 * pAcross);
      let between = 0;
      if (b >= 0) {
        between = Math.sqrt((c / S) ** 2 + (1 - (plus * Yt) / S) ** 2 * (b / Yt) ** 2) + (plus * b) / S;
      } else if (Math.abs(b / c) <= RA / tc) {
        between = (Math.sqrt(c ** 2 + (minus * b) ** 2) + minus * b) / S;
      } else {
        between = ((c / (2 * (1 + pAcross) * S)) ** 2 + (b / Yc) ** 2) * (Yc / -b);
      }
      return Math.max(along(a), between);
    }
  }
}

/** The R at which r + R s first has an exposure of 1, by stepping and halving. */
export function ratioByHalving(failed: (R: number) => boolean, longest: number, steps = 4000): number | undefined {
  if (failed(0)) return 0;
  let [low, high] = [0, longest];
  let found = false;
  for (let i = 1; i <= steps && !found; i++) {
    high = (longest * i) / steps;
    found = failed(high);
    if (!found) low = high;
  }
  if (!found) return undefined;
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (failed(middle)) high = middle;
    else low = middle;
  }
  return high;
}
