import { uniqueSources } from '../provenance/index.js';
import { type CheckedExample, type CheckedValue, checkExamples } from './check.js';

/** How much is compared, and how much of it agrees. */
export interface ExampleCounts {
  /** Values of publications: all of them, and how many lie within the tolerance of their printed digits. */
  readonly values: number;
  readonly within: number;
  /** Values among them that the library's theory only approaches, and how many lie within their band. */
  readonly banded: { readonly values: number; readonly within: number };
  /** Values that were recalled but do not follow from the inputs: not among `values`. */
  readonly dropped: number;
  /** How many stem from an example read in the publication, read where another quotes it, and recalled. */
  readonly read: number;
  readonly quoted: number;
  readonly recalled: number;
  readonly examples: number;
  readonly sources: number;
  /** What no publication prints: values computed by an independent script alone. */
  readonly independent: { readonly values: number; readonly within: number; readonly examples: number };
}

const rowsOf = (examples: readonly CheckedExample[]): CheckedValue[] => examples.flatMap(({ rows }) => rows);

const withinOf = (rows: readonly CheckedValue[]): number => rows.filter(({ within }) => within).length;

/** Whether an example comes from an independent script alone, not from a publication. */
export const isIndependent = ({ access }: Pick<CheckedExample, 'access'>): boolean => access === 'computed';

/** Counts of examples, by default of all of them. */
export function exampleCounts(examples: readonly CheckedExample[] = checkExamples()): ExampleCounts {
  const published = examples.filter((one) => !isIndependent(one));
  const independent = examples.filter(isIndependent);
  const rows = rowsOf(published);
  const banded = rows.filter(({ band }) => band !== undefined);
  const obtained = (how: CheckedExample['access']): number =>
    rowsOf(published.filter(({ access }) => access === how)).length;
  return {
    values: rows.length,
    within: withinOf(rows) - withinOf(banded),
    banded: { values: banded.length, within: withinOf(banded) },
    dropped: published.flatMap(({ dropped }) => dropped).length,
    read: obtained('read'),
    quoted: obtained('quoted'),
    recalled: obtained('recalled'),
    examples: published.length,
    sources: uniqueSources(published.map(({ source }) => source)).length,
    independent: {
      values: rowsOf(independent).length,
      within: withinOf(rowsOf(independent)),
      examples: independent.length,
    },
  };
}
