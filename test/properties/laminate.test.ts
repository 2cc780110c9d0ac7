import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  engineeringConstants,
  type Laminate,
  laminate,
  laminationParameters,
  type Matrix3,
  makeQbarTable,
  respond,
  type Stiffness,
  stiffness,
  thermalExpansionOf,
} from '../../packages/core/src/laminate/index.js';
import { reducedStiffness, stiffnessInvariants } from '../../packages/core/src/material/index.js';
import {
  anyAngle,
  anyLaminate,
  anyMaterial,
  anyPly,
  anyThickness,
  evenly,
  expectNear,
  plyOf,
  reversed,
  turned,
} from '../core/laminate/plies.js';

// The identities I01 to I16 are derived by hand; each derivation stands in docs/theory/laminate-stiffness.md.

type Material = Parameters<typeof plyOf>[0];

const size = (m: Matrix3): number => Math.max(...m.flat().map(Math.abs));
const scaled = (m: Matrix3, k: number): number[] => m.flat().map((value) => value * k);
const zeros = new Array<number>(9).fill(0);
const equalPlies = (material: Material, angles: readonly number[], t: number): Laminate =>
  laminate(angles.map((angle) => plyOf(material, angle, t)));
const invariants = (material: Material) => stiffnessInvariants(reducedStiffness(material));

/** Compares A, B and D with given ones; B on the scale of A h. */
function expectStiffness(
  s: Stiffness,
  A: readonly number[],
  B: readonly number[],
  D: readonly number[],
  tolerance = 1e-12,
) {
  expectNear(s.A.flat(), A, tolerance, size(s.A));
  expectNear(s.B.flat(), B, tolerance, size(s.A) * s.thickness);
  expectNear(s.D.flat(), D, tolerance, size(s.D));
}

describe('I01 rotation of a ply', () => {
  it('keeps the invariants and the amplitudes of both harmonics', () => {
    fc.assert(
      fc.property(anyMaterial, anyAngle, (material, angle) => {
        const [Q11, Q12, Q16, Q22, Q26, Q66] = makeQbarTable([material], [angle]) as unknown as [
          number,
          number,
          number,
          number,
          number,
          number,
        ];
        const { U1, U2, U3, U4, U5 } = invariants(material);
        const [q11, q12, q22, q66] = reducedStiffness(material);
        const det = Q11 * (Q22 * Q66 - Q26 * Q26) - Q12 * (Q12 * Q66 - Q26 * Q16) + Q16 * (Q12 * Q26 - Q22 * Q16);
        expectNear([Q11 + Q22 + 2 * Q12], [2 * (U1 + U4)], 1e-13, U1);
        expectNear([Q66 - Q12], [q66 - q12], 1e-13, U1);
        expectNear([((Q11 - Q22) / 2) ** 2 + (Q16 + Q26) ** 2], [U2 ** 2], 1e-12, U1 ** 2);
        expectNear([((Q11 + Q22 - 2 * Q12 - 4 * Q66) / 8) ** 2 + ((Q16 - Q26) / 2) ** 2], [U3 ** 2], 1e-12, U1 ** 2);
        expectNear([det], [(q11 * q22 - q12 * q12) * q66], 1e-12, U1 ** 3);
        expectNear([U5], [(U1 - U4) / 2], 1e-14, U1);
      }),
    );
  });
});

describe('I02 equal plies at pi/n', () => {
  it('are isotropic in plane for n from 3 on, in any order and from any start, not for n = 2', () => {
    const shuffled = fc
      .integer({ min: 3, max: 9 })
      .chain((n) => fc.shuffledSubarray([...Array(n).keys()], { minLength: n }).map((order) => ({ n, order })));
    fc.assert(
      fc.property(anyMaterial, shuffled, anyAngle, anyThickness, (material, { n, order }, start, t) => {
        const s = stiffness(
          equalPlies(
            material,
            order.map((k) => start + (180 * k) / n),
            t,
          ),
        );
        const { U1, U4, U5 } = invariants(material);
        const h = n * t;
        expectNear(
          s.A.flat(),
          [U1, U4, 0, U4, U1, 0, 0, 0, U5].map((value) => value * h),
          1e-12,
        );
        const { inPlaneRestrained: c } = engineeringConstants(s);
        expectNear([c.Ex, c.Ey, 2 * c.Gxy * (1 + c.nuxy)], Array(3).fill((U1 ** 2 - U4 ** 2) / U1), 1e-9);
        expectNear([c.nuxy, c.nuyx], [U4 / U1, U4 / U1], 1e-9, 1);
      }),
    );
    const two = stiffness(equalPlies({ E1: 181e9, E2: 10.3e9, nu12: 0.28, G12: 7.17e9 }, [0, 90], 1e-3));
    expect(Math.abs(two.A[2]![2]! - (two.A[0]![0]! - two.A[0]![1]!) / 2)).toBeGreaterThan(0.1 * two.A[0]![0]!);
  });
});

describe('I03 order of the plies', () => {
  it('mirrored gives B of exactly zero', () => {
    fc.assert(
      fc.property(fc.array(anyPly, { minLength: 1, maxLength: 6 }), fc.boolean(), (half, odd) => {
        const s = stiffness(laminate([...half, ...half.toReversed().slice(odd ? 1 : 0)]));
        expect(s.B.flat().every((value) => value === 0)).toBe(true);
        expect(s.b.flat().every((value) => value === 0)).toBe(true);
      }),
    );
  });

  it('reversed gives A, -B, D', () => {
    fc.assert(
      fc.property(anyLaminate, (each) => {
        const s = stiffness(each);
        expectStiffness(stiffness(reversed(each)), s.A.flat(), scaled(s.B, -1), s.D.flat());
      }),
    );
  });

  it('with a second laminate on top: each moves by its mid-plane distance d, D + 2 d B + d² A', () => {
    fc.assert(
      fc.property(anyLaminate, anyLaminate, (lower, upper) => {
        const both = stiffness(laminate([...lower.plies, ...upper.plies]));
        const parts = [
          { s: stiffness(lower), d: -upper.thickness / 2 },
          { s: stiffness(upper), d: lower.thickness / 2 },
        ];
        const sum = (of: (part: { s: Stiffness; d: number }, i: number) => number): number[] =>
          zeros.map((_, i) => of(parts[0]!, i) + of(parts[1]!, i));
        const at = (m: Matrix3, i: number): number => m.flat()[i]!;
        expectStiffness(
          both,
          sum(({ s }, i) => at(s.A, i)),
          sum(({ s, d }, i) => at(s.B, i) + d * at(s.A, i)),
          sum(({ s, d }, i) => at(s.D, i) + 2 * d * at(s.B, i) + d * d * at(s.A, i)),
          1e-11,
        );
      }),
    );
  });
});

describe('I04 plies of one angle', () => {
  it('together are one thick ply: A = Qbar h, B = 0, D = A h²/12', () => {
    fc.assert(
      fc.property(
        anyMaterial,
        anyAngle,
        fc.array(anyThickness, { minLength: 1, maxLength: 8 }),
        (material, angle, list) => {
          const s = stiffness(laminate(list.map((t) => plyOf(material, angle, t))));
          const [Q11, Q12, Q16, Q22, Q26, Q66] = makeQbarTable([material], [angle]);
          const h = s.thickness;
          const A = [Q11!, Q12!, Q16!, Q12!, Q22!, Q26!, Q16!, Q26!, Q66!].map((value) => value * h);
          expectStiffness(
            s,
            A,
            zeros,
            A.map((value) => (value * h * h) / 12),
          );
        },
      ),
    );
  });

  it('split anywhere change nothing', () => {
    const cut = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(anyLaminate, cut, fc.nat(), (each, at, pick) => {
        const k = pick % each.plies.length;
        const split = each.plies.flatMap((ply, i) =>
          i === k
            ? [
                { ...ply, thickness: at * ply.thickness },
                { ...ply, thickness: (1 - at) * ply.thickness },
              ]
            : [ply],
        );
        const s = stiffness(each);
        expectStiffness(stiffness(laminate(split)), s.A.flat(), s.B.flat(), s.D.flat());
      }),
    );
  });
});

describe('I05 rotation of the whole', () => {
  it('by 90 degrees exchanges 1 and 2 and turns the sign of 16 with 26', () => {
    fc.assert(
      fc.property(anyLaminate, (each) => {
        const [s, r] = [stiffness(each), stiffness(turned(each, 90))];
        const exchanged = (m: Matrix3): number[] => {
          const [[m11, m12, m16], [, m22, m26], [, , m66]] = m as unknown as number[][] as [
            number[],
            number[],
            number[],
          ];
          return [m22!, m12!, -m26!, m12!, m11!, -m16!, -m26!, -m16!, m66!];
        };
        expectStiffness(r, exchanged(s.A), exchanged(s.B), exchanged(s.D));
      }),
    );
  });

  it('seen in a mirror (all angles negative) turns the sign of 16 and 26 only', () => {
    fc.assert(
      fc.property(anyLaminate, (each) => {
        const s = stiffness(each);
        const r = stiffness(laminate(each.plies.map((ply) => ({ ...ply, angle: -ply.angle }))));
        const mirrored = (m: Matrix3): number[] =>
          m.flat().map((value, i) => ([2, 5, 6, 7].includes(i) ? -value : value));
        expectStiffness(r, mirrored(s.A), mirrored(s.B), mirrored(s.D));
      }),
    );
  });
});

describe('I06, I07 two angles in turn', () => {
  const pairs = fc.integer({ min: 1, max: 6 });

  it('[0/90]m: B11 = -B22 = -(Q11 - Q22) h²/(4N), nothing else, and D = A h²/12', () => {
    fc.assert(
      fc.property(anyMaterial, pairs, anyThickness, (material, m, t) => {
        const s = stiffness(
          equalPlies(
            material,
            Array.from({ length: 2 * m }, (_, k) => 90 * (k % 2)),
            t,
          ),
        );
        const [Q11, , Q22] = reducedStiffness(material);
        const h = 2 * m * t;
        const B11 = (-(Q11 - Q22) * h * h) / (8 * m);
        expectStiffness(s, s.A.flat(), [B11, 0, 0, 0, -B11, 0, 0, 0, 0], scaled(s.A, (h * h) / 12));
      }),
    );
  });

  it('[-θ/θ]m: B16 = Qbar16 h²/(2N) and B26 likewise, A16 = A26 = D16 = D26 = 0', () => {
    fc.assert(
      fc.property(anyMaterial, anyAngle, pairs, anyThickness, (material, angle, m, t) => {
        const s = stiffness(
          equalPlies(
            material,
            Array.from({ length: 2 * m }, (_, k) => (k % 2 ? angle : -angle)),
            t,
          ),
        );
        const [, , Q16, , Q26] = makeQbarTable([material], [angle]);
        const h = 2 * m * t;
        const [B16, B26] = [(Q16! * h * h) / (4 * m), (Q26! * h * h) / (4 * m)];
        expectStiffness(s, s.A.flat(), [0, 0, B16, 0, 0, B26, B16, B26, 0], scaled(s.A, (h * h) / 12));
        expectNear([s.A[0]![2]!, s.A[1]![2]!], [0, 0], 1e-14, size(s.A));
      }),
    );
  });
});

describe('I08, I09 curl by heat', () => {
  it('of [0/90] is the closed form', () => {
    fc.assert(
      fc.property(anyMaterial, anyThickness, fc.integer({ min: -200, max: 200 }), (material, t, dT) => {
        const { curvature } = respond(equalPlies(material, [0, 90], t), { temperatureChange: dT });
        const [Q11, Q12, Q22] = reducedStiffness(material);
        const { alpha1, alpha2 } = material.expansion;
        const below = t * (Q11 ** 2 + 14 * Q11 * Q22 + Q22 ** 2 - 16 * Q12 ** 2);
        const kx = (12 * dT * (alpha2 - alpha1) * (Q11 * Q22 - Q12 ** 2)) / below;
        expectNear(curvature, [kx, -kx, 0], 1e-9, Math.abs(kx) + 1e-10 / t);
      }),
    );
  });

  it('of two isotropic layers with one Poisson ratio is that of a bimetal strip (Timoshenko 1925, re-derived)', () => {
    const modulus = fc.double({ min: 1e9, max: 300e9, noNaN: true });
    const alpha = fc.double({ min: 1e-6, max: 50e-6, noNaN: true });
    const layer = fc.tuple(modulus, alpha, anyThickness);
    fc.assert(
      fc.property(layer, layer, fc.double({ min: 0, max: 0.45, noNaN: true }), ([E1, a1, t1], [E2, a2, t2], nu) => {
        const isotropic = (E: number, alpha: number) => ({
          E1: E,
          E2: E,
          nu12: nu,
          G12: E / (2 * (1 + nu)),
          expansion: { alpha1: alpha, alpha2: alpha },
        });
        const both = laminate([plyOf(isotropic(E1, a1), 0, t1), plyOf(isotropic(E2, a2), 0, t2)]);
        const { curvature } = respond(both, { temperatureChange: 100 });
        const [m, n, h] = [t1 / t2, E1 / E2, t1 + t2];
        const k = (6 * (a2 - a1) * 100 * (1 + m) ** 2) / (h * (3 * (1 + m) ** 2 + (1 + m * n) * (m * m + 1 / (m * n))));
        // What rounding leaves grows with the free curvature that the layers could have, not with the one they end at.
        expectNear(curvature, [k, k, 0], 1e-9, Math.abs(k) + (1e-3 * 100 * Math.max(a1, a2)) / h);
      }),
    );
  });

  it('of equal thicknesses and moduli is 1.5 (alpha2 - alpha1) dT / h', () => {
    const metal = (alpha: number) => ({
      E1: 1e11,
      E2: 1e11,
      nu12: 0,
      G12: 5e10,
      expansion: { alpha1: alpha, alpha2: alpha },
    });
    const strip = laminate([plyOf(metal(10e-6), 0, 1e-3), plyOf(metal(14e-6), 0, 1e-3)]);
    expect(respond(strip, { temperatureChange: 100 }).curvature[0] / ((1.5 * 4e-6 * 100) / 2e-3)).toBeCloseTo(1, 12);
  });
});

describe('I10, I11 heat without curl', () => {
  it('expands a stack of plies that expand alike by just that, without stress', () => {
    fc.assert(
      fc.property(anyLaminate, fc.double({ min: 1e-6, max: 50e-6, noNaN: true }), (each, alpha) => {
        const even = laminate(each.plies.map((ply) => ({ ...ply, expansion: { alpha1: alpha, alpha2: alpha } })));
        const r = respond(even, { temperatureChange: 100 });
        expectNear(r.strain, [100 * alpha, 100 * alpha, 0], 1e-9);
        expectNear(
          r.curvature.map((k) => k * even.thickness),
          [0, 0, 0],
          1e-9,
          100 * alpha,
        );
        const largest = Math.max(...each.plies.map((ply) => ply.E1)) * 100 * alpha;
        for (const { top, bottom } of r.plies)
          expectNear([...top.stress, ...bottom.stress], Array(6).fill(0), 1e-9, largest);
      }),
    );
  });

  it('makes the same expansion and ply stress in [0/90]s, [±45]s and symmetric pi/n', () => {
    fc.assert(
      fc.property(anyMaterial, anyThickness, (material, t) => {
        const [Q11, Q12, Q22] = reducedStiffness(material);
        const { alpha1: a1, alpha2: a2 } = material.expansion;
        const below = Q11 + Q22 + 2 * Q12;
        const alpha = ((Q11 + Q12) * a1 + (Q12 + Q22) * a2) / below;
        const s2 = ((a1 - a2) * -100 * (Q11 * Q22 - Q12 ** 2)) / below;
        const scale = Math.max(Math.abs(a1), Math.abs(a2));
        for (const half of [
          [0, 90],
          [45, -45],
          [0, 60, -60],
          [10, 55, 100, 145],
        ]) {
          const stack = equalPlies(material, [...half, ...half.toReversed()], t);
          expectNear(thermalExpansionOf(stack).strain, [alpha, alpha, 0], 1e-10, scale);
          for (const { top } of respond(stack, { temperatureChange: -100 }).plies) {
            expectNear(top.stress12, [-s2, s2, 0], 1e-9, Q11 * scale * 100);
          }
        }
      }),
    );
  });
});

describe('I12 lamination parameters', () => {
  const form = (
    { U1, U2, U3, U4, U5 }: ReturnType<typeof invariants>,
    [V1, V2, V3, V4]: readonly number[],
    one: number,
  ): number[] => {
    const [x, y, p, q] = [U2 * V1!, (U2 * V2!) / 2, U3 * V3!, U3 * V4!];
    return [U1 * one + x + p, U4 * one - p, y + q, U4 * one - p, U1 * one - x + p, y - q, y + q, y - q, U5 * one - p];
  };
  const oneMaterial = fc
    .tuple(anyMaterial, fc.array(fc.tuple(anyAngle, anyThickness), { minLength: 1, maxLength: 12 }))
    .map(([material, list]) => ({ material, stack: laminate(list.map(([angle, t]) => plyOf(material, angle, t))) }));

  it('give back A, B and D of a stack of one material', () => {
    fc.assert(
      fc.property(oneMaterial, ({ material, stack }) => {
        const V = laminationParameters(stack);
        const u = invariants(material);
        const h = stack.thickness;
        expectStiffness(
          stiffness(stack),
          form(u, V.A, 1).map((value) => value * h),
          form(u, V.B, 0).map((value) => (value * h ** 2) / 4),
          form(u, V.D, 1).map((value) => (value * h ** 3) / 12),
        );
      }),
    );
  });

  it('lie in their domain', () => {
    fc.assert(
      fc.property(anyLaminate, (each) => {
        const V = laminationParameters(each);
        for (const [x1, x2, x3, x4] of [V.A, V.D]) {
          expect(x1 ** 2 + x2 ** 2).toBeLessThanOrEqual(1 + 1e-12);
          const left = 2 * x1 ** 2 * (1 - x3) + 2 * x2 ** 2 * (1 + x3) + x3 ** 2 + x4 ** 2 - 4 * x1 * x2 * x4;
          expect(left).toBeLessThanOrEqual(1 + 1e-11);
        }
        for (const value of V.B) expect(Math.abs(value)).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });
});

describe('I13 repeats of a sublaminate', () => {
  it('give m A, m B and m D + A h² m (m² - 1)/12', () => {
    fc.assert(
      fc.property(
        fc.array(anyPly, { minLength: 1, maxLength: 5 }).map(laminate),
        fc.integer({ min: 1, max: 6 }),
        (sub, m) => {
          const s = stiffness(sub);
          const move = (sub.thickness ** 2 * m * (m * m - 1)) / 12;
          expectStiffness(
            stiffness(laminate(Array.from({ length: m }, () => sub.plies).flat())),
            scaled(s.A, m),
            scaled(s.B, m),
            s.D.flat().map((value, i) => m * value + move * s.A.flat()[i]!),
            1e-11,
          );
        },
      ),
    );
  });
});

describe('I16 special plies', () => {
  it('isotropic at any angle make the plate of the textbooks', () => {
    const modulus = fc.double({ min: 1e9, max: 300e9, noNaN: true });
    fc.assert(
      fc.property(
        modulus,
        fc.double({ min: 0, max: 0.49, noNaN: true }),
        fc.array(anyAngle, { minLength: 1, maxLength: 8 }),
        anyThickness,
        (E, nu, angles, t) => {
          const s = stiffness(equalPlies({ E1: E, E2: E, nu12: nu, G12: E / (2 * (1 + nu)) }, angles, t));
          const h = s.thickness;
          const plate = [1, nu, 0, nu, 1, 0, 0, 0, (1 - nu) / 2].map((value) => (value * E) / (1 - nu * nu));
          expectStiffness(
            s,
            plate.map((value) => value * h),
            zeros,
            plate.map((value) => (value * h ** 3) / 12),
          );
        },
      ),
    );
  });

  it('[0/90]s have D11 = h³ (7 Q11 + Q22)/96 and D22 = h³ (Q11 + 7 Q22)/96', () => {
    fc.assert(
      fc.property(anyMaterial, anyThickness, (material, t) => {
        const s = stiffness(equalPlies(material, [0, 90, 90, 0], t));
        const [Q11, , Q22] = reducedStiffness(material);
        const h3 = (4 * t) ** 3 / 96;
        expectNear([s.D[0]![0]!, s.D[1]![1]!], [(7 * Q11 + Q22) * h3, (Q11 + 7 * Q22) * h3], 1e-12);
      }),
    );
  });

  it('off axis have 1/Ex = c⁴/E1 + (1/G12 - 2 nu12/E1) c² s² + s⁴/E2', () => {
    fc.assert(
      fc.property(anyMaterial, anyAngle, anyThickness, (material, angle, t) => {
        const { Ex } = engineeringConstants(stiffness(equalPlies(material, [angle], t))).inPlane;
        const { E1, E2, G12, nu12 } = material;
        const [c2, s2] = [Math.cos((angle * Math.PI) / 180) ** 2, Math.sin((angle * Math.PI) / 180) ** 2];
        expectNear([1 / Ex], [c2 * c2 * (1 / E1) + (1 / G12 - (2 * nu12) / E1) * c2 * s2 + (s2 * s2) / E2], 1e-10);
      }),
    );
  });
});

describe('any laminate', () => {
  it('times its inverse is one', () => {
    fc.assert(
      fc.property(anyLaminate, (each) => {
        const { A, B, D, a, b, d, thickness: t, condition } = stiffness(each);
        // In one unit (B/t, D/t², b t, d t²), so that all entries of the product are of the size of 1.
        const K = (i: number, j: number) =>
          i < 3 ? (j < 3 ? A[i]![j]! : B[i]![j - 3]! / t) : j < 3 ? B[i - 3]![j]! / t : D[i - 3]![j - 3]! / t ** 2;
        const k = (i: number, j: number) =>
          i < 3 ? (j < 3 ? a[i]![j]! : b[i]![j - 3]! * t) : j < 3 ? b[j]![i - 3]! * t : d[i - 3]![j - 3]! * t ** 2;
        for (let i = 0; i < 6; i++) {
          for (let j = 0; j < 6; j++) {
            const product = [0, 1, 2, 3, 4, 5].reduce((sum, m) => sum + K(i, m) * k(m, j), 0);
            expect(Math.abs(product - (i === j ? 1 : 0))).toBeLessThan(1e-14 * condition);
          }
        }
      }),
    );
  });

  it('takes energy for every deformation, and its condition number is 1 or more', () => {
    const six = fc.array(evenly(-1, 1), { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(anyLaminate, six, (each, x) => {
        fc.pre(x.some((value) => Math.abs(value) > 1e-3));
        const { A, B, D, thickness: t, condition } = stiffness(each);
        let energy = 0;
        for (let i = 0; i < 3; i++) {
          for (let j = 0; j < 3; j++) {
            energy +=
              x[i]! * A[i]![j]! * x[j]! +
              (2 * x[i]! * B[i]![j]! * x[j + 3]!) / t +
              (x[i + 3]! * D[i]![j]! * x[j + 3]!) / t ** 2;
          }
        }
        expect(energy).toBeGreaterThan(0);
        expect(condition).toBeGreaterThanOrEqual(1);
      }),
    );
  });

  it('of lengths times k has A k, B k², D k³; of moduli times m everything m; its condition stays', () => {
    const factor = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(anyLaminate, factor, factor, (each, k, m) => {
        const s = stiffness(each);
        const grown = laminate(
          each.plies.map((ply) => ({
            ...ply,
            thickness: k * ply.thickness,
            E1: m * ply.E1,
            E2: m * ply.E2,
            G12: m * ply.G12,
          })),
        );
        const g = stiffness(grown);
        expectStiffness(g, scaled(s.A, m * k), scaled(s.B, m * k * k), scaled(s.D, m * k ** 3));
        expect(g.condition / s.condition).toBeCloseTo(1, 6);
      }),
    );
  });
});
