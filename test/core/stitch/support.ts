import { expect } from 'vitest';
import { SelvageError } from '../../../packages/core/src/problem/index.js';
import type { Thread } from '../../../packages/core/src/stitch/index.js';

export const mm = 1e-3;
export const tex = 1e-6;

/** Invented demonstration thread of the scenario: 75 tex para-aramid. */
export const aramid75: Thread = { name: 'aramid 75', linearDensity: 75 * tex, density: 1440 };
/** Invented demonstration bobbin thread: 40 tex polyester. */
export const polyester40: Thread = { name: 'polyester 40', linearDensity: 40 * tex, density: 1380 };

/** The codes of the problems that a call throws; fails when it throws none. */
export function codesOf(call: () => unknown): readonly string[] {
  try {
    call();
  } catch (error) {
    if (error instanceof SelvageError) return error.problems.map((problem) => problem.code);
    throw error;
  }
  return expect.fail('nothing was thrown');
}

/** Equal within a relative tolerance, by default that of double arithmetic. */
export function expectNear(found: number, wanted: number, relative = 1e-12): void {
  expect(Math.abs(found - wanted), `${found} against ${wanted}`).toBeLessThanOrEqual(relative * Math.abs(wanted));
}
