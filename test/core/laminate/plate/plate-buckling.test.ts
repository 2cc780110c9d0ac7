import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { laminate, stiffness } from '../../../../packages/core/src/laminate/index.js';
import { plateBuckling } from '../../../../packages/core/src/laminate/plate/index.js';
import { transverseShear } from '../../../../packages/core/src/laminate/shear/index.js';
import { corePly } from '../../../../packages/core/src/material/index.js';
import { anyMaterial, expectNear, graphite, plyOf, problemCode, stackOf, turned } from '../plies.js';

const plate = { a: 0.3, b: 0.2 };
const crossPly = stackOf(graphite, '[0/90]s', 2e-4);

/** Multiplier of mode m, n of a thin plate from the textbook formula, Jones 1999, eq. 5.62 (number recalled). */
function formula(m: number, n: number, Nx: number, Ny: number): number {
  const { D } = stiffness(crossPly);
  const [x, y] = [((m * Math.PI) / plate.a) ** 2, ((n * Math.PI) / plate.b) ** 2];
  const K = D[0][0]! * x * x + 2 * (D[0][1]! + 2 * D[2][2]!) * x * y + D[1][1]! * y * y;
  return K / (-Nx * x - Ny * y);
}

describe('buckling of a simply supported plate', () => {
  it('is the lowest of all modes, for pressure along x, along y, along both, and with pull across', () => {
    for (const [Nx, Ny] of [
      [-1, 0],
      [0, -1],
      [-1, -0.5],
      [-1, 3],
      [20, -1],
    ] as const) {
      const { thin } = plateBuckling(crossPly, plate, { Nx, Ny });
      let lowest = Number.POSITIVE_INFINITY;
      for (let m = 1; m <= 60; m++) {
        for (let n = 1; n <= 60; n++) {
          const multiplier = formula(m, n, Nx, Ny);
          if (multiplier > 0) lowest = Math.min(lowest, multiplier);
        }
      }
      expectNear([thin.multiplier, thin.Nx, thin.Ny], [lowest, lowest * Nx, lowest * Ny], 1e-12);
      expectNear([formula(thin.m!, thin.n!, Nx, Ny)], [lowest], 1e-12);
    }
  });

  it('is k = (m b/a + a/(m b))² in a long isotropic plate, whose half waves are as long as it is wide', () => {
    const stack = laminate([plyOf({ E1: 70e9, E2: 70e9, G12: 70e9 / 2.6, nu12: 0.3 }, 0, 1e-3)]);
    const D = stiffness(stack).D[0][0]!;
    const { thin } = plateBuckling(stack, { a: 7, b: 1 }, { Nx: -100 });
    expect([thin.m, thin.n]).toEqual([7, 1]);
    expectNear([-thin.Nx], [(4 * Math.PI ** 2 * D) / 1], 1e-12);
  });

  it('finds the many half waves of a plate pulled across, in the limit of a very long one', () => {
    const stack = laminate([plyOf({ E1: 70e9, E2: 70e9, G12: 70e9 / 2.6, nu12: 0.3 }, 0, 1e-3)]);
    const D = stiffness(stack).D[0][0]!;
    const { thin } = plateBuckling(stack, { a: 1000, b: 1 }, { Nx: -1, Ny: 2 });
    // min over x of (x + 1)²/(x - 2) is at x = 5: 12, in units of π² D/b².
    expectNear([thin.multiplier], [12 * Math.PI ** 2 * D], 1e-5);
    expectNear([thin.m! / 1000], [Math.sqrt(5)], 1e-3);
  });

  it('scales: with E, with t³ and with the inverse square of the sides, thin and with shear', () => {
    fc.assert(
      fc.property(anyMaterial, fc.double({ min: 0.3, max: 3, noNaN: true }), (material, aspect) => {
        const base = stackOf(material, '[0/90]s', 1e-3);
        const size = { a: aspect * 0.1, b: 0.1 };
        const one = plateBuckling(base, size, { Nx: -1, Ny: -0.3 });
        const larger = laminate(base.plies.map((ply) => ({ ...ply, thickness: 2 * ply.thickness })));
        const grown = plateBuckling(larger, { a: 2 * size.a, b: 2 * size.b }, { Nx: -1, Ny: -0.3 });
        expectNear(
          [grown.thin.multiplier, grown.withShear.multiplier],
          [2 * one.thin.multiplier, 2 * one.withShear.multiplier],
          1e-9,
        );
        const thicker = plateBuckling(larger, size, { Nx: -1, Ny: -0.3 });
        expectNear([thicker.thin.multiplier], [8 * one.thin.multiplier], 1e-9);
        expect(one.withShear.multiplier).toBeLessThanOrEqual(one.thin.multiplier);
      }),
    );
  });

  it('does not change when plate, load and plies are all turned by a right angle', () => {
    const one = plateBuckling(crossPly, plate, { Nx: -3, Ny: -1 });
    const other = plateBuckling(turned(crossPly, 90), { a: plate.b, b: plate.a }, { Nx: -1, Ny: -3 });
    expectNear(
      [other.thin.multiplier, other.withShear.multiplier],
      [one.thin.multiplier, one.withShear.multiplier],
      1e-12,
    );
  });

  it('of a wide plate with shear is Euler and shear in series: 1/N = a²/(π² D) + 1/H', () => {
    const stack = stackOf({ ...graphite, G13: 5e9, G23: 3e9 }, '[0/90/0]', 5e-3);
    const { withShear } = plateBuckling(stack, { a: 0.2, b: 1e4 }, { Nx: -1 });
    const D = stiffness(stack).D[0][0]!;
    const H = transverseShear(stack).H[0][0];
    expectNear([1 / withShear.multiplier], [0.04 / (Math.PI ** 2 * D) + 1 / H], 1e-7);
  });

  it('of a sandwich on a soft core is crimping: no more than H, in waves as short as can be', () => {
    const face = plyOf({ E1: 60e9, E2: 60e9, G12: 5e9, nu12: 0.05, G13: 4e9, G23: 4e9 }, 0, 1e-3);
    const core = corePly({ E: 10e6, G: 1e6, nu: 0.35, thickness: 10e-3, density: 50 });
    const stack = laminate([face, core, face]);
    const { withShear, thin, notes } = plateBuckling(stack, { a: 0.05, b: 0.05 }, { Nx: -2 });
    expectNear([withShear.multiplier], [transverseShear(stack).H[0][0] / 2], 1e-12);
    expect(withShear.m).toBeUndefined();
    expect(thin.multiplier).toBeGreaterThan(10 * withShear.multiplier);
    expect(notes.at(-1)?.text).toMatch(/^Shear through the thickness lowers the buckling load by \d+ %/);
    const across = plateBuckling(stack, { a: 0.05, b: 0.05 }, { Nx: 0, Ny: -2 });
    expectNear([across.withShear.multiplier], [transverseShear(stack).H[1][1] / 2], 1e-12);
  });

  it('says nothing of a thin symmetric cross-ply plate but what was assumed of its shear', () => {
    const { notes } = plateBuckling(crossPly, plate, { Nx: -1 });
    expect(notes.map(({ level }) => level)).toEqual(['assumption']);
  });

  it('warns of shear from a loss of 5 % on', () => {
    const H = transverseShear(crossPly).H[0][0];
    // In a wide plate the loss is 1/(1 + H a²/(π² D)): 5.02 % and 4.98 % at these lengths.
    const warns = (loss: number): boolean => {
      const a = Math.PI * Math.sqrt((stiffness(crossPly).D[0][0]! / H) * (1 / loss - 1));
      return plateBuckling(crossPly, { a, b: 1e4 * a }, { Nx: -1 }).notes.some(({ level }) => level === 'warning');
    };
    expect([warns(0.0502), warns(0.0498)]).toEqual([true, false]);
  });

  it('names bend-twist coupling and lack of symmetry, and takes D - B A⁻¹ B for an unsymmetric stack', () => {
    for (const code of ['[20]', '[70]', '[45/-45]s']) {
      const angled = stackOf(graphite, code, 2e-4);
      const { D } = stiffness(angled);
      const [first, second] = [(D[0][0]! ** 3 * D[1][1]!) ** 0.25, (D[0][0]! * D[1][1]! ** 3) ** 0.25];
      const share = Math.max(Math.abs(D[0][2]!) / first, Math.abs(D[1][2]!) / second);
      const said = plateBuckling(angled, plate, { Nx: -1 }).notes.map(({ text }) => text);
      expect(said.join()).toContain(`is ${share.toPrecision(3)}. With it`);
    }
    const unsymmetric = stackOf(graphite, '[0/90]', 2e-4);
    const found = plateBuckling(unsymmetric, plate, { Nx: -1 });
    expect(found.notes.map(({ text }) => text).join()).toContain('The stack is not symmetric');
    // The inverse of d is D - B A⁻¹ B; d has no 16, 26 entries here.
    const { d } = stiffness(unsymmetric);
    const det = d[0][0]! * d[1][1]! - d[0][1]! ** 2;
    const [R11, R12, R22, R66] = [d[1][1]! / det, -d[0][1]! / det, d[0][0]! / det, 1 / d[2][2]!];
    const [x, y] = [(Math.PI / plate.a) ** 2, (Math.PI / plate.b) ** 2];
    const K = (m: number) => R11 * (m * m * x) ** 2 + 2 * (R12 + 2 * R66) * m * m * x * y + R22 * y * y;
    expectNear([found.thin.multiplier], [Math.min(K(1) / x, K(2) / (4 * x), K(3) / (9 * x))], 1e-9);
  });

  it('refuses pull alone, forces and sides that cannot be, and plies without stiffness', () => {
    for (const load of [{ Nx: 1 }, { Nx: 0 }, { Nx: Number.NaN }, { Nx: -1, Ny: Number.NEGATIVE_INFINITY }]) {
      expect(problemCode(() => plateBuckling(crossPly, plate, load))).toBe('out-of-range');
    }
    expect(problemCode(() => plateBuckling(crossPly, { a: -1, b: 1 }, { Nx: -1 }))).toBe('out-of-range');
    const noH = [
      [1, 0],
      [0, -1],
    ] as const;
    expect(problemCode(() => plateBuckling(crossPly, plate, { Nx: -1, H: noH }))).toBe('out-of-range');
    const bad = laminate([plyOf({ ...graphite, G12: -1e9 }, 0, 1e-3)]);
    expect(problemCode(() => plateBuckling(bad, plate, { Nx: -1 }))).toBe('not-admissible');
  });
});
