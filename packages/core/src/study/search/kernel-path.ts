import { assemble, type DesignInputs, strengthOptionsOf } from '../../design/index.js';
import {
  allocateBatch,
  type BatchStrength,
  type Criterion,
  evaluateBatch,
  isIsotropic,
  layout,
  makeQbarTable,
  makeStrengthTable,
  STRIDE,
  type StrengthOptions,
  type StrengthTable,
} from '../../laminate/index.js';
import type { Ply } from '../../material/index.js';
import { SelvageError } from '../../problem/index.js';
import { evaluateVariant } from '../evaluate.js';
import type { Evaluator, GenomeLayout } from './evaluator.js';
import { type KernelOutput, kernelOutputs, massOf } from './kernel-outputs.js';
import { type StackSpace, stackCode } from './stack-space.js';

/** Laminates computed at a time. */
const mostLaminates = 1024;
/** The limit of `stiffness`. */
const largestCondition = 1e14;

/** Layers of all choices in flat tables; those of choice c have the places `first[c]` up to `first[c + 1]`. */
interface LayerTable {
  readonly layers: readonly Ply[];
  readonly first: Int32Array;
  readonly thickness: Float64Array;
}

function layerTable(lists: readonly (readonly Ply[])[]): LayerTable {
  const layers = lists.flat();
  const first = new Int32Array(lists.length + 1);
  lists.forEach((list, c) => {
    first[c + 1] = first[c]! + list.length;
  });
  return { layers, first, thickness: Float64Array.from(layers, (ply) => ply.thickness) };
}

/** One table of strength for layers of different materials. */
function strengthTable(layers: readonly Ply[], criterion: Criterion, options: StrengthOptions): StrengthTable {
  const tables = layers.map((ply) => makeStrengthTable([ply], [ply.angle], criterion, options));
  return {
    criterion,
    stress: Float64Array.from(tables.flatMap(({ stress }) => [...stress])),
    constants: tables.flatMap(({ constants }) => constants),
    expands: tables.every(({ expands }) => expands),
  };
}

/** Whether the kernel judges these layers as `failure` does: every layer but a core has strengths, and none is a mat. */
const isJudgeable = (layers: readonly Ply[]): boolean =>
  layers.every((ply) => ply.strengths !== undefined || ply.core === true) &&
  layers.every((ply) => ply.strengths === undefined || !isIsotropic(ply));

/** Loads and criteria by which the kernel has to be run: one run for each criterion and set of its options. */
function strengthRuns(inputs: DesignInputs, outputs: readonly KernelOutput[], layers: readonly Ply[]) {
  const { loads } = assemble(inputs.design);
  const runs: { key: string; loads: string[]; strength: BatchStrength }[] = [];
  for (const output of outputs) {
    if (output.from !== 'ratio') continue;
    const load = loads.find(({ name }) => name === output.load);
    if (load === undefined) continue;
    const options = strengthOptionsOf(load);
    const key = JSON.stringify([output.criterion, options]);
    const forces = [...(load.N ?? [0, 0, 0]), ...(load.M ?? [0, 0, 0])].map((force) => force ?? 0);
    const change = load.temperatureChange ?? 0;
    const run = runs.find((one) => one.key === key);
    if (run?.loads.includes(load.name)) continue;
    const all = [...(run?.strength.loads ?? []), ...forces];
    const changes = [...(run?.strength.temperatureChange ?? []), change];
    const strength = {
      table: run?.strength.table ?? strengthTable(layers, output.criterion, options),
      loads: Float64Array.from(all),
      temperatureChange: Float64Array.from(changes),
    };
    if (run === undefined) runs.push({ key, loads: [load.name], strength });
    else {
      run.loads.push(load.name);
      run.strength = strength;
    }
  }
  return {
    runs: runs.map(({ loads: names, strength: { temperatureChange, ...rest } }) => {
      // Without heat the kernel has a quicker way.
      const isHeated = temperatureChange?.some((change) => change !== 0) === true;
      const strength: BatchStrength = isHeated ? { ...rest, temperatureChange } : rest;
      return { loads: names, strength };
    }),
    runOf: (output: KernelOutput & { from: 'ratio' }): { run: number; load: number } => {
      const load = loads.find(({ name }) => name === output.load);
      const key = JSON.stringify([output.criterion, load === undefined ? {} : strengthOptionsOf(load)]);
      const run = runs.findIndex((one) => one.key === key);
      return { run, load: runs[run]?.loads.indexOf(output.load) ?? 0 };
    },
  };
}

/** Whether the whole design takes stacks of every choice and length: what does not depend on the order of plies can then be left out. */
function takesAll(inputs: DesignInputs, space: StackSpace): boolean {
  const { laminate, rules } = space;
  const path = `laminates.${laminate}.stack`;
  const stacks = rules.lengths.flatMap((length) =>
    space.choices.map((_, choice) => stackCode(space, new Array<number>(length).fill(choice))),
  );
  return stacks.every((value) => !('problems' in evaluateVariant(inputs, [{ path, value }], { quantities: [] })));
}

/**
 * Computes candidates by the flat kernel, where only the stack of one laminate varies and every quantity follows from it.
 *
 * The numbers are those of the whole design, to rounding: thickness, masses, entries of A, B, D and their inverse, constants in plane and in bending, strength ratios under forces
 * and a change of temperature; quantities of other laminates are constants.
 *
 * @returns undefined where a quantity needs more than that: closed tools, mats, layers without strengths, other parts of the design
 */
export function kernelEvaluator(
  inputs: DesignInputs,
  space: StackSpace,
  { genes, length: lengthGene, plies: firstPly }: GenomeLayout,
  quantities: readonly string[],
): Evaluator | undefined {
  const { design } = inputs;
  if (design.laminates[space.laminate]?.process?.kind === 'closedTool') return undefined;
  const { loads } = assemble(design);
  const outputs = kernelOutputs(inputs, loads, space.laminate, quantities);
  if (outputs === undefined || !takesAll(inputs, space)) return undefined;

  const { choices, lengths, symmetric } = space.rules;
  const lists = [...space.layers.map(({ plain }) => plain), ...space.layers.map(({ mirrored }) => mirrored)];
  const { layers, first, thickness } = layerTable(lists);
  const judged = outputs.some(({ from }) => from === 'ratio');
  if (judged && !isJudgeable(layers)) return undefined;
  const masses = outputs.map((output) =>
    output.from === 'sum' ? layers.map((ply) => massOf(ply, output.mass)) : undefined,
  );
  if (masses.some((list) => list?.includes(undefined))) return undefined;
  const sums = masses.map((list) => (list === undefined ? undefined : Float64Array.from(list as number[])));

  let found: ReturnType<typeof strengthRuns>;
  try {
    found = strengthRuns(inputs, outputs, layers);
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    // What a criterion does not take is said by the design path, at its place.
    return undefined;
  }
  const steady = outputs.map(({ from }, i): number => {
    if (from !== 'constant') return 0;
    const one = evaluateVariant(inputs, [], { quantities: [quantities[i] ?? ''] });
    return 'values' in one ? (one.values[0] ?? Number.NaN) : Number.NaN;
  });
  if (steady.some(Number.isNaN)) return undefined;
  const heated = found.runs.some(({ strength }) => strength.temperatureChange !== undefined && !strength.table.expands);
  if (heated) return undefined;

  const thickest = lists.reduce((most, list) => Math.max(most, list.length), 0);
  const mostPlies = mostLaminates * Math.max(...lengths) * thickest * (symmetric ? 2 : 1);
  const qbarTable = Float64Array.from(layers.flatMap((ply) => [...makeQbarTable([ply], [ply.angle])]));
  const runs = (found.runs.length > 0 ? found.runs : [undefined]).map((run) =>
    allocateBatch(mostLaminates, mostPlies, qbarTable, run?.strength),
  );
  const shared = runs[0]!;
  // All runs read the same stacks.
  const jobs = runs.map(({ batch, out }, i) => ({
    loads: found.runs[i]?.loads.length ?? 0,
    batch: { ...shared.batch, ...(batch.strength === undefined ? {} : { strength: batch.strength }) },
    out,
  }));
  const { plyOffsets, row, thickness: thick } = shared.batch;
  const places = outputs.map((output) => (output.from === 'ratio' ? found.runOf(output) : { run: 0, load: 0 }));

  /** Lays the layers of the genomes from `from` on into the batch. */
  const fill = (genomes: Int32Array, from: number, count: number): void => {
    let at = 0;
    for (let k = 0; k < count; k++) {
      const start = (from + k) * genes;
      const n = lengths[lengthGene < 0 ? 0 : genomes[start + lengthGene]!]!;
      const ply = start + firstPly;
      for (let i = 0, end = symmetric ? 2 * n : n; i < end; i++) {
        const choice = i < n ? genomes[ply + i]! : choices + genomes[ply + end - 1 - i]!;
        for (let layer = first[choice]!, last = first[choice + 1]!; layer < last; layer++) {
          row[at] = layer;
          thick[at] = thickness[layer]!;
          at++;
        }
      }
      plyOffsets[k + 1] = at;
    }
  };
  const width = quantities.length;
  const read = (from: number, count: number, values: Float64Array, computed: Uint8Array): void => {
    const { values: rows, status } = shared.out;
    for (let k = 0; k < count; k++) {
      computed[from + k] = status[k] === 0 && rows[k * STRIDE + layout.condition]! <= largestCondition ? 1 : 0;
    }
    for (let q = 0; q < width; q++) {
      const { from: kind, ...output } = outputs[q]!;
      const { run, load } = places[q]!;
      const { out, loads: loadCount } = jobs[run]!;
      // A row of the kernel, or one of its ratios: either is a column of a flat table.
      const table = kind === 'ratio' ? out.ratio! : rows;
      const stride = kind === 'ratio' ? loadCount : STRIDE;
      const offset = kind === 'ratio' ? load : 'offset' in output ? output.offset : 0;
      const sum = sums[q];
      for (let k = 0; k < count; k++) {
        let value = kind === 'constant' || sum !== undefined ? steady[q]! : table[k * stride + offset]!;
        if (sum !== undefined) for (let i = plyOffsets[k]!; i < plyOffsets[k + 1]!; i++) value += sum[row[i]!]!;
        values[(from + k) * width + q] = value;
        // A load that breaks nothing has no ratio, as in the report.
        if (!Number.isFinite(value)) computed[from + k] = 0;
      }
    }
  };
  return {
    path: 'kernel',
    evaluate(genomes, count, values, computed) {
      for (let from = 0; from < count; from += mostLaminates) {
        const many = Math.min(mostLaminates, count - from);
        fill(genomes, from, many);
        for (const { batch, out } of jobs)
          evaluateBatch({ ...batch, plyOffsets: plyOffsets.subarray(0, many + 1) }, out);
        read(from, many, values, computed);
      }
      return undefined;
    },
  };
}
