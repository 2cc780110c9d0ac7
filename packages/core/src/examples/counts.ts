import { uniqueSources } from '../provenance/index.js';
import { type CheckedExample, checkExamples } from './check.js';

/** How much is compared, and how much of it agrees. */
export interface ExampleCounts {
  /** Values of publications, how many of them lie within their tolerance, and how many stem from an example that was read, not recalled. */
  readonly values: number;
  readonly within: number;
  readonly read: number;
  readonly examples: number;
  readonly sources: number;
  /** What no publication prints: values computed by an independent script alone. */
  readonly independent: { readonly values: number; readonly within: number; readonly examples: number };
}

const valuesOf = (examples: readonly CheckedExample[]): number =>
  examples.reduce((sum, { rows }) => sum + rows.length, 0);

const withinOf = (examples: readonly CheckedExample[]): number =>
  examples.reduce((sum, { rows }) => sum + rows.filter(({ within }) => within).length, 0);

/** Whether an example comes from an independent script alone, not from a publication. */
export const isIndependent = ({ access }: Pick<CheckedExample, 'access'>): boolean => access === 'computed';

/** Counts of examples, by default of all of them. */
export function exampleCounts(examples: readonly CheckedExample[] = checkExamples()): ExampleCounts {
  const published = examples.filter((one) => !isIndependent(one));
  const independent = examples.filter(isIndependent);
  return {
    values: valuesOf(published),
    within: withinOf(published),
    read: valuesOf(published.filter(({ access }) => access === 'read')),
    examples: published.length,
    sources: uniqueSources(published.map(({ source }) => source)).length,
    independent: { values: valuesOf(independent), within: withinOf(independent), examples: independent.length },
  };
}
