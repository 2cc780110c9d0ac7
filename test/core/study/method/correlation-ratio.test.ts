import { describe, expect, it } from 'vitest';
import { uniformRandom } from '../../../../packages/core/src/numeric/index.js';
import { correlationRatio, type Distribution, sampleRows } from '../../../../packages/core/src/study/index.js';
import { codesOf } from '../../stitch/support.js';

const normal: Distribution = { kind: 'normal', mean: 0, standardDeviation: 1 };

/** Samples of x and of f(x, noise). */
function samples(n: number, seed: number, f: (x: number, noise: number) => number) {
  const rows = sampleRows([normal, normal], n, uniformRandom(seed));
  const x = Array.from({ length: n }, (_, i) => rows[2 * i]!);
  return { x, y: x.map((value, i) => f(value, rows[2 * i + 1]!)) };
}

describe('the correlation ratio', () => {
  it('is the share of the variance that comes from the input, straight or bent', () => {
    // x + noise: 1/2. x² + noise: Var x² = 2, so 2/3. Noise alone: 0.
    for (const [f, share] of [
      [(x: number, noise: number) => x + noise, 1 / 2],
      [(x: number, noise: number) => x * x + noise, 2 / 3],
      [(_: number, noise: number) => noise, 0],
    ] as const) {
      const { x, y } = samples(20_000, 4, f);
      const { value, low, high } = correlationRatio(x, y, { resamples: 50 });
      expect(Math.abs(value - share)).toBeLessThan(0.025);
      expect(low).toBeLessThan(value);
      expect(high).toBeGreaterThan(value);
      expect(high - low).toBeLessThan(0.06);
    }
  });

  it('holds the true share about as often as stated, and is 0 on average for an input that does nothing', () => {
    let held = 0;
    let sum = 0;
    const runs = 150;
    for (let seed = 1; seed <= runs; seed++) {
      const { x, y } = samples(300, seed, (value, noise) => value + 2 * noise);
      const { low, high } = correlationRatio(x, y, { resamples: 100, seed });
      if (low <= 0.2 && high >= 0.2) held++;
      const nothing = samples(300, seed, (_, noise) => noise);
      sum += correlationRatio(nothing.x, nothing.y, { resamples: 50 }).value;
    }
    expect(Math.abs(held / runs - 0.95)).toBeLessThan(0.09);
    // One value scatters by about √(2 · 16)/300 = 0.019.
    expect(Math.abs(sum / runs)).toBeLessThan((4 * 0.02) / Math.sqrt(runs));
  });

  it('is 1 where the output follows from few values of the input', () => {
    const x = Array.from({ length: 40 }, (_, i) => i % 4);
    expect(
      correlationRatio(
        x,
        x.map((value) => value ** 2),
        { groups: 8 },
      ).value,
    ).toBeCloseTo(1, 12);
  });

  it('does not depend on the order of the samples', () => {
    const x = Array.from({ length: 60 }, (_, i) => (7 * i) % 12);
    const y = x.map((value, i) => value + ((13 * i) % 5));
    const order = x.map((_, i) => (i * 17 + 3) % 60);
    const shuffled = correlationRatio(
      order.map((i) => x[i]!),
      order.map((i) => y[i]!),
    );
    expect(shuffled.value).toBeCloseTo(correlationRatio(x, y).value, 12);
  });

  it('is 0 for outputs alike and for inputs alike, and the same bits from the same seed', () => {
    const x = Array.from({ length: 20 }, (_, i) => i);
    expect(
      correlationRatio(
        x,
        x.map(() => 0.1),
      ),
    ).toEqual({ value: 0, low: 0, high: 0 });
    expect(
      correlationRatio(
        x.map(() => 3),
        x,
      ),
    ).toEqual({ value: 0, low: 0, high: 0 });
    const { y } = samples(20, 1, (a, noise) => a + noise);
    expect(correlationRatio(x, y, { seed: 2 })).toEqual(correlationRatio(x, y, { seed: 2 }));
    expect(correlationRatio(x, y, { seed: 2 })).not.toEqual(correlationRatio(x, y, { seed: 3 }));
  });

  it('refuses samples that do not fit or are too few', () => {
    const x = Array.from({ length: 20 }, (_, i) => i);
    expect(codesOf(() => correlationRatio(x, x.slice(1)))).toEqual(['contradiction']);
    expect(codesOf(() => correlationRatio(x.slice(11), x.slice(11)))).toEqual(['out-of-range']);
    expect(codesOf(() => correlationRatio(x, x, { groups: 11 }))).toEqual(['out-of-range']);
    expect(codesOf(() => correlationRatio(x, x, { resamples: 1 }))).toEqual(['out-of-range']);
    expect(
      codesOf(() =>
        correlationRatio(
          x,
          x.map(() => Number.NaN),
        ),
      ),
    ).toEqual(['not-computable']);
    expect(
      codesOf(() =>
        correlationRatio(
          x.map(() => Number.POSITIVE_INFINITY),
          x,
        ),
      ),
    ).toEqual(['not-computable']);
  });
});
