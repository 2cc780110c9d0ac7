import type { Note } from '../provenance/index.js';
import type { RuleName } from './rules.js';

/** Numbers by the symbols of a rule; SI, angles in degrees. */
export type StepValues = Readonly<Record<string, number>>;

/** Where a computation writes down its steps. Functions that show their working take one as their last argument and compute the same without it. */
export interface Working {
  /**
   * Writes down one step.
   * @param rule the formula that was applied
   * @param values what went in and what came out, by the symbols of the rule
   * @param rows for sums: the same of each row
   */
  readonly step: (rule: RuleName, values: StepValues, rows?: readonly StepValues[]) => void;
  /** Writes down what a reader must know of the results: assumptions made, limits that were crossed. */
  readonly notes: (notes: readonly Note[]) => void;
  /** The same working for a part: a ply, a face, a load. */
  readonly part: (...names: readonly (string | number)[]) => Working;
}

/** One step as it was written down. */
export interface RecordedStep {
  /** Of what, from the whole to the part: `['laminates', 'skin', 'plies', '2']`. */
  readonly part: readonly string[];
  readonly rule: RuleName;
  readonly values: StepValues;
  readonly rows?: readonly StepValues[];
}

/** Notes as they were written down, with the part that they are about. */
export interface RecordedNotes {
  readonly part: readonly string[];
  readonly notes: readonly Note[];
}

/** What was written down of a computation. */
export interface Recorded {
  readonly steps: readonly RecordedStep[];
  readonly notes: readonly RecordedNotes[];
}

/** Starts writing down; `steps` and `notes` grow while the computation goes on. */
export function startWorking(): Recorded & { readonly working: Working } {
  const steps: RecordedStep[] = [];
  const notes: RecordedNotes[] = [];
  const at = (part: readonly string[]): Working => ({
    step: (rule, values, rows) => {
      steps.push({ part, rule, values, ...(rows === undefined ? {} : { rows }) });
    },
    notes: (list) => {
      if (list.length > 0) notes.push({ part, notes: list });
    },
    part: (...names) => at([...part, ...names.map(String)]),
  });
  return { working: at([]), steps, notes };
}
