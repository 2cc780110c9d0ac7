import {
  type DesignInputs,
  type InputChange,
  type InputValue,
  locateIn,
  type SearchEntry,
  variant,
} from '../../design/index.js';
import { fail, type Path, SelvageError } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import { amountOf, numberIn } from '../amount.js';
import { evaluateVariant } from '../evaluate.js';
import { spaceSize } from '../method/enumeration.js';
import { designEvaluator } from './design-path.js';
import type { Evaluator, GenomeLayout } from './evaluator.js';
import { type Goals, goalsOf } from './goals.js';
import { kernelEvaluator } from './kernel-path.js';
import { repeatNotes } from './space-notes.js';
import { repairedStack, stackBuilder } from './stack-rules.js';
import { type StackSpace, stackCode, stackSpace, wholeAt } from './stack-space.js';

/** An input of the design with the values that it may take, each once. */
export interface VariedInput {
  readonly path: string;
  readonly values: readonly InputValue[];
  /** How many are written. */
  readonly written: number;
}

/** How many candidates there are. */
export interface SpaceSize {
  /** All combinations as written, the rules of the stack aside. */
  readonly combinations: bigint;
  /** Different candidates that keep to the rules of the stack; absent where they cannot be counted. */
  readonly candidates?: bigint;
  /** Combinations that keep to the rules and stand for a candidate that another combination stands for already. */
  readonly duplicates?: bigint;
}

/** How a search is set up beside what the design says. */
export interface SearchOptions {
  /** In place of the design's own. */
  readonly seed?: number;
  /** `design` computes every candidate as a whole design, also where the kernel would do. */
  readonly path?: 'design';
}

/** A search that is set up: what varies, what is wanted, how candidates are computed. */
export interface SearchProblem {
  readonly inputs: DesignInputs;
  readonly varied: readonly VariedInput[];
  readonly space?: StackSpace;
  readonly goals: Goals;
  readonly layout: GenomeLayout;
  /** Choices of each gene. */
  readonly counts: readonly number[];
  readonly size: SpaceSize;
  readonly evaluator: Evaluator;
  readonly method: 'exhaustive' | 'nsga2';
  readonly population: number;
  readonly generations: number;
  readonly seed: number;
  readonly keep: number;
  /** What of the choices is listed more than once or can never be used. */
  readonly notes: readonly Note[];
}

/** Up to so many candidates are gone through where the design does not say. */
const goneThrough = { kernel: 10_000_000n, design: 20_000n };
/** Beyond this nobody would wait. */
const mostCandidates = 100_000_000_000n;

const same = (a: InputValue, b: InputValue): boolean => {
  if (a === b) return true;
  const [x, y] = [amountOf(a), amountOf(b)];
  return x !== undefined && y !== undefined && numberIn(x, y.unit) === y.number;
};

/** Problems with what a computation makes of a value, at the value; where there is no such input, at its path. */
function placedAt<T>(input: Path, value: number, compute: () => T): T {
  try {
    return compute();
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    const here = ({ code, message, allowed, hint }: (typeof error.problems)[number]) => ({
      code,
      message,
      ...(allowed === undefined ? {} : { allowed }),
      ...(hint === undefined ? {} : { hint }),
      ...(code.startsWith('unknown-') ? { path: input, atKey: true } : { path: [...input, value] }),
    });
    throw new SelvageError(error.problems.map(here));
  }
}

function variedInputs(inputs: DesignInputs, { vary = {}, stack }: SearchEntry): readonly VariedInput[] {
  return Object.entries(vary).map(([path, values]) => {
    const at = ['search', 'vary', path];
    if (
      path.startsWith('search.') ||
      (stack && new RegExp(`^laminates\\.${stack.laminate}\\.stack(\\.|$)`).test(path))
    ) {
      fail({
        code: 'contradiction',
        message: `\`${path}\` cannot vary${path.startsWith('search.') ? '' : ': the search finds this stack'}`,
        allowed: 'inputs of the design that nothing else of the search sets',
        path: at,
        atKey: true,
      });
    }
    for (const [i, value] of values.entries()) placedAt(at, i, () => variant(inputs, [{ path, value }]));
    const once = values.filter((value, i) => values.findIndex((other) => same(other, value)) === i);
    return { path, values: once, written: values.length };
  });
}

function layoutOf(varied: readonly VariedInput[], space: StackSpace | undefined): GenomeLayout & { counts: number[] } {
  const inputs = varied.length;
  const counts = varied.map(({ values }) => values.length);
  if (space === undefined) return { genes: inputs, inputs, length: -1, plies: inputs, counts };
  const { lengths, choices } = space.rules;
  const length = lengths.length > 1 ? inputs : -1;
  if (length >= 0) counts.push(lengths.length);
  const plies = counts.length;
  counts.push(...new Array<number>(Math.max(...lengths)).fill(choices));
  return { genes: counts.length, inputs, length, plies, counts };
}

function sizeOf(varied: readonly VariedInput[], space: StackSpace | undefined): SpaceSize {
  const written = varied.reduce((product, one) => product * BigInt(one.written), 1n);
  const different = varied.length === 0 ? 1n : spaceSize(varied.map(({ values }) => values.length));
  if (space === undefined) return { combinations: written, candidates: different, duplicates: written - different };
  const { lengths, weights } = space.rules;
  const named = BigInt(weights.reduce((sum, weight) => sum + weight, 0));
  const combinations = written * lengths.reduce((sum, length) => sum + named ** BigInt(length), 0n);
  const count = space.counter?.all;
  if (count === undefined) return { combinations };
  const candidates = different * count.stacks;
  return { combinations, candidates, duplicates: written * count.written - candidates };
}

/** The genome's plies. */
function pliesOf({ layout, space }: Pick<SearchProblem, 'layout' | 'space'>, genome: ArrayLike<number>): number[] {
  const { lengths } = space?.rules ?? { lengths: [] };
  const length = lengths[layout.length < 0 ? 0 : (genome[layout.length] ?? 0)] ?? 0;
  return Array.from({ length }, (_, i) => genome[layout.plies + i] ?? 0);
}

/** The inputs of a candidate as they would be written in the design file. */
export function changesOf(
  { varied, layout, space }: Pick<SearchProblem, 'varied' | 'layout' | 'space'>,
  genome: ArrayLike<number>,
): readonly InputChange[] {
  const changes = varied.map(({ path, values }, i): InputChange => ({ path, value: values[genome[i] ?? 0] ?? null }));
  if (space === undefined) return changes;
  const value = stackCode(space, pliesOf({ layout, space }, genome));
  return [...changes, { path: `laminates.${space.laminate}.stack`, value }];
}

/** Refuses quantities that even the first candidate's report does not have. */
function demandQuantities(inputs: DesignInputs, first: readonly InputChange[], { quantities, places }: Goals): void {
  if ('values' in evaluateVariant(inputs, first, { quantities })) return;
  const problems = quantities.flatMap((quantity, i) => {
    const found = evaluateVariant(inputs, first, { quantities: [quantity] });
    if ('values' in found) return [];
    // Problems of the candidate itself have a place in the file; that of a name has none, and a load that breaks nothing has no value.
    const wrong = found.problems.filter(
      ({ code, where, message }) => code === 'unknown-name' && where === undefined && !message.includes('has no value'),
    );
    return wrong.map((problem) => ({ ...problem, path: places[i] ?? ['search'] }));
  });
  if (problems.length > 0) throw new SelvageError(problems);
}

/**
 * Sets up the search of a design.
 * @throws SelvageError with places in the file: `missing-key` no `search`, nothing that varies, no aim; names that are not there, values that an input does not take,
 * rules that no stack keeps to, limits in units that do not fit; `too-large` more candidates than can be gone through where `method: exhaustive` asks for it
 */
export function searchProblem(inputs: DesignInputs, options: SearchOptions = {}): SearchProblem {
  try {
    return setUp(inputs, options);
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    throw new SelvageError(
      error.problems.flatMap((problem) => (problem.where === undefined ? locateIn(inputs, [problem]) : [problem])),
    );
  }
}

function setUp(inputs: DesignInputs, { seed, path }: SearchOptions): SearchProblem {
  const { search } = inputs.design;
  if (search === undefined) {
    return fail({
      code: 'missing-key',
      message: 'the design has no `search`',
      allowed: 'what varies and what is wanted',
      path: [],
    });
  }
  const varied = variedInputs(inputs, search);
  const repeats = Object.entries(search.vary ?? {}).flatMap(([name, values]) => repeatNotes(name, values, same));
  const space = search.stack === undefined ? undefined : stackSpace(inputs, search.stack);
  if (varied.length === 0 && space === undefined) {
    fail({
      code: 'missing-key',
      message: 'nothing varies in the search',
      allowed: '`vary`, `stack` or both',
      path: ['search'],
      atKey: true,
    });
  }
  const goals = goalsOf(inputs, search);
  const { counts, ...layout } = layoutOf(varied, space);
  const parts = { varied, layout, ...(space === undefined ? {} : { space }) };
  const kernel =
    path === 'design' || varied.length > 0 || space === undefined
      ? undefined
      : kernelEvaluator(inputs, space, layout, goals.quantities);
  // The kernel knows its quantities by name; a whole design takes as long as thousands of laminates.
  if (kernel === undefined) demandQuantities(inputs, changesOf(parts, firstGenome(layout, space)), goals);
  const evaluator =
    kernel ?? designEvaluator(inputs, layout.genes, (genome) => changesOf(parts, genome), goals.quantities);
  const size = sizeOf(varied, space);
  const number = (key: 'population' | 'generations' | 'seed' | 'keep', otherwise: number): number =>
    wholeAt(search[key] ?? otherwise, key, ['search', key]);
  return {
    inputs,
    ...parts,
    goals,
    counts,
    size,
    evaluator,
    method: methodOf(search, size, evaluator.path),
    population: number('population', 100),
    generations: number('generations', 100),
    seed: seed ?? number('seed', 1),
    keep: number('keep', 20),
    notes: [...repeats, ...(space?.notes ?? [])],
  };
}

function methodOf(
  { method }: SearchEntry,
  { candidates }: SpaceSize,
  path: Evaluator['path'],
): SearchProblem['method'] {
  if (method === 'nsga2') return method;
  if (method === undefined) return candidates !== undefined && candidates <= goneThrough[path] ? 'exhaustive' : 'nsga2';
  if (candidates !== undefined && candidates <= mostCandidates) return method;
  return fail({
    code: 'too-large',
    message:
      candidates === undefined
        ? 'the candidates of the search cannot be counted, so they cannot be gone through'
        : `there are ${candidates} candidates to go through`,
    allowed: `at most ${mostCandidates}`,
    hint: 'leave out choices, or search with `method: nsga2`',
    path: ['search', 'method'],
  });
}

/** The first candidate in the order of counting. */
function firstGenome({ genes, plies }: GenomeLayout, space: StackSpace | undefined): Int32Array {
  const genome = new Int32Array(genes);
  if (space === undefined) return genome;
  const builder = stackBuilder(space.rules, space.rules.lengths[0] ?? 1);
  if (repairedStack(space.rules, builder, [])) genome.set(builder.stack, plies);
  return genome;
}
