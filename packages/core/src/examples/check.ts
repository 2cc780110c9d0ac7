import { fail, nearestHint } from '../problem/index.js';
import { toSI } from '../quantity/index.js';
import { workedExamples } from './data.js';
import { compute } from './kinds.js';
import { inLastDigits } from './last-digit.js';
import type { ComputedValues, PrintedValue, WorkedExample } from './types.js';

/** A printed value beside the library's; numbers in `unit`. */
export interface CheckedValue {
  readonly key: string;
  readonly printed: string;
  readonly unit: string;
  readonly published: number;
  readonly computed: number;
  /** (computed - published) / |published|. */
  readonly deviation: number;
  /** (computed - published) in units of the last digit that is printed: of 181.8 a tenth. */
  readonly lastDigits: number;
  /** Absolute, in `unit`: what the printed digits justify. */
  readonly tolerance: number;
  /** Relative, where the library's theory is simpler than the source's; then it decides, not the tolerance. */
  readonly band?: number;
  readonly within: boolean;
  /** Number of an independent script; with a band by the source's theory. */
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
  /** Relative: how closely the independent script's digits allow it to be met. */
  readonly oracleTolerance: number;
  readonly rows: readonly CheckedValue[];
  /** Not counted: recalled numbers that do not follow from the inputs. */
  readonly dropped: readonly DroppedValue[];
}

/** A computed value on the edge of the tolerance (an exact tie, printed rounded up) is within it. */
const edge = 1 + 1e-9;

/** Of numbers with twelve digits. */
const fullPrecision = 1e-9;

const relative = (value: number, reference: number): number => (value - reference) / Math.abs(reference);

/** One value beside the library's, in the unit of the print. */
function checkedValue(key: string, value: PrintedValue, computed: number): CheckedValue {
  const { printed, unit, tolerance, band, oracle, value: published } = value;
  const allowed = band === undefined ? tolerance : band * Math.abs(published);
  return {
    key,
    printed,
    unit,
    published,
    computed,
    deviation: relative(computed, published),
    lastDigits: inLastDigits(computed, printed),
    tolerance,
    ...(band === undefined ? {} : { band }),
    within: Math.abs(computed - published) <= allowed * edge,
    oracle,
    oracleDeviation: relative(computed, oracle),
  };
}

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
  const rows = Object.entries(example.values).map(([key, value]) =>
    checkedValue(key, value, computedIn(value.unit, key, all, id)),
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
    oracleTolerance: example.oracleTolerance ?? fullPrecision,
    rows,
    dropped,
  };
}

/** Every worked example, computed and compared; publications first. */
export function checkExamples(): CheckedExample[] {
  return workedExamples.map(checkExample);
}
