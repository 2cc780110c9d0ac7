import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Load,
  laminate,
  moistureExpansionOf,
  type Response,
  respond,
  stiffness,
  thermalExpansionOf,
} from '../../../packages/core/src/laminate/index.js';
import { anyLaminate, evenly, expectNear, graphite, plyOf, problemCode, stackOf } from './plies.js';

describe('[0/30/-45] graphite/epoxy under Nx = Ny = 1000 N/m', () => {
  // Kaw 2006, ex. 4.3 (recalled, not re-read); digits recomputed by an independent script: clt.json CLT-10.
  const r = respond(stackOf(graphite, '[0/30/-45]', 5e-3), { N: [1000, 1000, 0] });

  it('stretches and bends as published', () => {
    expectNear(r.strain, [3.12294835374e-7, 3.49170460747e-6, -7.59844547956e-7], 1e-11);
    expectNear(r.curvature, [2.971437365e-5, -0.000328502389047, 0.000410146682931], 1e-11);
  });

  it('has the published ply stresses and strains in laminate and ply axes', () => {
    const [first, second, third] = r.plies;
    expect(first!.top.z).toBe(-7.5e-3);
    expectNear(first!.top.strain, [8.94370329991e-8, 5.95547252532e-6, -3.83594466993e-6], 1e-11);
    expectNear(first!.top.stress, [33513.2027607, 61875.3563852, -27503.7232834], 1e-10);
    expectNear(second!.top.stress, [69297.0859615, 73914.1370393, 33807.5791674], 1e-10);
    expectNear(second!.top.strain12, [4.8372767186e-7, 4.06724180947e-6, 2.63640604542e-6], 1e-11);
    expectNear(second!.top.stress12, [99729.5711304, 43481.6518704, 18903.0313457], 1e-10);
    expectNear(second!.middle.stress, [106330.034079, 77467.8239013, 59031.7895324], 1e-10);
    expectNear(third!.bottom.stress, [-25468.6095432, -18402.0862395, 40912.5740947], 1e-10);
    expectNear(third!.bottom.strain12, [-3.76583123332e-7, 1.93967245069e-6, -4.92784051861e-7], 1e-11);
    expectNear(third!.bottom.stress12, [-62847.9219861, 18977.2262034, -3533.26165184], 1e-10);
  });
});

describe('[0/90] graphite/epoxy cooled by 75 K', () => {
  // Kaw 2006, ex. 4.5 (recalled, not re-read); digits recomputed by an independent script: clt.json CLT-12.
  const r = respond(stackOf(graphite, '[0/90]', 5e-3), { temperatureChange: -75 });

  it('shrinks and curls into a saddle as published, and the notes say that thin ones do not', () => {
    expectNear(r.strain, [-0.000390715152141, -0.000390715152141, 0], 1e-11);
    expectNear(r.curvature, [-0.127647633514, 0.127647633514, 0], 1e-11);
    expect(r.notes.map((note) => note.text).join()).toContain('saddle');
  });

  it('is left with the published residual stresses', () => {
    expectNear(r.plies[0]!.top.stress, [47182918.0096, 7534829.34586, 0], 1e-10);
    expectNear(r.plies[0]!.bottom.stress, [-67006962.3415, 12289214.986, 0], 1e-10);
    expectNear(r.plies[1]!.top.stress, [12289214.986, -67006962.3415, 0], 1e-10);
    expectNear(r.plies[1]!.middle.stress, [9912022.16594, -9912022.16594, 0], 1e-10);
  });
});

describe('free strain of one off-axis ply', () => {
  // Glass/epoxy at 60 degrees, -100 K, 2 % moisture: Kaw 2006, sec. 2.9 (recalled, not re-read), clt.json CLT-04.
  const glass = {
    E1: 38.6e9,
    E2: 8.27e9,
    nu12: 0.26,
    G12: 4.14e9,
    expansion: { alpha1: 8.6e-6, alpha2: 22.1e-6 },
    moistureExpansion: { beta1: 0, beta2: 0.6 },
  };
  const stack = laminate([plyOf(glass, 60, 1e-3)]);

  it('has the published expansion, swelling and their shear with its sign', () => {
    expectNear(thermalExpansionOf(stack).strain, [1.8725e-5, 1.1975e-5, -1.16913429511e-5], 1e-11);
    expectNear(moistureExpansionOf(stack).strain, [0.45, 0.15, -0.519615242271], 1e-11);
    expectNear(thermalExpansionOf(stack).curvature, [0, 0, 0], 1e-12, 1);
  });

  it('in ply axes is the sum of both, without stress', () => {
    const { plies } = respond(stack, { temperatureChange: -100, moisture: 0.02 });
    expectNear(plies[0]!.middle.strain12, [-0.00086, 0.00979, 0], 1e-11);
    expectNear(plies[0]!.middle.mechanicalStrain12, [0, 0, 0], 1e-14, 1);
    expectNear(plies[0]!.middle.stress, [0, 0, 0], 1e-3, 1);
  });

  it('takes moisture ply by ply: a symmetric stack wet on one side bends', () => {
    const two = laminate([plyOf(glass, 0, 1e-3), plyOf(glass, 0, 1e-3)]);
    expect(respond(two, { moisture: [0.02, 0] }).curvature[1]).toBeLessThan(-1);
    expectNear(respond(two, { moisture: [0.02, 0.02] }).curvature, [0, 0, 0], 1e-12, 1);
  });

  it('through a temperature gradient bends a homogeneous sheet by alpha times the gradient', () => {
    const { curvature, strain } = respond(stack, { temperatureGradient: 1000 });
    expectNear(curvature, [1.8725e-2, 1.1975e-2, -1.16913429511e-2], 1e-11);
    expectNear(strain, [0, 0, 0], 1e-15, 1);
  });
});

describe('a mix of forces and deformations', () => {
  // Thousandths rather than any double: the smallest doubles lose digits in every product.
  const thousandths = fc.integer({ min: -1000, max: 1000 }).map((k) => k / 1000);
  const six = fc.array(fc.record({ held: fc.boolean(), value: thousandths }), {
    minLength: 6,
    maxLength: 6,
  });

  it('is answered with what satisfies N = A e + B k and M = B e + D k, and holds what is given', () => {
    fc.assert(
      fc.property(anyLaminate, six, (each, given) => {
        const s = stiffness(each);
        const h = s.thickness;
        const unit = [1e5, 1e5, 1e5, 1e5 * h, 1e5 * h, 1e5 * h];
        const shape = [1e-3, 1e-3, 1e-3, 1e-3 / h, 1e-3 / h, 1e-3 / h];
        const pick = (held: boolean, from: number, scale: readonly number[]) =>
          [0, 1, 2].map((i) => (given[from + i]!.held === held ? given[from + i]!.value * scale[from + i]! : null)) as [
            number | null,
            number | null,
            number | null,
          ];
        const load = {
          N: pick(false, 0, unit),
          M: pick(false, 3, unit),
          strain: pick(true, 0, shape),
          curvature: pick(true, 3, shape),
        };
        const r = respond(each, load);
        const deformation = [...r.strain, ...r.curvature];
        const force = [...r.N, ...r.M];
        given.forEach(({ held, value }, i) => {
          if (held) expect(deformation[i]).toBe(value * shape[i]!);
          else expect(force[i]).toBe(value * unit[i]!);
        });
        const product = (i: number) => {
          const [left, right] = i < 3 ? [s.A, s.B] : [s.B, s.D];
          return [0, 1, 2].reduce(
            (sum, j) => sum + left[i % 3]![j]! * r.strain[j]! + right[i % 3]![j]! * r.curvature[j]!,
            0,
          );
        };
        const size =
          Math.max(...s.A.flat().map(Math.abs)) *
          Math.max(...r.strain.map(Math.abs), ...r.curvature.map((k) => Math.abs(k) * h));
        force.forEach((value, i) => {
          expect(Math.abs(product(i) - value)).toBeLessThanOrEqual(1e-10 * (i < 3 ? size : size * h));
        });
      }),
    );
  });

  it('holds a strip flat with the moment that its curvature would need', () => {
    const stack = stackOf(graphite, '[0/90]', 1e-3);
    const flat = respond(stack, { N: [1e4, 0, 0], curvature: [0, 0, 0] });
    expect(flat.curvature).toEqual([0, 0, 0]);
    expect(flat.M[0]).toBeCloseTo(
      stiffness(stack).B[0]![0]! * flat.strain[0]! + stiffness(stack).B[0]![1]! * flat.strain[1]!,
      9,
    );
  });

  it('counts heat: a ply held in place is stressed by -Qbar alpha dT', () => {
    const r = respond(stackOf(graphite, '[0]', 1e-3), {
      strain: [0, 0, 0],
      curvature: [0, 0, 0],
      temperatureChange: 100,
    });
    const [Q11, Q12] = [181811138844, 2896924444.35]; // clt.json CLT-01
    expect(r.N[0] / (-(Q11 * 0.02e-6 + Q12 * 22.5e-6) * 100 * 1e-3)).toBeCloseTo(1, 9);
  });
});

describe('equilibrium', () => {
  /** Simpson's rule, exact for stress times height inside a ply. */
  const through = (r: Response, thickness: readonly number[], arm: (z: number) => number): number[] =>
    [0, 1, 2].map((i) =>
      r.plies.reduce(
        (sum, { top, middle, bottom }, k) =>
          sum +
          (thickness[k]! / 6) *
            (top.stress[i]! * arm(top.z) + 4 * middle.stress[i]! * arm(middle.z) + bottom.stress[i]! * arm(bottom.z)),
        0,
      ),
    );

  it('holds: ply stresses add up to N, times height to M, with heat and moisture too', () => {
    const three = fc.tuple(...([0, 1, 2] as const).map(() => evenly(-1e5, 1e5))) as fc.Arbitrary<
      [number, number, number]
    >;
    fc.assert(
      fc.property(anyLaminate, three, three, fc.integer({ min: -150, max: 150 }), (each, N, m, temperatureChange) => {
        const h = each.thickness;
        const M = m.map((value) => value * h) as [number, number, number];
        const wet = laminate(each.plies.map((ply) => ({ ...ply, moistureExpansion: { beta1: 0.02, beta2: 0.4 } })));
        const r = respond(wet, { N, M, temperatureChange, temperatureGradient: 2000, moisture: 0.01 });
        const thickness = each.plies.map((ply) => ply.thickness);
        // The stress that the free strains would make if they were hindered: what cancels in the sums.
        const peak = Math.max(
          ...r.plies.flatMap(({ top, bottom }, k) =>
            [...top.strain12, ...bottom.strain12].map((value) => Math.abs(value) * each.plies[k]!.E1),
          ),
        );
        expectNear(
          through(r, thickness, () => 1),
          N,
          1e-10,
          peak * h,
        );
        expectNear(
          through(r, thickness, (z) => z),
          M,
          1e-10,
          peak * h * h,
        );
      }),
    );
  });
});

describe('a load that cannot be answered', () => {
  const stack = stackOf(graphite, '[0/90]', 1e-3);

  it('gives a component both ways', () => {
    expect(problemCode(() => respond(stack, { N: [1, 0, 0], strain: [1e-3, null, null] }))).toBe('contradiction');
    expect(() => respond(stack, { M: [null, 2, null], curvature: [null, 1, null] })).toThrow(
      /M = 2 and curvature = 1 .* y/,
    );
  });

  it('holds numbers that are not finite', () => {
    for (const load of [
      { N: [Number.NaN, 0, 0] as const },
      { curvature: [null, null, Number.POSITIVE_INFINITY] as const },
      { temperatureChange: Number.NaN },
      { temperatureGradient: Number.NEGATIVE_INFINITY },
      { moisture: Number.NaN },
    ]) {
      expect(problemCode(() => respond(stack, load))).toBe('not-a-number');
    }
  });

  it('heats a ply without expansion, which is named; without heat the ply is no hindrance', () => {
    const { expansion: _, ...bare } = graphite;
    const mixed = laminate([plyOf(graphite, 0, 1e-3), { ...plyOf(bare, 90, 1e-3), name: 'veil' }]);
    expect(problemCode(() => respond(mixed, { temperatureChange: 1 }))).toBe('not-computable');
    expect(() => respond(mixed, { temperatureGradient: 1 })).toThrow(/ply 2 \(veil\) has no thermal expansion/);
    expect(respond(mixed, { N: [1, 0, 0], temperatureChange: 0 }).N).toEqual([1, 0, 0]);
  });

  it('wets a ply without swelling, or lists moisture for other plies than there are', () => {
    expect(problemCode(() => respond(stack, { moisture: 0.01 }))).toBe('not-computable');
    expect(problemCode(() => moistureExpansionOf(stack))).toBe('not-computable');
    expect(problemCode(() => respond(stack, { moisture: [0, 0, 0] }))).toBe('out-of-range');
  });

  it('has not three components', () => {
    for (const wrong of [[1e5], [1, 2, 3, 4], [], 1e5, null]) {
      expect(problemCode(() => respond(stack, { N: wrong } as unknown as Load))).toBe('wrong-type');
      expect(problemCode(() => respond(stack, { curvature: wrong } as unknown as Load))).toBe('wrong-type');
    }
    expect(() => respond(stack, { N: [1e5] } as unknown as Load)).toThrow('N is a list of 1');
  });

  it('acts on a laminate that cannot be', () => {
    const impossible = laminate([plyOf({ ...graphite, nu12: 6 }, 0, 1e-3)]);
    expect(problemCode(() => respond(impossible, {}))).toBe('not-admissible');
  });
});

describe('results that a number cannot hold are refused', () => {
  const panel = stackOf(graphite, '[0/90]s', 1e-3);
  it('a response to enormous loads', () => {
    expect(problemCode(() => respond(panel, { N: [1e308, 1e308, 0] }))).toBe('not-computable');
  });
});
