import { SelvageError } from '@selvage/core';
import type { Given } from './command.js';
import { usageStop } from './usage.js';

/**
 * What is chosen by names on the command line.
 *
 * @throws Stop 64 when there is nothing of that name
 */
export function lookUp<Found>(given: Given, find: () => Found): Found {
  try {
    return find();
  } catch (error) {
    const problem = error instanceof SelvageError ? error.problems[0] : undefined;
    if (problem === undefined) throw error;
    const hint = problem.hint === undefined ? '' : `; ${problem.hint}`;
    const allowed = problem.allowed === undefined ? '' : `\nallowed: ${problem.allowed}`;
    throw usageStop(`${problem.message}${hint}${allowed}`, given.command);
  }
}
