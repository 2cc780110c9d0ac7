import { describe, expect, it } from 'vitest';
import { type DesignInputs, designInputs } from '../../../../packages/core/src/design/index.js';
import { evaluateVariant } from '../../../../packages/core/src/study/index.js';
import {
  acceptGeneration,
  acceptRange,
  candidateText,
  evaluateGenomes,
  evaluateRange,
  finishSearch,
  genomeBlocks,
  isSearchComplete,
  mergeSearches,
  proposeGeneration,
  rangeBlocks,
  readSearchState,
  type SearchProblem,
  type SearchState,
  search,
  searchProblem,
  searchResult,
  startSearch,
} from '../../../../packages/core/src/study/search/index.js';
import { oneAim, severalAims, stitched, withSearch } from './designs.js';

const inputsOf = (text: string): DesignInputs => designInputs(text);
const stackOf = (candidate: { inputs: readonly { value: unknown }[] }) => candidate.inputs.at(-1)!.value as string;

/** Every stack of `severalAims` by plain loops, with the rules looked at in its angles: a stack in words and what it comes to. */
function bruteForce(inputs: DesignInputs) {
  const plies = ['ud', 'stiff'].flatMap((material) => [0, 45, -45, 90].map((angle) => ({ material, angle })));
  let stacks: { material: string; angle: number }[][] = [[]];
  const found: { code: string; mass: number; Ex: number; Gxy: number }[] = [];
  let [keeping, combinations] = [0, 0];
  for (let length = 1; length <= 3; length++) {
    stacks = stacks.flatMap((stack) => plies.map((ply) => [...stack, ply]));
    if (length < 2) continue;
    combinations += stacks.length;
    for (const half of stacks) {
      const whole = [...half, ...half.toReversed()];
      const key = whole.map(({ material, angle }) => `${angle}${material}`);
      if (key.some((ply, i) => ply === key[i + 1] && ply === key[i + 2])) continue;
      const count = (material: string, angle: number) => key.filter((one) => one === `${angle}${material}`).length;
      if (['ud', 'stiff'].some((material) => count(material, 45) !== count(material, -45))) continue;
      keeping++;
      const code = `[${half.map(({ material, angle }) => `${angle}${material === 'stiff' ? 'c' : ''}`).join('/')}]s`;
      const quantities = [
        'laminates.skin.arealMass',
        'laminates.skin.flexural.Ex',
        'laminates.skin.inPlane.Gxy',
        'laminates.skin.inPlane.Ey',
        'loads.pull.failure.tsaiWu.ratio',
      ];
      const evaluated = evaluateVariant(inputs, [{ path: 'laminates.skin.stack', value: code }], { quantities });
      if (!('values' in evaluated)) throw new Error(`${code}: ${evaluated.problems[0]!.message}`);
      const [mass = 0, Ex = 0, Gxy = 0, Ey = 0, ratio = 0] = evaluated.values;
      if (Ey >= 12e9 && ratio >= 1.05) found.push({ code, mass, Ex, Gxy });
    }
  }
  // No other is nowhere worse and somewhere better; 1e-9 apart counts as equal.
  const better = (a: number, b: number): boolean => a < b - 1e-9 * Math.abs(b);
  const costs = found.map(({ mass, Ex, Gxy }) => [mass, -Ex, -Gxy]);
  const front = found.filter((_, i) =>
    costs.every(
      (other) =>
        !(
          costs[i]!.every((cost, k) => !better(cost, other[k]!)) && costs[i]!.some((cost, k) => better(other[k]!, cost))
        ),
    ),
  );
  return { combinations, keeping, met: found.length, front };
}

describe('a search that goes through all candidates', () => {
  const inputs = inputsOf(severalAims);
  const found = search(inputs);

  it('finds the front that plain loops over whole designs find', () => {
    const plain = bruteForce(inputs);
    const { size, evaluator, method } = found.problem;
    expect([evaluator.path, method]).toEqual(['kernel', 'exhaustive']);
    expect(size).toEqual({
      combinations: BigInt(plain.combinations),
      candidates: BigInt(plain.keeping),
      duplicates: 0n,
    });
    expect(found.state.tally.evaluated).toBe(plain.keeping);
    expect(found.state.tally.evaluated - found.state.tally.missed).toBe(plain.met);
    const places = (list: readonly (readonly number[])[]) =>
      [...new Set(list.map((numbers) => numbers.map((one) => one.toPrecision(9)).join(' ')))].sort();
    expect(found.front).toBe(found.candidates.length);
    expect(places(found.candidates.map(({ values }) => values.slice(0, 3)))).toEqual(
      places(plain.front.map(({ mass, Ex, Gxy }) => [mass, Ex, Gxy])),
    );
    for (const candidate of found.candidates) expect(plain.front.map(({ code }) => code)).toContain(stackOf(candidate));
    expect(found.candidates.length).toBeGreaterThan(2);
  });

  it('gives the same by the kernel and by whole designs', () => {
    const slow = search(inputs, { path: 'design' });
    expect(slow.problem.evaluator.path).toBe('design');
    expect(slow.state.tally.evaluated).toBe(found.state.tally.evaluated);
    expect(slow.state.tally.missed).toBe(found.state.tally.missed);
    expect(slow.candidates.map(stackOf)).toEqual(found.candidates.map(stackOf));
  });

  it('states the margin of every limit, those of the design’s hard targets among them', () => {
    expect(found.problem.goals.limits.map(({ path, of }) => [path, of])).toEqual([
      ['laminates.skin.inPlane.Ey', 'search'],
      ['loads.pull.failure.tsaiWu.ratio', 'target'],
    ]);
    for (const { limits } of found.candidates) {
      expect(limits.every(({ met, margin }) => met && margin >= 0)).toBe(true);
      expect(limits[0]!.margin).toBeCloseTo(limits[0]!.value - 12e9, 0);
    }
  });

  it('writes each candidate as a design file that comes to its numbers', () => {
    for (const candidate of found.candidates) {
      const text = candidateText(found.problem, candidate);
      expect(text).toContain('# the beginning');
      const evaluated = evaluateVariant(inputsOf(text), [], { quantities: found.problem.goals.quantities });
      if (!('values' in evaluated)) throw new Error('not computed');
      evaluated.values.forEach((value, i) => {
        expect(candidate.values[i]! / value).toBeCloseTo(1, 11);
      });
    }
  });

  it('shows the best in order where there is one aim', () => {
    const { candidates, problem } = search(inputsOf(oneAim));
    const ratios = candidates.map(({ values }) => values[0]!);
    expect(ratios).toHaveLength(5);
    expect(ratios).toEqual([...ratios].sort((a, b) => b - a));
    const every = search(inputsOf(oneAim.replace('keep: 5', 'keep: 1000')));
    const passed = every.state.tally.evaluated - every.state.tally.missed;
    expect(every.candidates).toHaveLength(passed);
    expect(every.candidates.slice(0, 5).map(stackOf)).toEqual(candidates.map(stackOf));
    expect(problem.size.candidates).toBe(every.problem.size.candidates);
  });

  it('takes inputs of stitching by their paths, each value once however it is written', () => {
    const { problem, state, candidates } = search(inputsOf(stitched));
    expect(problem.evaluator.path).toBe('design');
    expect(problem.varied.map(({ values, written }) => [values.length, written])).toEqual([
      [3, 4],
      [2, 2],
    ]);
    expect(problem.size).toEqual({ combinations: 4n * 2n * 12n, candidates: 72n, duplicates: 24n });
    expect(state.tally.evaluated).toBe(72);
    expect(new Set(candidates[0]!.inputs.map(({ path }) => path)).size).toBe(3);
  });

  it('tells which candidate comes closest where none keeps to the limits', () => {
    const none = search(inputsOf(severalAims.replace('12 GPa', '450 GPa')));
    expect(none.candidates).toEqual([]);
    expect(none.closest!.limits[0]!.met).toBe(false);
    const best = search(
      inputsOf(
        severalAims.replace(/ {2}minimise[\s\S]*/, '  maximise: [laminates.skin.inPlane.Ey]\n  targets: false\n'),
      ),
    );
    expect(none.closest!.values[3]).toBeLessThanOrEqual(best.candidates[0]!.values[0]! * (1 + 1e-12));
  });
});

describe('plies named twice', () => {
  const duplicated = withSearch(`  stack:
    laminate: skin
    choices: [0, 180, { angle: 90, material: ud }, -90, { angle: 90, material: stiff }]
    plies: 3
  minimise: [laminates.skin.arealMass]
`);

  it('are one choice, and their laminates are evaluated once', () => {
    const keyOf = [0, 0, 1, 1, 2];
    const seen = new Set<string>();
    let written = 0;
    for (const a of keyOf) {
      for (const b of keyOf) {
        for (const c of keyOf) {
          written++;
          seen.add(`${a}${b}${c}`);
        }
      }
    }
    const { problem, state } = search(inputsOf(duplicated));
    expect(problem.size).toEqual({
      combinations: BigInt(written),
      candidates: BigInt(seen.size),
      duplicates: BigInt(written - seen.size),
    });
    expect(state.tally.evaluated).toBe(seen.size);
  });
});

describe('a search that breeds its candidates', () => {
  const bred = (text: string): string => `${text}  method: nsga2\n  population: 40\n  generations: 60\n`;

  it.each([
    ['several aims', severalAims],
    ['one aim', oneAim],
    ['stitching beside a stack', stitched],
  ])('finds what going through all finds: %s', (_, text) => {
    const through = search(inputsOf(text));
    const found = search(inputsOf(bred(text)));
    expect(found.problem.method).toBe('nsga2');
    expect(found.state.tally.leaders.objectives).toEqual(through.state.tally.leaders.objectives);
    expect(found.state.tally.leaders.genomes).toEqual(through.state.tally.leaders.genomes);
  });

  it('gives the same bits from the same seed, and another way from another', () => {
    const inputs = inputsOf(bred(severalAims).replace('generations: 60', 'generations: 5'));
    const once = search(inputs).state;
    expect(JSON.stringify(search(inputs).state)).toBe(JSON.stringify(once));
    expect(JSON.stringify(search(inputs, { seed: 2 }).state)).not.toBe(JSON.stringify(once));
  });

  it('goes on from a state kept as JSON with the same bits, whatever the blocks', () => {
    const problem = searchProblem(inputsOf(bred(severalAims).replace('generations: 60', 'generations: 8')));
    const step = (state: SearchState): SearchState => {
      const proposal = proposeGeneration(problem, state)!;
      const results = genomeBlocks(problem, proposal.genomes).map((genomes) => evaluateGenomes(problem, { genomes }));
      return acceptGeneration(state, proposal, {
        objectives: Float64Array.from(results.flatMap(({ objectives }) => [...objectives])),
        violations: Float64Array.from(results.flatMap(({ violations }) => [...violations])),
      });
    };
    let state = startSearch(problem);
    for (let i = 0; i < 3; i++) state = step(state);
    expect(isSearchComplete(problem, state)).toBe(false);
    const resumed = finishSearch(problem, JSON.parse(JSON.stringify(state)));
    expect(JSON.stringify(resumed)).toBe(JSON.stringify(finishSearch(problem, startSearch(problem))));
  });

  it('joins runs with different seeds, and refuses the same twice', () => {
    const inputs = inputsOf(bred(severalAims).replace('generations: 60', 'generations: 3'));
    const [a, b] = [1, 2].map((seed) => search(inputs, { seed }).state);
    const problem = searchProblem(inputs);
    const merged = mergeSearches(problem, [b!, a!]);
    expect(merged.seeds).toEqual([1, 2]);
    expect(merged.tally.evaluated).toBe(a!.tally.evaluated + b!.tally.evaluated);
    expect(searchResult(problem, merged).complete).toBe(true);
    expect(codeOf(() => mergeSearches(problem, [a!, a!]))).toBe('contradiction');
  });

  it('has no shares', () => {
    expect(codeOf(() => startSearch(searchProblem(inputsOf(bred(severalAims))), [1, 2]))).toBe('contradiction');
  });
});

const codeOf = (run: () => unknown): string => {
  try {
    run();
    return 'nothing';
  } catch (error) {
    return (error as { problems: { code: string }[] }).problems[0]!.code;
  }
};

describe('shares of a search', () => {
  const problem = searchProblem(inputsOf(severalAims));
  const whole = JSON.stringify(finishSearch(problem, startSearch(problem)));
  const shares = [1, 2, 3, 4, 5].map((k) => finishSearch(problem, startSearch(problem, [k, 5])));

  it('put together in any order are the whole, bit by bit', () => {
    expect(JSON.stringify(mergeSearches(problem, shares))).toBe(whole);
    expect(JSON.stringify(mergeSearches(problem, JSON.parse(JSON.stringify(shares.toReversed()))))).toBe(whole);
  });

  it('put together in part can be gone on with', () => {
    const [one, , three, , five] = shares;
    const part = mergeSearches(problem, [five!, one!, three!]);
    expect(searchResult(problem, part).complete).toBe(false);
    expect(JSON.stringify(finishSearch(problem, part))).toBe(whole);
  });

  it('stopped and resumed are the whole', () => {
    const state = startSearch(problem);
    const stretch = { from: 0, to: 33 };
    const stopped = acceptRange(state, stretch, evaluateRange(problem, stretch));
    expect([...rangeBlocks(problem, stopped)][0]!.from).toBe(33);
    expect(JSON.stringify(finishSearch(problem, JSON.parse(JSON.stringify(stopped))))).toBe(whole);
  });

  it('of another design, or twice the same, are refused', () => {
    const other: SearchProblem = searchProblem(inputsOf(severalAims.replace('12 GPa', '13 GPa')));
    expect(codeOf(() => mergeSearches(other, shares))).toBe('contradiction');
    expect(codeOf(() => mergeSearches(problem, [shares[0]!, shares[0]!]))).toBe('contradiction');
  });

  it('of stitching beside a stack come out the same', () => {
    const mixed = searchProblem(inputsOf(stitched));
    const parts = [1, 2, 3, 4, 5, 6, 7].map((k) => finishSearch(mixed, startSearch(mixed, [k, 7])));
    expect(JSON.stringify(mergeSearches(mixed, parts))).toBe(JSON.stringify(finishSearch(mixed, startSearch(mixed))));
  });
});

describe('a state read from a file', () => {
  const problem = searchProblem(inputsOf(severalAims));
  const state = finishSearch(problem, startSearch(problem));
  const read = (change: (copy: { state: SearchState & { tally: never } }) => unknown): string =>
    codeOf(() => readSearchState(problem, change(JSON.parse(JSON.stringify({ state })))));

  it('is the state that was written', () => {
    expect(readSearchState(problem, JSON.parse(JSON.stringify({ state })))).toEqual(state);
  });

  it('is refused where it is none, and where it does not fit the search', () => {
    expect(read(() => undefined)).toBe('wrong-type');
    expect(read(({ state: { tally: _, ...rest } }) => ({ state: rest }))).toBe('wrong-type');
    expect(read(({ state: found }) => ({ state: { ...found, method: 'nsga2' } }))).toBe('contradiction');
    expect(read(({ state: found }) => ({ state: { ...found, fingerprint: '0' } }))).toBe('contradiction');
    const { leaders } = state.tally;
    const leading = (other: object) => ({
      state: { ...state, tally: { ...state.tally, leaders: { ...leaders, ...other } } },
    });
    expect(read(() => leading({ most: 3 }))).toBe('contradiction');
    expect(read(() => leading({ genomes: leaders.genomes.map(() => 99) }))).toBe('contradiction');
    expect(read(() => leading({ objectives: [] }))).toBe('contradiction');
  });

  it('is refused where a breeding has a population of another shape', () => {
    const bred = searchProblem(inputsOf(`${severalAims}  method: nsga2\n  population: 8\n  generations: 1\n`));
    const found = finishSearch(bred, startSearch(bred));
    const broken = { ...found, population: { ...found.population!, violations: [] } };
    expect(readSearchState(bred, { state: found })).toEqual(found);
    expect(codeOf(() => readSearchState(bred, { state: broken }))).toBe('contradiction');
  });
});
