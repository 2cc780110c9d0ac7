import { fail } from '../../problem/index.js';

/** Refuses a number that is not whole or lies outside its range. @throws out-of-range */
export function demandWhole(name: string, value: number, low: number, high: number): void {
  if (!(Number.isSafeInteger(value) && value >= low && value <= high)) {
    const allowed = `a whole number, ${low} to ${high}`;
    fail({ code: 'out-of-range', message: `${name} is ${value}, must be ${allowed}`, allowed });
  }
}

/** Refuses a number that is not finite or lies outside a range, ends included. @throws out-of-range */
export function demandBetween(name: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) {
    const allowed = `a number, ${low} to ${high}`;
    fail({ code: 'out-of-range', message: `${name} is ${value}, must be ${allowed}`, allowed });
  }
}

/** Refuses a seed that is not a whole number. @throws out-of-range */
export function demandSeed(seed: number): void {
  if (!Number.isSafeInteger(seed)) {
    fail({ code: 'out-of-range', message: `seed is ${seed}, must be a whole number`, allowed: 'a whole number' });
  }
}

/** Refuses a confidence that is no share. @throws out-of-range */
export const demandConfidence = (confidence: number): void => demandBetween('confidence', confidence, 0.5, 0.9999);

/** Refuses results among which one is not a finite number. @throws not-computable */
export function demandFiniteResults(what: string, values: ArrayLike<number>): void {
  for (let i = 0; i < values.length; i++) {
    if (!Number.isFinite(values[i])) {
      fail({
        code: 'not-computable',
        message: `${what} ${i + 1} of ${values.length} is ${values[i]}, not a finite number`,
      });
    }
  }
}
