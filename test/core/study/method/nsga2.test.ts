import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  acceptNsga2,
  type EvaluateGenomes,
  genomesFrom,
  type Nsga2State,
  nonDominatedRows,
  nsga2Front,
  proposeNsga2,
  spaceSize,
  startNsga2,
  stepNsga2,
} from '../../../../packages/core/src/study/index.js';
import { codesOf } from '../../stitch/support.js';

/** Two objectives against each other over genes from 0 to 9: the sum, and the sum of squares about 9; genes must add up to 6 at least. */
const counts = [10, 10, 10];
const evaluate: EvaluateGenomes = (genomes, count, objectives, violations) => {
  for (let i = 0; i < count; i++) {
    const [a, b, c] = [...genomes.subarray(3 * i, 3 * i + 3)] as [number, number, number];
    objectives[2 * i] = a + b + 2 * c;
    objectives[2 * i + 1] = (a - 9) ** 2 + 3 * (b - 9) ** 2 + (c - 9) ** 2;
    violations[i] = Math.max(0, 6 - a - b - c);
  }
};
const run = (state: Nsga2State, generations: number, by = evaluate): Nsga2State => {
  let current = state;
  for (let k = 0; k < generations; k++) current = stepNsga2(current, by);
  return current;
};

/** All 1000 genomes, and those of them that meet the constraint and that no other dominates. */
function oracle() {
  const all = genomesFrom(counts, 0, 1000);
  const objectives = new Float64Array(2000);
  const violations = new Float64Array(1000);
  evaluate(all, 1000, objectives, violations);
  const feasible = [...violations.keys()].filter((i) => violations[i] === 0);
  const table = feasible.flatMap((i) => [objectives[2 * i]!, objectives[2 * i + 1]!]);
  return [...nonDominatedRows(table, 2)].map((row) => `${table[2 * row]} ${table[2 * row + 1]}`);
}

describe('NSGA-II', () => {
  it('finds the front of a space that can be gone through, from several seeds', () => {
    const wanted = new Set(oracle());
    expect(wanted.size).toBeGreaterThan(20);
    for (const seed of [1, 2, 3]) {
      const { objectives, count } = nsga2Front(run(startNsga2(counts, 2, { population: 80, seed }), 30));
      const found = new Set(Array.from({ length: count }, (_, i) => `${objectives[2 * i]} ${objectives[2 * i + 1]}`));
      // Nothing false; nearly all, since equal objectives of several genomes take up room.
      expect([...found].filter((row) => !wanted.has(row))).toEqual([]);
      expect(found.size).toBeGreaterThan(0.9 * wanted.size);
    }
  });

  it('gives the same bits from the same seed, and others from another', () => {
    const of = (seed: number) => run(startNsga2(counts, 2, { population: 20, seed }), 5);
    expect(of(7)).toEqual(of(7));
    expect(of(7).genomes).not.toEqual(of(8).genomes);
  });

  it('goes on from a state written as JSON with the same bits as without interruption', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 0, max: 6 }), (seed, stop) => {
        const start = startNsga2(counts, 2, { population: 12, seed, initial: [9, 9, 9, 0, 0, 0] });
        const stopped = run(start, stop);
        const again: Nsga2State = JSON.parse(JSON.stringify(stopped));
        expect(again).toEqual(stopped);
        expect(run(again, 7 - stop)).toEqual(run(start, 7));
      }),
      { numRuns: 30 },
    );
  });

  it('keeps a state as plain data also where an objective is -0', () => {
    const zero: EvaluateGenomes = (_, count, objectives) => objectives.fill(-0, 0, count);
    const state = run(startNsga2([5], 1, { population: 2 }), 2, zero);
    expect(JSON.parse(JSON.stringify(state))).toEqual(state);
  });

  it('never evaluates a genome twice within members and children', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 2, max: 30 }),
        fc.integer(),
        (choices, population, seed) => {
          const one: EvaluateGenomes = (genomes, count, objectives) => {
            for (let i = 0; i < count; i++) objectives[i] = genomes[i * choices.length]!;
          };
          let state = startNsga2(choices, 1, { population, seed });
          for (let k = 0; k < 5; k++) {
            const { genomes, count } = proposeNsga2(state);
            const keys = (flat: ArrayLike<number>) =>
              Array.from({ length: flat.length / choices.length }, (_, i) =>
                Array.from(flat)
                  .slice(i * choices.length, (i + 1) * choices.length)
                  .join(),
              );
            const together = [...keys(state.genomes), ...keys(genomes)];
            expect(new Set(together).size).toBe(together.length);
            expect(count).toBeLessThanOrEqual(population);
            expect(genomes.every((gene, i) => gene < choices[i % choices.length]!)).toBe(true);
            state = stepNsga2(state, one);
            expect(state.generation).toBe(k + 1);
          }
          // The first population has all members that the space has room for.
          expect(state.violations.length).toBe(Math.min(population, Number(spaceSize(choices))));
        },
      ),
    );
  });

  it('never loses the best: the least violation, then with one objective the least value', () => {
    const hard: EvaluateGenomes = (genomes, count, objectives, violations) => {
      for (let i = 0; i < count; i++) {
        const sum = genomes[3 * i]! + genomes[3 * i + 1]! + genomes[3 * i + 2]!;
        objectives[i] = 27 - sum;
        violations[i] = Math.max(0, sum - 4);
      }
    };
    let state = startNsga2(counts, 1, { population: 10, seed: 3 });
    let best = Number.POSITIVE_INFINITY;
    for (let k = 0; k < 25; k++) {
      state = stepNsga2(state, hard);
      const now = Math.min(...state.violations.map((v, i) => 1000 * v + state.objectives[i]!));
      expect(now).toBeLessThanOrEqual(best);
      best = now;
      if (Math.min(...state.violations) > 0) expect(nsga2Front(state).count).toBe(0);
    }
    // Genes that add up to 4 and no less: 27 - 4.
    expect(best).toBe(23);
    expect(nsga2Front(state).objectives[0]).toBe(23);
  });

  it('keeps 100 members, exchanges in nine of ten cases and changes one gene on average unless told otherwise', () => {
    expect(startNsga2([3, 3, 3, 3], 1).settings).toMatchObject({ population: 100, crossover: 0.9, mutation: 0.25 });
  });

  it('starts with the genomes given', () => {
    const { genomes } = proposeNsga2(startNsga2(counts, 2, { population: 5, initial: [1, 2, 3, 9, 8, 7] }));
    expect([...genomes.subarray(0, 6)]).toEqual([1, 2, 3, 9, 8, 7]);
    expect(genomes.length).toBe(15);
  });

  it('keeps, of a front too large, the ends and those with the most room', () => {
    // A front on a line: genes are places 0 to 99, of which 0, 1, 2, 50, 99 are offered and three kept.
    const state = startNsga2([100], 2, { population: 3, initial: [0] });
    const proposal = { genomes: Int32Array.from([0, 1, 2, 50, 99]), count: 5, random: state.random };
    const objectives = [0, 99, 1, 98, 2, 97, 50, 49, 99, 0];
    expect(acceptNsga2(state, proposal, objectives, [0, 0, 0, 0, 0]).genomes).toEqual([0, 50, 99]);
  });

  it('changes genes at the rates stated', () => {
    // Without exchange a child is one of the two members but for its mutations: 12 genes of 1000 choices, so that hardly any is hit by chance.
    const many = new Array(12).fill(1000);
    const start = startNsga2(many, 1, { population: 2, crossover: 0, mutation: 0.25, seed: 5 });
    const flat: EvaluateGenomes = (_, count, objectives) => objectives.fill(1, 0, count);
    let changed = 0;
    let genes = 0;
    let state = stepNsga2(start, flat);
    for (let k = 0; k < 400; k++) {
      const { genomes, count, random } = proposeNsga2(state);
      for (let i = 0; i < count; i++) {
        const child = [...genomes.subarray(12 * i, 12 * i + 12)];
        const apart = [0, 1].map((m) => child.filter((gene, g) => gene !== state.genomes[12 * m + g]).length);
        changed += Math.min(...apart);
        genes += 12;
      }
      state = { ...state, random };
    }
    // Children without a change are changed once: of 0.75^12 = 3.2 % one gene.
    const wanted = 0.25 + 0.75 ** 12 / 12;
    expect(Math.abs(changed / genes - wanted)).toBeLessThan(4 * Math.sqrt((0.25 * 0.75) / genes));
  });

  it('exchanges the genes between two cuts at the rate stated', () => {
    const start = startNsga2(new Array(12).fill(1000), 1, { population: 2, crossover: 0.5, mutation: 0, seed: 6 });
    const flat: EvaluateGenomes = (_, count, objectives) => objectives.fill(1, 0, count);
    let state = stepNsga2(start, flat);
    let mixed = 0;
    const times = 4000;
    for (let k = 0; k < times; k++) {
      const { genomes, random } = proposeNsga2(state);
      const from = [...genomes.subarray(0, 12)].map((gene, g) =>
        [0, 1].filter((m) => gene === state.genomes[12 * m + g]),
      );
      // Children that are parents unchanged are changed in one gene, which then comes from neither.
      if (from.every((parents) => parents.length > 0)) {
        mixed++;
        const switches = from.filter(([m], g) => g > 0 && m !== from[g - 1]![0]).length;
        expect(switches).toBeGreaterThan(0);
        expect(switches).toBeLessThan(3);
      }
      state = { ...state, random };
    }
    // Parents differ in half the cases, exchange happens in half of these; of 13 × 13 pairs of cuts 13 are equal and 2 take all genes.
    const wanted = 0.5 * 0.5 * (1 - 15 / 169);
    expect(Math.abs(mixed / times - wanted)).toBeLessThan(4 * Math.sqrt((wanted * (1 - wanted)) / times));
  });

  it('refuses settings, results and states that cannot be', () => {
    const wrong = [
      () => startNsga2([], 2),
      () => startNsga2([3, 0], 2),
      () => startNsga2([3], 0),
      () => startNsga2([3], 1, { population: 1 }),
      () => startNsga2([3], 1, { seed: 0.5 }),
      () => startNsga2([3], 1, { crossover: 1.1 }),
      () => startNsga2([3], 1, { mutation: -0.1 }),
      () => startNsga2([3], 1, { initial: [3] }),
      () => startNsga2([3], 1, { population: 2, initial: [0, 1, 2] }),
    ];
    for (const call of wrong) expect(codesOf(call)).toEqual(['out-of-range']);
    expect(codesOf(() => startNsga2([3, 3], 1, { initial: [1] }))).toEqual(['contradiction']);

    const start = startNsga2(counts, 2, { population: 4 });
    const spoilt: EvaluateGenomes = (_, __, objectives) => void objectives.fill(Number.NaN);
    const below: EvaluateGenomes = (_, __, ___, violations) => void violations.fill(-1);
    const endless: EvaluateGenomes = (_, __, ___, violations) => void violations.fill(Number.POSITIVE_INFINITY);
    expect(codesOf(() => stepNsga2(start, spoilt))).toEqual(['not-computable']);
    expect(codesOf(() => stepNsga2(start, endless))).toEqual(['not-computable']);
    expect(codesOf(() => stepNsga2(start, below))).toEqual(['out-of-range']);
    const proposal = proposeNsga2(start);
    expect(codesOf(() => acceptNsga2(start, proposal, [1], [0]))).toEqual(['contradiction']);

    const state = run(start, 2);
    expect(codesOf(() => proposeNsga2({ ...state, violations: [] }))).toEqual(['contradiction']);
    expect(codesOf(() => proposeNsga2({ ...state, random: [0, 0, 0, 0] }))).toEqual(['contradiction']);
    expect(codesOf(() => proposeNsga2({ ...state, genomes: state.genomes.map(() => 10) }))).toEqual(['out-of-range']);
  });
});
