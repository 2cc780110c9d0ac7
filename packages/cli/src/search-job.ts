import { designInputs, evaluateGenomes, evaluateRange, type SearchProblem, searchProblem } from '@selvage/core';

/** What a worker needs to set the search up for itself. */
export interface SearchJob {
  readonly text: string;
  readonly fileName: string;
  readonly seed?: number;
}

/** A piece of work: a stretch of the candidates, or genomes of a generation. */
export type Task =
  | { readonly range: { readonly from: number; readonly to: number } }
  | { readonly genomes: Int32Array };

export type Done = ReturnType<typeof evaluateRange> | ReturnType<typeof evaluateGenomes>;

/** The search of a job. */
export function problemOf({ text, fileName, seed }: SearchJob): SearchProblem {
  return searchProblem(designInputs(text, { fileName }), seed === undefined ? {} : { seed });
}

/** Does a piece of work. */
export const perform = (problem: SearchProblem, task: Task): Done =>
  'range' in task ? evaluateRange(problem, task.range) : evaluateGenomes(problem, task);
