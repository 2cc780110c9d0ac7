import { describe, expect, it } from 'vitest';
import {
  type Distribution,
  type EvaluatePoints,
  saltelliDesign,
  sobolIndices,
  sobolIndicesOf,
} from '../../../../packages/core/src/study/index.js';
import { codesOf, expectNear } from '../../stitch/support.js';

const pointwise =
  (width: number, f: (x: Float64Array) => number): EvaluatePoints =>
  (inputs, count, outputs) => {
    for (let i = 0; i < count; i++) outputs[i] = f(inputs.subarray(i * width, (i + 1) * width));
  };
const angle: Distribution = { kind: 'uniform', low: -Math.PI, high: Math.PI };

/**
 * Ishigami and Homma 1990: sin x + a sin² y + b z⁴ sin x, all inputs even over -π to π. Means over one period: sin² is 1/2, sin⁴ 3/8; z⁴ is π⁴/5, z⁸ π⁸/9.
 * Given x the mean is sin x (1 + b π⁴/5) + a/2, given y it is a sin² y, given z it does not change; x and z together add b sin x (z⁴ - π⁴/5).
 */
const [a, b] = [7, 0.1];
const ishigami = (x: Float64Array) => Math.sin(x[0]!) + a * Math.sin(x[1]!) ** 2 + b * x[2]! ** 4 * Math.sin(x[0]!);
const Vx = (1 + (b * Math.PI ** 4) / 5) ** 2 / 2;
const Vy = a ** 2 * (3 / 8 - 1 / 4);
const Vxz = (b ** 2 * (Math.PI ** 8 / 9 - Math.PI ** 8 / 25)) / 2;
const V = Vx + Vy + Vxz;

describe('Sobol indices', () => {
  it('of the Ishigami function add up to its printed variance', () => {
    // a²/8 + b π⁴/5 + b² π⁸/18 + 1/2, Ishigami and Homma 1990, recalled, not re-read.
    expectNear(V, a ** 2 / 8 + (b * Math.PI ** 4) / 5 + (b ** 2 * Math.PI ** 8) / 18 + 1 / 2);
  });

  it('of the Ishigami function are the exact ones within the stated ranges and a few hundredths', () => {
    const exact = [
      [Vx / V, (Vx + Vxz) / V],
      [Vy / V, Vy / V],
      [0, Vxz / V],
    ] as const;
    for (const seed of [1, 2]) {
      const { indices, mean, variance } = sobolIndices([angle, angle, angle], pointwise(3, ishigami), {
        samples: 8192,
        seed,
        resamples: 100,
        confidence: 0.999,
      });
      expect(Math.abs(mean - a / 2)).toBeLessThan(0.1);
      expect(Math.abs(variance / V - 1)).toBeLessThan(0.03);
      indices.forEach(({ first, total }, i) => {
        const [S, T] = exact[i]!;
        expect(Math.abs(first.value - S)).toBeLessThan(0.03);
        expect(Math.abs(total.value - T)).toBeLessThan(0.03);
        // The range of 100 resamples ends at the outermost ones.
        expect(first.low - 0.01).toBeLessThan(S);
        expect(first.high + 0.01).toBeGreaterThan(S);
        expect(total.low - 0.01).toBeLessThan(T);
        expect(total.high + 0.01).toBeGreaterThan(T);
      });
    }
  });

  it('follow from the outputs by the estimators of Jansen', () => {
    // A is 0 and 2 in turn, B is 1: mean 1, variance 1/2, so that all sums of squares are divided by 10. The mixed tables are A itself and 3.
    const A = [0, 2, 0, 2, 0, 2, 0, 2, 0, 2];
    const { indices, mean, variance } = sobolIndicesOf([...A, ...A.map(() => 1), ...A, ...A.map(() => 3)], 10);
    expect([mean, variance]).toEqual([1, 0.5]);
    expect(indices.map(({ first, total }) => [first.value, total.value])).toEqual([
      [0, 0],
      [1 - 40 / 10, (5 * 9 + 5 * 1) / 10],
    ]);
  });

  it('of a linear model are the shares of the variance, first order and total alike', () => {
    const inputs: Distribution[] = [
      { kind: 'normal', mean: 5, standardDeviation: 1 },
      { kind: 'normal', mean: -2, standardDeviation: 2 },
      { kind: 'uniform', low: 0, high: Math.sqrt(12) },
    ];
    // 3 x + y - 2 z: variances 9, 4, 4.
    const { indices } = sobolIndices(
      inputs,
      pointwise(3, ([x, y, z]) => 3 * x! + y! - 2 * z!),
      { samples: 4000, resamples: 50 },
    );
    [9, 4, 4].forEach((part, i) => {
      expect(Math.abs(indices[i]!.first.value - part / 17)).toBeLessThan(0.05);
      expect(Math.abs(indices[i]!.total.value - part / 17)).toBeLessThan(0.03);
    });
  });

  it('are exactly nothing in total for an input that moves nothing', () => {
    const { indices } = sobolIndices(
      [angle, angle],
      pointwise(2, ([x]) => Math.exp(x!)),
      { samples: 500, resamples: 50 },
    );
    expect(indices[1]!.total).toEqual({ value: 0, low: 0, high: 0 });
    expect(Math.abs(indices[1]!.first.value)).toBeLessThan(0.2);
    expect(indices[1]!.first.low).toBeLessThan(0);
    expect(indices[1]!.first.high).toBeGreaterThan(0);
    expect(indices[0]!.total.value).toBeGreaterThan(0.9);
  });

  it('lie within their ranges about as often as stated', () => {
    // x + y with variances 1 and 3 by 120 independent studies: 95 % ± four standard deviations of 2 %, and a little for 300 samples.
    const inputs: Distribution[] = [1, 3].map((v) => ({ kind: 'normal', mean: 0, standardDeviation: Math.sqrt(v) }));
    let first = 0;
    let total = 0;
    for (let seed = 1; seed <= 120; seed++) {
      const found = sobolIndices(
        inputs,
        pointwise(2, ([x, y]) => x! + y!),
        { samples: 300, seed, resamples: 200 },
      ).indices[0]!;
      if (found.first.low <= 0.25 && found.first.high >= 0.25) first++;
      if (found.total.low <= 0.25 && found.total.high >= 0.25) total++;
    }
    for (const held of [first, total]) expect(Math.abs(held / 120 - 0.95)).toBeLessThan(0.1);
  });

  it('are the same bits from the same seed', () => {
    const of = (seed: number) =>
      sobolIndices([angle, angle, angle], pointwise(3, ishigami), { samples: 50, seed, resamples: 50 });
    expect(of(3)).toEqual(of(3));
    expect(of(3).indices).not.toEqual(of(4).indices);
  });

  it('do not change when the output is measured in another unit or from another zero', () => {
    const outputs = new Float64Array(250);
    pointwise(3, ishigami)(saltelliDesign([angle, angle, angle], 50, 2), 250, outputs);
    const plain = sobolIndicesOf(outputs, 50, { resamples: 50 });
    const other = sobolIndicesOf(
      outputs.map((y) => 1000 * y + 5e4),
      50,
      { resamples: 50 },
    );
    plain.indices.forEach(({ first, total }, i) => {
      for (const key of ['value', 'low', 'high'] as const) {
        expect(other.indices[i]!.first[key]).toBeCloseTo(first[key], 10);
        expect(other.indices[i]!.total[key]).toBeCloseTo(total[key], 10);
      }
    });
  });

  it('say so when the output never changes', () => {
    const { indices, notes } = sobolIndices(
      [angle],
      pointwise(1, () => 4),
      { samples: 20, resamples: 50 },
    );
    expect(indices).toEqual([{ first: { value: 0, low: 0, high: 0 }, total: { value: 0, low: 0, high: 0 } }]);
    expect(notes.map(({ level }) => level)).toEqual(['assumption', 'warning']);
  });

  it('are refused for samples, seeds and outputs that cannot be', () => {
    const still = pointwise(1, () => 1);
    for (const options of [{ samples: 9 }, { seed: 0.5 }, { resamples: 49 }, { confidence: 1 }, { samples: 1e7 }]) {
      expect(codesOf(() => sobolIndices([angle], still, options))).toEqual(['out-of-range']);
    }
    expect(codesOf(() => sobolIndices([], still))).toEqual(['out-of-range']);
    expect(
      codesOf(() =>
        sobolIndices(
          [angle],
          pointwise(1, () => Number.NaN),
        ),
      ),
    ).toEqual(['not-computable']);
    expect(codesOf(() => sobolIndicesOf([1, 2, 3, 4], 3))).toEqual(['contradiction']);
    expect(codesOf(() => sobolIndicesOf(new Float64Array(20), 10))).toEqual(['contradiction']);
  });
});

describe("Saltelli's design", () => {
  it('has two independent tables, then the first with each column from the second', () => {
    const rows = saltelliDesign([angle, angle], 10, 3);
    const at = (table: number, row: number, column: number) => rows[(table * 10 + row) * 2 + column];
    for (let row = 0; row < 10; row++) {
      expect([at(2, row, 0), at(2, row, 1)]).toEqual([at(1, row, 0), at(0, row, 1)]);
      expect([at(3, row, 0), at(3, row, 1)]).toEqual([at(0, row, 0), at(1, row, 1)]);
      expect(at(0, row, 0)).not.toBe(at(1, row, 0));
    }
    expect(rows.length).toBe(80);
  });
});
