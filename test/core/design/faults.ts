import { type Problem, renderProblems, SelvageError } from '@selvage/core';
import { expect } from 'vitest';

/** The problems that a call throws. */
export function problemsIn(call: () => unknown): readonly Problem[] {
  try {
    call();
  } catch (error) {
    if (error instanceof SelvageError) return error.problems;
    throw error;
  }
  throw new Error('no problem found');
}

/** The stretch of text at a place that carets stand under. */
export const textAt = (where: Problem['where']): string =>
  where?.excerpt.slice(where.column - 1, where.column - 1 + where.length) ?? '';

export const underlined = ({ where }: Problem): string => textAt(where);

/** Code of the only problem, and the text that its caret underlines. */
export function faultIn(call: () => unknown): [code: string, at: string] {
  const found = problemsIn(call);
  expect(found, renderProblems(found)).toHaveLength(1);
  const [problem] = found as [Problem];
  return [problem.code, underlined(problem)];
}
