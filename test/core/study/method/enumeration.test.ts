import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  countableSize,
  genomeAt,
  genomeIndex,
  genomesFrom,
  shareOf,
  spaceSize,
} from '../../../../packages/core/src/study/index.js';
import { codesOf } from '../../stitch/support.js';

const spaces = fc.array(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 6 });

describe('the numbering of a space', () => {
  it('counts exactly at any size', () => {
    expect(spaceSize([3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3])).toBe(531441n);
    expect(spaceSize(new Array(60).fill(4))).toBe(2n ** 120n);
    expect(countableSize([2, 5, 3])).toBe(30);
  });

  it('leads from number to genome and back, without leaving any out', () => {
    fc.assert(
      fc.property(spaces, (counts) => {
        const size = Math.min(countableSize(counts), 500);
        const run = genomesFrom(counts, 0, size);
        for (let index = 0; index < size; index++) {
          const genome = genomeAt(counts, index);
          expect([...genome]).toEqual([...run.subarray(index * counts.length, (index + 1) * counts.length)]);
          expect(genomeIndex(counts, genome)).toBe(index);
        }
      }),
    );
  });

  it('orders genomes by their first unequal gene', () => {
    expect([...genomesFrom([2, 3], 0, 6)]).toEqual([0, 0, 0, 1, 0, 2, 1, 0, 1, 1, 1, 2]);
    expect([...genomesFrom([2, 3], 2, 2)]).toEqual([0, 2, 1, 0]);
  });

  it('is exact near the largest whole number', () => {
    const counts = [2 ** 26, 2 ** 26];
    const last = 2 ** 52 - 1;
    expect([...genomeAt(counts, last)]).toEqual([2 ** 26 - 1, 2 ** 26 - 1]);
    expect(genomeIndex(counts, genomeAt(counts, last - 12345))).toBe(last - 12345);
  });

  it('is divided into shares that follow each other, leave nothing out and differ by one at most', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: Number.MAX_SAFE_INTEGER }), fc.integer({ min: 1, max: 300 }), (size, n) => {
        const shares = Array.from({ length: n }, (_, k) => shareOf(size, k + 1, n));
        const lengths = shares.map(({ from, to }) => to - from);
        expect(shares[0]?.from).toBe(0);
        expect(shares.at(-1)?.to).toBe(size);
        for (let k = 1; k < n; k++) expect(shares[k]?.from).toBe(shares[k - 1]?.to);
        expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('refuses what is no space, no number and no share', () => {
    for (const counts of [[], [0], [2, -1], [1.5], [Number.NaN], [2 ** 31]]) {
      expect(codesOf(() => spaceSize(counts))).toEqual(['out-of-range']);
    }
    expect(codesOf(() => countableSize(new Array(60).fill(4)))).toEqual(['too-large']);
    expect(codesOf(() => countableSize([10, 10], 99))).toEqual(['too-large']);
    expect(codesOf(() => genomeAt([2, 3], 6))).toEqual(['out-of-range']);
    expect(codesOf(() => genomeAt([2, 3], -1))).toEqual(['out-of-range']);
    expect(codesOf(() => genomesFrom([2, 3], 4, 3))).toEqual(['out-of-range']);
    expect(codesOf(() => genomesFrom([2, 3], 4, 0))).toEqual(['out-of-range']);
    expect(codesOf(() => genomesFrom(new Array(60).fill(4), 0, 1))).toEqual(['too-large']);
    expect(codesOf(() => genomeIndex([2, 3], [0, 3]))).toEqual(['out-of-range']);
    expect(codesOf(() => genomeIndex([2, 3], [0]))).toEqual(['out-of-range']);
    for (const [size, k, n] of [
      [-1, 1, 1],
      [5, 0, 2],
      [5, 3, 2],
      [5, 1, 0],
    ] as const) {
      expect(codesOf(() => shareOf(size, k, n))).toEqual(['out-of-range']);
    }
  });
});
