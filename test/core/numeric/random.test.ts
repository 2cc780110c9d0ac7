import { describe, expect, it } from 'vitest';
import { randomGenerator, uniformRandom, xoshiro128 } from '../../../packages/core/src/numeric/index.js';

describe('the generator of random numbers', () => {
  it('gives the words of xoshiro128** from the state 1, 2, 3, 4', () => {
    // The first four are known from published tests of the algorithm; all ten were computed with whole numbers in Python.
    const words = [11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804];
    const next = xoshiro128([1, 2, 3, 4]);
    expect(words.map(() => next())).toEqual(words);
  });

  it('repeats from the same seed and differs from another', () => {
    const run = (seed: number) => Array.from({ length: 5 }, uniformRandom(seed));
    expect(run(7)).toEqual(run(7));
    expect(run(7)).not.toEqual(run(8));
    expect(run(0).every((value) => value > 0 && value < 1)).toBe(true);
  });

  it('tells all seeds apart, not only by their lowest 32 bits', () => {
    const start = (seed: number) => randomGenerator(seed).state().join();
    const seeds = [0, 1, 7].flatMap((low) => [0, 2 ** 32, 3 * 2 ** 32, 2 ** 52].map((high) => low + high));
    expect(new Set([...seeds, Number.MAX_SAFE_INTEGER].map(start)).size).toBe(seeds.length + 1);
  });

  it('begins at the finished words of the seed below 2^32', () => {
    // The finishing function of a 32-bit hash on 7 + k * 0x9e3779b9, computed with whole numbers in Python.
    expect(
      randomGenerator(7)
        .state()
        .map((word) => word >>> 0),
    ).toEqual([588686121, 1937383562, 4286812467, 2372217166]);
  });

  it('goes on from its state with the same bits', () => {
    const { random, state } = randomGenerator(11);
    const first = Array.from({ length: 5 }, random);
    const kept = JSON.parse(JSON.stringify(state()));
    const rest = Array.from({ length: 5 }, random);
    expect(Array.from({ length: 5 }, randomGenerator(kept).random)).toEqual(rest);
    expect([...first, ...rest]).toEqual(Array.from({ length: 10 }, uniformRandom(11)));
  });

  it('spreads evenly: mean, variance and correlation of neighbours within four standard errors', () => {
    for (const seed of [0, 1, 2 ** 31, -5, 2 ** 32 + 1, 2 ** 52]) {
      const n = 20_000;
      const random = uniformRandom(seed);
      const values = Array.from({ length: n }, () => random() - 0.5);
      const mean = values.reduce((sum, x) => sum + x, 0) / n;
      const variance = values.reduce((sum, x) => sum + x * x, 0) / n;
      const neighbours = values.slice(1).reduce((sum, x, i) => sum + x * values[i]!, 0) / n;
      expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(12 * n));
      expect(Math.abs(variance - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / n));
      expect(Math.abs(neighbours)).toBeLessThan(4 / 12 / Math.sqrt(n));
    }
  });
});
