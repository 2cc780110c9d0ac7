import { fail } from '../problem/index.js';

/** A length for a message. */
export function inMillimetres(length: number): string {
  return `${Number((length * 1000).toPrecision(4))} mm`;
}

/** Stops unless `value` is finite, above 0 and its square and inverse too. @throws out-of-range */
export function requirePositive(name: string, value: number, show: (value: number) => string = String): void {
  if (!(value > 1e-100 && value < 1e100)) {
    fail({
      code: 'out-of-range',
      message: `${name} = ${show(value)}, must be above 0`,
      allowed: 'a finite number above 0',
    });
  }
}

/** Stops unless `value` is finite and 0 or above. @throws out-of-range */
export function requireNotNegative(name: string, value: number, show: (value: number) => string = String): void {
  if (!(Number.isFinite(value) && value >= 0)) {
    fail({
      code: 'out-of-range',
      message: `${name} = ${show(value)}, must not be below 0`,
      allowed: 'a finite number, 0 or above',
    });
  }
}
