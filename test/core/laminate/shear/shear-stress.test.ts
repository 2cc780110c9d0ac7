import table from '@selvage/reference-data/examples/tables/strip-bending.json' with { type: 'json' };
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { laminate, respond } from '../../../../packages/core/src/laminate/index.js';
import {
  type MomentGradient,
  type ShearStressPoint,
  shearStressDistribution,
} from '../../../../packages/core/src/laminate/shear/index.js';
import { anyLaminate, evenly, expectNear, graphite, plyOf, problemCode, stackOf } from '../plies.js';

const unitStack = (code: string) => {
  const { plies } = stackOf(table.ply, code, 1);
  return laminate(plies.map((ply) => ({ ...ply, thickness: 1 / plies.length })));
};

/** Integral over the thickness by Simpson's rule on three points per ply, exact for parabolas. */
function integral(points: readonly ShearStressPoint[], of: (point: ShearStressPoint) => number): number {
  let sum = 0;
  for (let k = 0; k + 2 < points.length; k += 3) {
    const [low, mid, high] = [points[k]!, points[k + 1]!, points[k + 2]!];
    sum += ((high.z - low.z) * (of(low) + 4 * of(mid) + of(high))) / 6;
  }
  return sum;
}

const anyForces = fc.record({
  Vx: evenly(-1e4, 1e4),
  Vy: fc.double({ min: 1e3, max: 1e4, noNaN: true }),
});

describe('shear stress by equilibrium', () => {
  it('is the parabola 3V/(2t) of one homogeneous ply', () => {
    const t = 2e-3;
    const found = shearStressDistribution(laminate([plyOf(graphite, 0, t)]), { Vx: 1000, Vy: -500 }, 5);
    expectNear(
      found.points.map(({ tauXz }) => tauXz),
      [0, 0.75, 1, 0.75, 0].map((share) => (share * 1.5 * 1000) / t),
      1e-12,
    );
    expectNear([found.peakXz.stress, found.peakYz.stress], [7.5e5, -3.75e5], 1e-12);
    expect(Math.abs(found.peakXz.z)).toBeLessThan(1e-12 * t);
  });

  it('adds up to the forces, is zero at both faces and continuous between plies', () => {
    fc.assert(
      fc.property(anyLaminate, anyForces, (stack, forces) => {
        const { points, peakXz, peakYz } = shearStressDistribution(stack, forces);
        const scale = Math.max(...points.flatMap(({ tauXz, tauYz }) => [Math.abs(tauXz), Math.abs(tauYz)]));
        expectNear(
          [integral(points, ({ tauXz }) => tauXz), integral(points, ({ tauYz }) => tauYz)],
          [forces.Vx, forces.Vy],
          1e-8,
        );
        const last = points.at(-1)!;
        expectNear([points[0]!.tauXz, points[0]!.tauYz, last.tauXz, last.tauYz], [0, 0, 0, 0], 1e-8, scale);
        for (let k = 3; k < points.length; k += 3) {
          expectNear([points[k]!.tauXz, points[k]!.tauYz], [points[k - 1]!.tauXz, points[k - 1]!.tauYz], 1e-9, scale);
        }
        for (const { tauXz, tauYz } of points) {
          expect(Math.abs(tauXz)).toBeLessThanOrEqual(Math.abs(peakXz.stress) + 1e-12 * scale);
          expect(Math.abs(tauYz)).toBeLessThanOrEqual(Math.abs(peakYz.stress) + 1e-12 * scale);
        }
      }),
    );
  });

  it('is what a finite difference of the ply stresses asks for, with every moment changing along x and y', () => {
    const stack = stackOf(graphite, '[0/30/-45/90]', 2e-4);
    const gradient = { alongX: [100, -30, 20], alongY: [40, 70, -60] } as const;
    const { points } = shearStressDistribution(stack, gradient);
    const [x, y] = [respond(stack, { M: gradient.alongX }), respond(stack, { M: gradient.alongY })];
    let [tauXz, tauYz] = [0, 0];
    stack.plies.forEach(({ thickness }, k) => {
      const [mx, my] = [x.plies[k]!.middle.stress, y.plies[k]!.middle.stress];
      tauXz -= thickness * (mx[0] + my[2]);
      tauYz -= thickness * (mx[2] + my[1]);
      const top = points[3 * k + 2]!;
      expectNear([top.tauXz, top.tauYz], [tauXz, tauYz], 1e-9, 1e6);
    });
    expectNear(
      [integral(points, (point) => point.tauXz), integral(points, (point) => point.tauYz)],
      [100 + -60, 20 + 70],
      1e-9,
    );
  });

  it('finds the peak between points: at the middle of a symmetric stack with two points per ply', () => {
    const found = shearStressDistribution(unitStack('[0/90/0]'), { Vx: 1 }, 2);
    expect(Math.abs(found.peakXz.z)).toBeLessThan(1e-9);
    expect(found.peakXz.ply).toBe(2);
    expect(found.peakYz).toEqual({ stress: 0, z: 0, ply: 1 });
  });

  it('finds the height of the peak of an unsymmetric stack', () => {
    const { points, peakXz } = shearStressDistribution(unitStack('[0/0/90]'), { Vx: 1 }, 4001);
    const highest = points.reduce((best, one) => (one.tauXz > best.tauXz ? one : best));
    expect(Math.abs(peakXz.z - highest.z)).toBeLessThan(0.5 / 4000);
    expectNear([peakXz.stress], [highest.tauXz], 1e-6);
  });

  it('refuses forces that are not finite and fewer than two points per ply', () => {
    const stack = unitStack('[0]');
    expect(problemCode(() => shearStressDistribution(stack, { Vx: Number.NaN }))).toBe('not-a-number');
    for (const half of [{ alongX: [1, 0, 0] }, { alongY: [1, 0, 0] }, { alongX: [1], alongY: [0, 0, 0] }]) {
      expect(problemCode(() => shearStressDistribution(stack, half as unknown as MomentGradient))).toBe('wrong-type');
    }
    const open = { alongX: [0, 0, 0], alongY: [Number.POSITIVE_INFINITY, 0, 0] } as const;
    expect(problemCode(() => shearStressDistribution(stack, open))).toBe('not-a-number');
    for (const points of [1, 2.5]) {
      expect(problemCode(() => shearStressDistribution(stack, { Vx: 1 }, points))).toBe('out-of-range');
    }
    const bad = laminate([plyOf({ ...graphite, G12: -1e9 }, 0, 1e-3)]);
    expect(problemCode(() => shearStressDistribution(bad, { Vx: 1 }))).toBe('not-admissible');
    expect(problemCode(() => shearStressDistribution(stack, { Vx: 1.5e308 }))).toBe('not-computable');
    expect(shearStressDistribution(stack, { Vx: 1e308 }).peakXz.stress / 1.5e308).toBeCloseTo(1, 12);
  });

  it('says what it supposes of the twisting moment, where that matters and is not given', () => {
    const said = (code: string, load: Parameters<typeof shearStressDistribution>[1]) =>
      shearStressDistribution(unitStack(code), load)
        .notes.map(({ text }) => text)
        .join();
    expect(said('[30/-30]s', { Vx: 1 })).toContain('how the twisting moment changes');
    expect(said('[60/-60]s', { Vy: 1 })).toContain('how the twisting moment changes');
    expect(said('[30/-30]s', { alongX: [1, 0, 0], alongY: [0, 0, 0] })).toBe('');
    for (const code of ['[0/90]s', '[0/90]', '[45/-45]']) expect(said(code, { Vx: 1 })).toBe('');
  });
});

describe('shear stress of a wide strip beside exact elasticity', () => {
  /** The moments of the strip at its support: Vx = p L/π with κy = κxy = 0, εy = γxy-force = 0, p = 1. */
  const gradientOf = (code: string, span: number) => {
    const stack = unitStack(code);
    const M = [span / Math.PI, null, null] as const;
    const { M: alongX } = respond(stack, { M, curvature: [null, 0, 0], strain: [null, 0, null] });
    return { stack, gradient: { alongX, alongY: [0, 0, 0] } as const };
  };

  const rows = table.strips.flatMap(({ stack, rows }) =>
    rows.flatMap((row) => ('txzMax' in row && row.span >= 50 ? [{ stack, ...row }] : [])),
  );

  it.each(rows)('$stack at a span of $span: the largest stress, as the square of thickness over span', (row) => {
    const { stack, gradient } = gradientOf(row.stack, row.span);
    const { peakXz } = shearStressDistribution(stack, gradient);
    // Elasticity leaves the parabolas by a share of (t/span)², at most 4.5 for these stacks at every span from 10 on.
    expect(Math.abs(peakXz.stress / row.txzMax! - 1)).toBeLessThan(2e-4 + 4.5 / row.span ** 2);
  });

  it.each(table.profiles)('$stack at a span of 10: the whole profile within 5 % of its peak along x', (profile) => {
    const { stack, gradient } = gradientOf(profile.stack, profile.span);
    const peak = Math.max(...profile.txz);
    profile.z.forEach((z, i) => {
      const points = 8 * 20 + 1; // points of the profile are eighths or quarters of plies or of their eighths
      const all = shearStressDistribution(stack, gradient, points).points.filter(({ ply }) => ply === profile.ply[i]);
      const nearest = all.reduce((best, one) => (Math.abs(one.z - z) < Math.abs(best.z - z) ? one : best));
      expect(Math.abs(nearest.tauXz - profile.txz[i]!)).toBeLessThan(0.05 * peak);
    });
  });
});
