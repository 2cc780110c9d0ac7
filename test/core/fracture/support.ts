import { SelvageError } from '../../../packages/core/src/problem/index.js';

/** Simpson's rule with an even number of intervals. */
export function simpson(f: (x: number) => number, a: number, b: number, intervals: number): number {
  const h = (b - a) / intervals;
  let sum = f(a) + f(b);
  for (let i = 1; i < intervals; i++) sum += (i % 2 === 1 ? 4 : 2) * f(a + i * h);
  return (sum * h) / 3;
}

/** The code of the first problem that a call throws; undefined when it throws none. */
export function codeOf(call: () => unknown): string | undefined {
  try {
    call();
  } catch (error) {
    if (error instanceof SelvageError) return error.problems[0]?.code;
    throw error;
  }
  return undefined;
}
