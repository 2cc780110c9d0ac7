/** The closed list of what can be wrong with an input. */
export type ProblemCode =
  | 'not-text'
  | 'too-large'
  | 'syntax'
  | 'tab'
  | 'too-many-aliases'
  | 'several-documents'
  | 'duplicate-key'
  | 'unknown-key'
  | 'missing-key'
  | 'wrong-type'
  | 'not-a-choice'
  | 'not-a-number'
  | 'out-of-range'
  | 'unit-missing'
  | 'unit-unknown'
  | 'unit-mismatch'
  | 'unknown-name'
  | 'orientation-code'
  | 'not-admissible'
  | 'contradiction'
  | 'not-computable';

/** Keys and list positions that lead from the top of a design to a value, for example `['laminates', 'edge', 'stack']`. */
export type Path = readonly (string | number)[];

/** A stretch of source text; lines and columns count from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
  /** Characters underlined by carets, at least 1. */
  readonly length: number;
  /** The whole source line, without its line end. */
  readonly excerpt: string;
}

/**
 * One thing that is wrong: a code from a closed list, the sentence a reader sees, and where it is.
 * `path` points into the design; `where` is filled in once the source text is known.
 */
export interface Problem {
  readonly code: ProblemCode;
  /** One sentence: what was found and what is wrong with it; lower case, no final stop. */
  readonly message: string;
  /** What would be accepted. */
  readonly allowed?: string;
  /** One suggestion: the nearest right spelling, a unit that would do. */
  readonly hint?: string;
  readonly path?: Path;
  /** True when the key, not its value, is at fault. */
  readonly atKey?: boolean;
  /** Characters into the value where the fault lies, with its length: for codes and quantities inside a string. */
  readonly within?: { readonly offset: number; readonly length: number };
  readonly where?: Place;
  /** A second place that matters: the first use of a duplicated key, the value contradicted. */
  readonly also?: readonly { readonly label: string; readonly where?: Place; readonly path?: Path }[];
}

/** Thrown for bad input; carries every problem found, in the order of the source text. */
export class SelvageError extends Error {
  readonly problems: readonly Problem[];
  constructor(problems: readonly Problem[]) {
    super(problems.map((problem) => problem.message).join('; '));
    this.name = 'SelvageError';
    this.problems = problems;
  }
}

/** Throws a {@link SelvageError} with a single problem. */
export function fail(problem: Problem): never {
  throw new SelvageError([problem]);
}
