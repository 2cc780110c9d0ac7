import { type DesignInputs, type InputChange, kindAt, type TargetResult } from '../design/index.js';
import { uniformRandom } from '../numeric/index.js';
import { fail } from '../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../provenance/index.js';
import type { KindName } from '../quantity/index.js';
import { roundOff, written } from './amount.js';
import { evaluateDesign, evaluateVariant } from './evaluate.js';
import { type Convergence, convergence } from './method/convergence.js';
import { correlationRatio } from './method/correlation-ratio.js';
import { momentsOf } from './method/distribution-moments.js';
import type { RangedEstimate } from './method/estimate.js';
import { limitProbability } from './method/limit-probability.js';
import { type LinearMoments, linearMoments } from './method/linear-moments.js';
import { type SampleSummary, sampleSummary } from './method/sample-summary.js';
import { sampleRows } from './method/sampled-model.js';
import { type UncertainInput, uncertainInputs } from './tolerances.js';

/** What is known of one quantity. */
export interface UncertainQuantity {
  readonly path: string;
  readonly kind: KindName;
  /** With the inputs as written, SI. */
  readonly nominal: number;
  /** First order, second moments. */
  readonly linear: LinearMoments;
  readonly summary: SampleSummary;
  readonly convergence: Convergence;
  /** Share of the variance that each input explains by itself, in the order of the inputs. */
  readonly causes: readonly RangedEstimate[];
}

/** How likely a target is met. */
export interface TargetProbability extends Pick<TargetResult, 'quantity' | 'kind' | 'atLeast' | 'atMost' | 'hard'> {
  readonly probability: RangedEstimate;
}

/** How sure the results of a design are, from the tolerances of its inputs. */
export interface Uncertainty {
  readonly inputs: readonly UncertainInput[];
  readonly samples: number;
  readonly seed: number;
  /** Samples of which the design could not be computed; they are left out. */
  readonly failed: number;
  readonly quantities: readonly UncertainQuantity[];
  readonly targets: readonly TargetProbability[];
  /** Probability that all hard targets are met together; absent without hard targets. */
  readonly allMet?: RangedEstimate;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** How many samples are drawn, and from which seed. */
export interface UncertaintyOptions {
  /** Whole, 100 to 1 000 000; 2000 when not given. */
  readonly samples?: number;
  /** Whole; 1 when not given. */
  readonly seed?: number;
}

/** Of more samples than these no more are left out silently than this share. */
const mostFailed = 0.05;

const changesOf = (inputs: readonly UncertainInput[], row: ArrayLike<number>, at: number): InputChange[] =>
  inputs.map(({ path, amount }, i) => ({ path, value: written({ ...amount, number: row[at + i] ?? 0 }) }));

/**
 * Quantities of a design whose inputs have tolerances: seeded Monte Carlo beside first order and second moments, how likely each target is met, and
 * which input causes the spread.
 *
 * Inputs are independent of each other. The same design, samples and seed give the same bits.
 *
 * @param quantities dotted paths of numbers in the JSON report
 * @throws SelvageError see `uncertainInputs`, `evaluateDesign`; `missing-key` a design without tolerances; `out-of-range` samples; `not-computable`
 * more than 5 % of the samples cannot be computed, with the first reason
 */
export function uncertainty(
  inputs: DesignInputs,
  quantities: readonly string[],
  { samples = 2000, seed = 1 }: UncertaintyOptions = {},
): Uncertainty {
  check(samples, quantities);
  const uncertain = uncertainInputs(inputs);
  if (uncertain.length === 0) {
    fail({
      code: 'missing-key',
      message: 'the design has no `tolerances`',
      allowed: 'a list of inputs, each with its range',
    });
  }
  const nominal = evaluateDesign(inputs.design, { quantities, targets: true });
  const judged = nominal.targets;
  const wanted = [...quantities, ...judged.map(({ quantity }) => quantity)];
  const single = [...nominal.values, ...judged.map(({ value }) => value)];
  const rows = sampleRows(
    uncertain.map(({ distribution }) => distribution),
    samples,
    uniformRandom(seed),
  );
  const columns = wanted.map(() => new Float64Array(samples));
  const kept = new Int32Array(samples);
  let count = 0;
  let reason = '';
  for (let row = 0; row < samples; row++) {
    const found = evaluateVariant(inputs, changesOf(uncertain, rows, row * uncertain.length), { quantities: wanted });
    if ('problems' in found) {
      reason ||= found.problems[0]?.message ?? '';
      continue;
    }
    kept[count] = row;
    for (const [q, column] of columns.entries()) column[count] = withoutRoundOff(found.values[q] ?? 0, single[q] ?? 0);
    count++;
  }
  if (samples - count > mostFailed * samples) {
    fail({
      code: 'not-computable',
      message: `${samples - count} of ${samples} samples cannot be computed: ${reason}`,
      allowed: `at most ${100 * mostFailed} %`,
      hint: 'narrow the tolerances, or choose a distribution with ends',
    });
  }
  const values = columns.map((column) => column.subarray(0, count));
  const drawn = uncertain.map((_, i) =>
    Float64Array.from({ length: count }, (_, k) => rows[(kept[k] ?? 0) * uncertain.length + i] ?? 0),
  );
  const found = quantities.map((path, q): UncertainQuantity => {
    const column = values[q] ?? new Float64Array();
    return {
      path,
      kind: kindAt(path.split('.')),
      nominal: nominal.values[q] ?? 0,
      linear: linearOf(inputs, uncertain, path, nominal.values[q] ?? 0),
      summary: sampleSummary(column),
      convergence: convergence(column),
      causes: drawn.map((input) => correlationRatio(input, column, { seed })),
    };
  });
  const targets = judged.map((target, t): TargetProbability => {
    const { quantity, kind, atLeast, atMost, hard } = target;
    const limit = { ...(atLeast !== undefined && { atLeast }), ...(atMost !== undefined && { atMost }) };
    const column = values[quantities.length + t] ?? new Float64Array();
    return { quantity, kind, ...limit, hard, probability: limitProbability(column, limit) };
  });
  const all = together(targets, values.slice(quantities.length), count);
  return {
    inputs: uncertain,
    samples,
    seed,
    failed: samples - count,
    quantities: found,
    targets,
    ...(all !== undefined && { allMet: all }),
    notes: [...rangeNotes(uncertain), ...notesOf(found, samples - count, samples, reason)],
    sources: uniqueSources(...found.flatMap(({ linear, summary }) => [linear.sources, summary.sources]), [
      'wilson-1927',
    ]),
  };
}

function check(samples: number, quantities: readonly string[]): void {
  const refuse = (message: string, allowed: string): never => fail({ code: 'out-of-range', message, allowed });
  if (!(Number.isInteger(samples) && samples >= 100 && samples <= 1_000_000)) {
    refuse(`samples = ${samples}, must be whole, 100 to 1000000`, '100 to 1000000');
  }
  if (quantities.length === 0) refuse('no quantity', 'one or more numbers of the JSON report');
}

function linearOf(
  inputs: DesignInputs,
  uncertain: readonly UncertainInput[],
  quantity: string,
  nominal: number,
): LinearMoments {
  const width = uncertain.length;
  return linearMoments(
    uncertain.map(({ distribution }) => momentsOf(distribution)),
    (points, count, outputs) => {
      for (let row = 0; row < count; row++) {
        const found = evaluateVariant(inputs, changesOf(uncertain, points, row * width), { quantities: [quantity] });
        outputs[row] = 'values' in found ? withoutRoundOff(found.values[0] ?? 0, nominal) : Number.NaN;
      }
    },
  );
}

/** A value that differs from that of the design by round-off is that. */
const withoutRoundOff = (value: number, nominal: number): number =>
  Math.abs(value - nominal) <= roundOff * Math.abs(nominal) ? nominal : value;

/** The share of samples in which every hard target is met. */
function together(
  targets: readonly TargetProbability[],
  values: readonly Float64Array[],
  count: number,
): RangedEstimate | undefined {
  const hard = targets.flatMap((target, t) => (target.hard ? [{ ...target, values: values[t] }] : []));
  if (hard.length === 0) return undefined;
  const met = Float64Array.from({ length: count }, (_, k) =>
    hard.every(({ values: column, atLeast = Number.NEGATIVE_INFINITY, atMost = Number.POSITIVE_INFINITY }) => {
      const value = column?.[k] ?? 0;
      return value >= atLeast && value <= atMost;
    })
      ? 1
      : 0,
  );
  return limitProbability(met, { atLeast: 1 });
}

/** Ranges that leave out the value of the design. */
const rangeNotes = (uncertain: readonly UncertainInput[]): readonly Note[] =>
  uncertain.flatMap(({ path, amount: { number }, distribution }) => {
    const { mean, standardDeviation } = momentsOf(distribution);
    if (Math.abs(number - mean) <= 2 * standardDeviation) return [];
    const text = `the value of ${path} in the file lies more than two standard deviations from the middle of its tolerance`;
    return [{ level: 'warning', text }];
  });

function notesOf(
  found: readonly UncertainQuantity[],
  failed: number,
  samples: number,
  reason: string,
): readonly Note[] {
  const notes: Note[] = [{ level: 'assumption', text: 'inputs with tolerances vary independently of each other' }];
  if (failed > 0) {
    notes.push({
      level: 'warning',
      text: `${failed} of ${samples} samples could not be computed and are left out: ${reason}`,
    });
  }
  for (const { path, linear, summary, convergence: settled } of found) {
    if (!settled.settled) notes.push({ level: 'warning', text: `${path}: ${settled.statement}` });
    const warnings = [...linear.notes, ...summary.notes].filter(({ level }) => level === 'warning');
    notes.push(...warnings.map((note) => ({ ...note, text: `${path}: ${note.text}` })));
  }
  return uniqueNotes(notes);
}
