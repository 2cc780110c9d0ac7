import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EvaluatePoints, linearMoments } from '../../../../packages/core/src/study/index.js';
import { codesOf, expectNear } from '../../stitch/support.js';

const pointwise =
  (width: number, f: (x: readonly number[]) => number): EvaluatePoints =>
  (inputs, count, outputs) => {
    for (let i = 0; i < count; i++) outputs[i] = f([...inputs.subarray(i * width, (i + 1) * width)]);
  };
const number = fc.integer({ min: -200, max: 200 }).map((k) => k / 8);

describe('first-order second moments', () => {
  it('are exact for a linear response: mean a·μ + c, variance Σ (a σ)²', () => {
    const input = fc.record({
      mean: number,
      standardDeviation: number.map((x) => Math.abs(x) + 0.125),
      factor: number,
    });
    fc.assert(
      fc.property(
        fc.array(input, { minLength: 1, maxLength: 6 }),
        number,
        fc.constantFrom(1, 0.001, 2),
        (inputs, c, step) => {
          const factors = inputs.map(({ factor }) => factor);
          const f = pointwise(inputs.length, (x) => x.reduce((sum, value, i) => sum + factors[i]! * value, c));
          const found = linearMoments(inputs, f, { step });
          const variance = inputs.reduce(
            (sum, { factor, standardDeviation }) => sum + (factor * standardDeviation) ** 2,
            0,
          );
          const scale = 1 + Math.sqrt(variance);
          expect(found.mean).toBeCloseTo(
            inputs.reduce((sum, { factor, mean }) => sum + factor * mean, c),
            9,
          );
          expect(Math.abs(found.standardDeviation - Math.sqrt(variance)) / scale).toBeLessThan(1e-8);
          expect(Math.abs(found.secondOrderMean - found.mean) / scale).toBeLessThan(1e-4);
          found.effects.forEach(({ effect, share }, i) => {
            expect(effect / scale).toBeCloseTo((factors[i]! * inputs[i]!.standardDeviation) / scale, 7);
            if (variance > 0)
              expect(share).toBeCloseTo((factors[i]! * inputs[i]!.standardDeviation) ** 2 / variance, 7);
          });
        },
      ),
    );
  });

  it('have the exact derivatives and second-order mean for a quadratic response, whatever the step', () => {
    // x² + 3 x y with x = 2 ± 0.5, y = 1 ± 0.2: slopes 7 and 6; E = μx² + σx² + 3 μx μy.
    const inputs = [
      { mean: 2, standardDeviation: 0.5 },
      { mean: 1, standardDeviation: 0.2 },
    ];
    for (const step of [1, 0.1, 0.01]) {
      const found = linearMoments(
        inputs,
        pointwise(2, ([x, y]) => x! * x! + 3 * x! * y!),
        { step },
      );
      expectNear(found.mean, 10);
      expectNear(found.effects[0]!.derivative, 7, 1e-11);
      expectNear(found.effects[1]!.derivative, 6, 1e-11);
      expectNear(found.standardDeviation, Math.hypot(3.5, 1.2), 1e-11);
      expectNear(found.secondOrderMean, 10.25, 1e-9);
      expect(found.effects[0]!.share + found.effects[1]!.share).toBeCloseTo(1, 12);
    }
  });

  it('name a bend that moves the mean by more than a tenth of the standard deviation', () => {
    const about = (mean: number) =>
      linearMoments(
        [{ mean, standardDeviation: 1 }],
        pointwise(1, ([x]) => x! * x!),
      ).notes.filter(({ level }) => level === 'warning').length;
    // The shift is 1 and the standard deviation 2 μ.
    expect(about(4.97)).toBe(1);
    expect(about(5.03)).toBe(0);
    expect(about(0)).toBe(1);
  });

  it('give an input that is known exactly no effect', () => {
    const found = linearMoments(
      [
        { mean: 2, standardDeviation: 0 },
        { mean: 1, standardDeviation: 1 },
      ],
      pointwise(2, ([x, y]) => x! * y!),
    );
    expect(found.effects).toEqual([
      { derivative: 0, effect: 0, share: 0 },
      { derivative: 2, effect: 2, share: 1 },
    ]);
    const still = linearMoments(
      [{ mean: 2, standardDeviation: 0 }],
      pointwise(1, ([x]) => x!),
    );
    expect([still.standardDeviation, still.effects[0]!.share]).toEqual([0, 0]);
  });

  it('are refused for moments, steps and outputs that cannot be', () => {
    const one = [{ mean: 1, standardDeviation: 1 }];
    const f = pointwise(1, ([x]) => x!);
    expect(codesOf(() => linearMoments([], f))).toEqual(['out-of-range']);
    expect(codesOf(() => linearMoments([{ mean: 1, standardDeviation: -1 }], f))).toEqual(['out-of-range']);
    expect(codesOf(() => linearMoments([{ mean: Number.NaN, standardDeviation: 1 }], f))).toEqual(['out-of-range']);
    expect(codesOf(() => linearMoments(one, f, { step: 0 }))).toEqual(['out-of-range']);
    expect(
      codesOf(() =>
        linearMoments(
          one,
          pointwise(1, () => Number.POSITIVE_INFINITY),
        ),
      ),
    ).toEqual(['not-computable']);
  });
});
