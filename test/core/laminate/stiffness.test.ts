import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Laminate, laminate, stiffness } from '../../../packages/core/src/laminate/index.js';
import { anyLaminate, expectNear, graphite, plyOf, problemCode, stackOf } from './plies.js';

describe('stiffness of [0/30/-45] graphite/epoxy, 5 mm plies', () => {
  // Kaw 2006, ex. 4.2 (recalled, not re-read); digits recomputed by an independent script: clt.json CLT-09.
  const s = stiffness(stackOf(graphite, '[0/30/-45]', 5e-3));

  it('is the published A, B and D with their signs', () => {
    expectNear(
      s.A.flat(),
      [
        1739240863.24, 388386410.665, 56633730.8538, 388386410.665, 453253512.377, -114063609.544, 56633730.8538,
        -114063609.544, 452482544.0,
      ],
      1e-11,
    );
    expectNear(
      s.B.flat(),
      [
        -3128833.80572, 985521.554285, -1071656.12572, 985521.554285, 1157790.69715, -1071656.12572, -1071656.12572,
        -1071656.12572, 985521.554285,
      ],
      1e-11,
    );
    expectNear(
      s.D.flat(),
      [
        33432.0341476, 6460.97723806, -5240.2936893, 6460.97723806, 9319.77131898, -5595.91314846, -5240.2936893,
        -5595.91314846, 7662.77973809,
      ],
      1e-11,
    );
  });

  it('has the published inverse', () => {
    expectNear(
      s.a.flat(),
      [
        1.29662987759e-9, -9.84335042214e-10, -6.03896565901e-10, -9.84335042214e-10, 4.47603964968e-9,
        -1.55947982054e-10, -6.03896565901e-10, -1.55947982054e-10, 3.71186333798e-9,
      ],
      1e-10,
    );
    expectNear(
      s.b.flat(),
      [
        1.77728322261e-7, -1.09780590395e-7, 1.62715327146e-7, -1.48013948611e-7, -2.18721798653e-7, 2.47431355785e-7,
        -5.48758276536e-8, 3.11857266673e-7, -3.93441122924e-7,
      ],
      1e-10,
    );
    expectNear(
      s.d.flat(),
      [
        5.96661678524e-5, -3.00033071946e-5, 3.01062083245e-5, -3.00033071946e-5, 2.4710010679e-4, 7.38819278217e-5,
        3.01062083245e-5, 7.38819278217e-5, 3.13004316839e-4,
      ],
      1e-10,
    );
  });

  it('names its sources', () => {
    expect(s.sources).toEqual(['jones-1999', 'tsai-pagano-1968']);
  });
});

describe('an independent path', () => {
  interface Big {
    plus(x: Big | number): Big;
    minus(x: Big | number): Big;
    times(x: Big | number): Big;
    div(x: Big | number): Big;
    sqrt(): Big;
    cos(): Big;
    sin(): Big;
    toNumber(): number;
  }
  const fromCore = createRequire(new URL('../../../packages/core/package.json', import.meta.url));
  const math = fromCore('mathjs').create(fromCore('mathjs').all, { number: 'BigNumber', precision: 40 }) as {
    bignumber(x: number): Big;
    pi: Big;
  };
  const big = (x: number): Big => math.bignumber(x);

  /** Stress transformation and its inverse multiplied out, Qbar = T⁻¹ Q R T R⁻¹, in 40 digits. */
  function qbar({ E1, E2, G12, nu12, angle }: Laminate['plies'][number]): Big[][] {
    const nu21 = big(nu12).times(E2).div(E1);
    const room = big(1).minus(nu21.times(nu12));
    const zero = big(0);
    const Q = [
      [big(E1).div(room), big(E2).times(nu12).div(room), zero],
      [big(E2).times(nu12).div(room), big(E2).div(room), zero],
      [zero, zero, big(G12)],
    ];
    const radians = big(angle).times(math.pi).div(180);
    const [c, s] = [radians.cos(), radians.sin()];
    const T = (sine: Big): Big[][] => [
      [c.times(c), sine.times(sine), c.times(sine).times(2)],
      [sine.times(sine), c.times(c), c.times(sine).times(-2)],
      [c.times(sine).times(-1), c.times(sine), c.times(c).minus(sine.times(sine))],
    ];
    const product = (p: Big[][], q: Big[][]): Big[][] =>
      p.map((row) => [0, 1, 2].map((j) => row.reduce((sum, value, k) => sum.plus(value.times(q[k]![j]!)), zero)));
    // R doubles the tensor shear strain: R T R⁻¹ halves the last column's and doubles the last row's share.
    const strained = T(s).map((row, i) =>
      row.map((value, j) => (i === 2 && j < 2 ? value.times(2) : i < 2 && j === 2 ? value.div(2) : value)),
    );
    return product(T(s.times(-1)), product(Q, strained));
  }

  it('by Gauss points through the thickness in 40 digits gives the same A, B and D', () => {
    const gauss = big(1).div(big(3).sqrt());
    fc.assert(
      fc.property(anyLaminate, (each) => {
        const t = each.plies.reduce((sum, ply) => sum.plus(ply.thickness), big(0));
        const sums = [0, 1, 2].map(() => Array.from({ length: 9 }, () => big(0)));
        let lower = t.div(-2);
        for (const ply of each.plies) {
          const stiff = qbar(ply).flat();
          const half = big(ply.thickness).div(2);
          for (const point of [gauss, gauss.times(-1)]) {
            const z = lower.plus(half).plus(half.times(point));
            let weight = half;
            for (const sum of sums) {
              for (let i = 0; i < 9; i++) sum[i] = sum[i]!.plus(stiff[i]!.times(weight));
              weight = weight.times(z);
            }
          }
          lower = lower.plus(ply.thickness);
        }
        const [A, B, D] = sums.map((sum) => sum.map((value) => value.toNumber()));
        const s = stiffness(each);
        const size = Math.max(...A!.map(Math.abs));
        expectNear(s.A.flat(), A!, 1e-12);
        expectNear(s.B.flat(), B!, 1e-12, size * s.thickness);
        expectNear(s.D.flat(), D!, 1e-12);
      }),
      { numRuns: 40 },
    );
  });
});

describe('a laminate that cannot be', () => {
  it('is refused where its stiffness is not positive definite', () => {
    const impossible = laminate([plyOf({ ...graphite, nu12: 6 }, 0, 1e-3)]);
    expect(problemCode(() => stiffness(impossible))).toBe('not-admissible');
  });

  it('is refused with its condition number where that is above 1e14', () => {
    const extreme = laminate([plyOf({ E1: 1e12, E2: 1e-4, G12: 1e-4, nu12: 0 }, 0, 1e-3)]);
    expect(problemCode(() => stiffness(extreme))).toBe('not-admissible');
    expect(() => stiffness(extreme)).toThrow(/condition number 1\.\de\+1[67].*1e14/);
  });
});
