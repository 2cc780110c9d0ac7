import { fail, nearestHint } from '../problem/index.js';
import { toSI } from '../quantity/index.js';
import { workedExamples } from './data.js';
import { compute } from './kinds.js';
import type { ComputedValues, WorkedExample } from './types.js';

/** A printed value beside the library's; numbers in `unit`. */
export interface CheckedValue {
  readonly key: string;
  readonly printed: string;
  readonly unit: string;
  readonly published: number;
  readonly computed: number;
  /** (computed - published) / |published|. */
  readonly deviation: number;
  /** Absolute, in `unit`. */
  readonly tolerance: number;
  readonly within: boolean;
  /** Full-precision number of an independent script. */
  readonly oracle: number;
  /** (computed - oracle) / |oracle|. */
  readonly oracleDeviation: number;
}

/** A number that was recalled but does not follow from the inputs, beside the library's; numbers in `unit`. */
export interface DroppedValue {
  readonly key: string;
  readonly printed: string;
  readonly unit: string;
  readonly computed: number;
  readonly oracle: number;
  readonly oracleDeviation: number;
}

/** A worked example with every one of its values computed by the library. */
export interface CheckedExample
  extends Pick<
    WorkedExample,
    'id' | 'title' | 'kind' | 'source' | 'where' | 'access' | 'confidence' | 'inputs' | 'note'
  > {
  readonly rows: readonly CheckedValue[];
  /** Not counted: recalled numbers that do not follow from the inputs. */
  readonly dropped: readonly DroppedValue[];
}

/** A computed value on the edge of the tolerance (an exact tie, printed rounded up) is within it. */
const edge = 1 + 1e-9;

const relative = (value: number, reference: number): number => (value - reference) / Math.abs(reference);

function computedIn(unit: string, key: string, computed: ComputedValues, id: string): number {
  const value = Object.hasOwn(computed, key) ? computed[key] : undefined;
  if (value !== undefined && Number.isFinite(value)) return value / toSI(1, unit);
  return fail({
    code: 'unknown-name',
    message: `example ${id} has a value \`${key}\` that is not computed`,
    allowed: Object.keys(computed).join(', '),
    ...nearestHint(key, Object.keys(computed)),
  });
}

/**
 * Computes an example with the library and compares each of its values, in the unit in which it is printed.
 * @param example As reference-data/examples holds it.
 * @throws unknown-name for a kind or a value that the library does not compute
 */
export function checkExample(example: WorkedExample): CheckedExample {
  const { id, title, kind, source, where, access, confidence, inputs, note } = example;
  const all = compute(example);
  const rows = Object.entries(example.values).map(
    ([key, { printed, value, unit, tolerance, oracle }]): CheckedValue => {
      const computed = computedIn(unit, key, all, id);
      return {
        key,
        printed,
        unit,
        published: value,
        computed,
        deviation: relative(computed, value),
        tolerance,
        within: Math.abs(computed - value) <= tolerance * edge,
        oracle,
        oracleDeviation: relative(computed, oracle),
      };
    },
  );
  const dropped = (example.notReproduced ?? []).map(({ key, printed, unit, oracle }): DroppedValue => {
    const computed = computedIn(unit, key, all, id);
    return { key, printed, unit, computed, oracle, oracleDeviation: relative(computed, oracle) };
  });
  return {
    id,
    title,
    kind,
    source,
    where,
    access,
    confidence,
    inputs,
    ...(note === undefined ? {} : { note }),
    rows,
    dropped,
  };
}

/** Every worked example, computed and compared; publications first. */
export function checkExamples(): CheckedExample[] {
  return workedExamples.map(checkExample);
}

/** The ids of the worked examples, in their order. */
export const exampleIds: readonly string[] = workedExamples.map(({ id }) => id);
