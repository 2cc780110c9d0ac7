import { expect } from 'vitest';
import type { Fibre, Resin } from '../../../packages/core/src/material/index.js';
import { type ProblemCode, SelvageError } from '../../../packages/core/src/problem/index.js';

// Fibre and resin of the demonstration scenario (invented workshop; ordinary values of the trade).
export const eGlass: Fibre = {
  name: 'E-glass',
  E1: 73e9,
  E2: 73e9,
  G12: 30e9,
  nu12: 0.22,
  density: 2540,
  sources: ['scenario'],
};
export const carbon: Fibre = {
  name: 'carbon',
  E1: 230e9,
  E2: 15e9,
  G12: 24e9,
  nu12: 0.2,
  density: 1780,
  sources: ['scenario'],
};
export const epoxy: Resin = { name: 'epoxy', E: 3.2e9, nu: 0.35, density: 1150, sources: ['scenario'] };

/** Codes of the problems thrown by `action`; empty when it returns. */
export function codesOf(action: () => unknown): ProblemCode[] {
  return problemsOf(action).map((problem) => problem.code);
}

export function problemsOf(action: () => unknown) {
  try {
    action();
  } catch (error) {
    if (error instanceof SelvageError) return error.problems;
    throw error;
  }
  return [];
}

/** Relative comparison. */
export function expectClose(actual: number | undefined, expected: number, relative = 1e-12): void {
  expect(Math.abs((actual ?? Number.NaN) - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(
    relative * Math.abs(expected),
  );
}

/** Absolute comparison within half a unit of the last printed digit (a hair more for binary rounding). */
export function expectPrinted(actual: number | undefined, printed: number, halfUnit: number): void {
  expect(Math.abs((actual ?? Number.NaN) - printed), `${actual} against ${printed}`).toBeLessThanOrEqual(
    halfUnit * (1 + 1e-9),
  );
}

export type Matrix = readonly (readonly number[])[];

/** In-plane stiffness turned by `degrees`, by the fourth-power form; an independent route for the tests. */
export function turned([Q11, Q12, Q22, Q66]: readonly [number, number, number, number], degrees: number): Matrix {
  const c = Math.cos((degrees * Math.PI) / 180);
  const s = Math.sin((degrees * Math.PI) / 180);
  const b11 = Q11 * c ** 4 + 2 * (Q12 + 2 * Q66) * c * c * s * s + Q22 * s ** 4;
  const b22 = Q11 * s ** 4 + 2 * (Q12 + 2 * Q66) * c * c * s * s + Q22 * c ** 4;
  const b12 = (Q11 + Q22 - 4 * Q66) * c * c * s * s + Q12 * (c ** 4 + s ** 4);
  const b66 = (Q11 + Q22 - 2 * Q12 - 2 * Q66) * c * c * s * s + Q66 * (c ** 4 + s ** 4);
  const b16 = (Q11 - Q12 - 2 * Q66) * c ** 3 * s + (Q12 - Q22 + 2 * Q66) * c * s ** 3;
  const b26 = (Q11 - Q12 - 2 * Q66) * c * s ** 3 + (Q12 - Q22 + 2 * Q66) * c ** 3 * s;
  return [
    [b11, b12, b16],
    [b12, b22, b26],
    [b16, b26, b66],
  ];
}

/** Weighted sum of matrices. */
export function blend(...terms: readonly (readonly [number, Matrix])[]): number[][] {
  return [0, 1, 2].map((i) =>
    [0, 1, 2].map((j) => terms.reduce((sum, [weight, matrix]) => sum + weight * (matrix[i]?.[j] ?? Number.NaN), 0)),
  );
}
