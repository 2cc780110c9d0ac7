import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { uniformRandom } from '../../../../packages/core/src/numeric/index.js';
import {
  addToArchive,
  emptyArchive,
  mergeArchives,
  nonDominatedRows,
  type ParetoArchive,
  representativeRows,
} from '../../../../packages/core/src/study/index.js';
import { codesOf } from '../../stitch/support.js';

const rowsOf = (flat: ArrayLike<number>, width: number): number[][] =>
  Array.from({ length: flat.length / width }, (_, i) => Array.from(flat).slice(i * width, (i + 1) * width));
const dominates = (a: readonly number[], b: readonly number[]): boolean =>
  a.every((value, k) => value <= b[k]!) && a.some((value, k) => value < b[k]!);

const tables = fc.integer({ min: 1, max: 4 }).chain((width) =>
  fc.record({
    width: fc.constant(width),
    rows: fc.array(fc.array(fc.integer({ min: -4, max: 4 }), { minLength: width, maxLength: width }), {
      maxLength: 50,
    }),
  }),
);

describe('the rows that no other dominates', () => {
  it('are those found by comparing all with all', () => {
    fc.assert(
      fc.property(tables, ({ width, rows }) => {
        const found = nonDominatedRows(rows.flat(), width);
        const wanted = rows.flatMap((row, i) => (rows.some((other) => dominates(other, row)) ? [] : [i]));
        expect([...found].sort((a, b) => a - b)).toEqual(wanted);
      }),
    );
  });

  it('stand in the order of their first unequal objective, equals by their number', () => {
    expect([...nonDominatedRows([3, 1, 1, 3, 3, 1, 2, 2, 2, 3], 2)]).toEqual([1, 3, 0, 2]);
  });

  it('are found among a hundred thousand', () => {
    // On the curve x y = 1 nothing is dominated; a point moved up by any amount is by the one below it.
    const random = uniformRandom(5);
    const n = 50_000;
    const table = new Float64Array(4 * n);
    for (let i = 0; i < n; i++) {
      const x = 1 + i;
      table.set([x, 1 / x, x, 1 / x + random()], 4 * i);
    }
    expect([...nonDominatedRows(table, 2)]).toEqual(Array.from({ length: n }, (_, i) => 2 * i));
  });

  it('refuse incomplete rows and numbers that are not finite', () => {
    expect(codesOf(() => nonDominatedRows([1, 2, 3], 2))).toEqual(['contradiction']);
    expect(codesOf(() => nonDominatedRows([1, Number.NaN], 2))).toEqual(['not-computable']);
    expect(codesOf(() => nonDominatedRows([1], 0))).toEqual(['out-of-range']);
  });
});

describe('rows that stand for a front', () => {
  it('keep the ends and the order, and lose the most crowded', () => {
    const front = [0, 10, 1, 9, 1.1, 8.9, 5, 5, 10, 0];
    expect(representativeRows(front, 2, 5)).toEqual([0, 1, 2, 3, 4]);
    expect(representativeRows(front, 2, 4)).toEqual([0, 2, 3, 4]);
    expect(representativeRows(front, 2, 3)).toEqual([0, 3, 4]);
    expect(representativeRows(front, 2, 2)).toEqual([0, 4]);
    expect(representativeRows(front, 2, 1)).toEqual([0]);
    expect(codesOf(() => representativeRows(front, 2, 0))).toEqual(['out-of-range']);
    expect(codesOf(() => representativeRows(front, 0, 2))).toEqual(['out-of-range']);
  });
});

/** Genomes with objectives in quarters, in steps of which some are coarse. */
const offers = fc.integer({ min: 1, max: 3 }).chain((width) =>
  fc.record({
    steps: fc.array(fc.constantFrom(0, 0.5, 1, 1.7), { minLength: width, maxLength: width }),
    rows: fc.array(
      fc.record({
        genome: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 2, maxLength: 2 }),
        objectives: fc.array(
          fc.integer({ min: -16, max: 16 }).map((quarters) => quarters / 4),
          { minLength: width, maxLength: width },
        ),
      }),
      { maxLength: 40 },
    ),
  }),
);
type Offer = { readonly genome: readonly number[]; readonly objectives: readonly number[] };
const offered = (archive: ParetoArchive, rows: readonly Offer[]): ParetoArchive =>
  addToArchive(
    archive,
    rows.flatMap(({ genome }) => genome),
    rows.flatMap(({ objectives }) => objectives),
  );

describe('an archive', () => {
  it('without steps holds each objective vector that is not dominated, once', () => {
    fc.assert(
      fc.property(offers, ({ steps, rows }) => {
        const archive = offered(
          emptyArchive(
            2,
            steps.map(() => 0),
          ),
          rows,
        );
        const all = rows.map(({ objectives }) => objectives);
        const best = all.filter((row) => !all.some((other) => dominates(other, row)));
        const distinct = [...new Map(best.map((row) => [row.join(), row])).values()];
        const found = rowsOf(archive.objectives, steps.length);
        expect(new Set(found.map((row) => row.join()))).toEqual(new Set(distinct.map((row) => row.join())));
        expect(archive.count).toBe(distinct.length);
        rowsOf(archive.genomes, 2).forEach((genome, i) => {
          const alike = rows.filter(({ objectives }) => objectives.join() === found[i]!.join());
          expect(genome.join()).toBe(alike.map((row) => row.genome.join()).sort()[0]);
        });
      }),
    );
  });

  it('does not depend on order or portions of the offers, and merging is offering to one', () => {
    fc.assert(
      fc.property(offers, fc.nat(40), fc.nat(40), fc.integer(), ({ steps, rows }, i, j, seed) => {
        const none = emptyArchive(2, steps);
        const whole = offered(none, rows);
        const random = uniformRandom(seed);
        const mixed = rows
          .map((row) => ({ row, key: random() }))
          .sort((p, q) => p.key - q.key)
          .map(({ row }) => row);
        const [a, b, c] = [mixed.slice(0, i), mixed.slice(i, i + j), mixed.slice(i + j)].map((part) =>
          offered(none, part),
        );
        expect(mixed.reduce((archive, row) => offered(archive, [row]), none)).toEqual(whole);
        expect(mergeArchives(mergeArchives(a!, b!), c!)).toEqual(whole);
        expect(mergeArchives(a!, mergeArchives(b!, c!))).toEqual(whole);
        expect(mergeArchives(c!, mergeArchives(b!, a!))).toEqual(whole);
        expect(mergeArchives(whole, whole)).toEqual(whole);
        expect(offered(JSON.parse(JSON.stringify(a)), [...mixed.slice(i)])).toEqual(whole);
      }),
      { numRuns: 300 },
    );
  });

  it('with steps keeps nothing that is dominated, and leaves out nothing that is better by more than a step', () => {
    fc.assert(
      fc.property(offers, ({ steps, rows }) => {
        const kept = rowsOf(offered(emptyArchive(2, steps), rows).objectives, steps.length);
        for (const { objectives } of rows) {
          expect(kept.some((row) => dominates(objectives, row))).toBe(false);
          expect(kept.some((row) => row.every((value, k) => value < objectives[k]! + (steps[k]! || 1e-12)))).toBe(true);
        }
      }),
    );
  });

  it('with steps stays as small as its boxes: at most k of two objectives over k steps', () => {
    const random = uniformRandom(8);
    let archive = emptyArchive(1, [0.1, 0.1]);
    for (let batch = 0; batch < 20; batch++) {
      const x = Array.from({ length: 500 }, random);
      archive = addToArchive(
        archive,
        x.map(() => batch),
        x.flatMap((value) => [value, 1 - value]),
      );
      expect(archive.count).toBeLessThanOrEqual(10);
    }
    expect(archive.count).toBeGreaterThan(4);
  });

  it('refuses tables and archives that do not fit', () => {
    const none = emptyArchive(2, [0, 0]);
    expect(codesOf(() => addToArchive(none, [1], [1, 2]))).toEqual(['contradiction']);
    expect(codesOf(() => addToArchive(none, [1, 2], [1]))).toEqual(['contradiction']);
    expect(codesOf(() => addToArchive(none, [1, 2], [1, Number.POSITIVE_INFINITY]))).toEqual(['not-computable']);
    expect(codesOf(() => mergeArchives(none, emptyArchive(2, [0, 1])))).toEqual(['contradiction']);
    expect(codesOf(() => mergeArchives(none, emptyArchive(3, [0, 0])))).toEqual(['contradiction']);
    expect(codesOf(() => emptyArchive(0, [0]))).toEqual(['out-of-range']);
    expect(codesOf(() => emptyArchive(1, []))).toEqual(['out-of-range']);
    expect(codesOf(() => emptyArchive(1, [-1]))).toEqual(['out-of-range']);
  });
});
