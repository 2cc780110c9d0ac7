import { type Problem, type ProblemCode, SelvageError } from '../problem/index.js';

/** A number as a message shows it: six significant digits, no trailing zeros. */
export const shown = (value: number): string => String(Number(value.toPrecision(6)));

const withUnit = (value: number, unit: string): string => (unit === '' ? shown(value) : `${shown(value)} ${unit}`);

/** A problem unless `value` is a finite number. */
export function finite(quantity: string, value: number): Problem | undefined {
  if (Number.isFinite(value)) return undefined;
  return { code: 'not-a-number', message: `${quantity} = ${value} is not a finite number` };
}

/** A problem unless `value` is finite and more than zero. */
export function positive(
  quantity: string,
  value: number,
  unit: string,
  code: ProblemCode = 'out-of-range',
): Problem | undefined {
  if (value > 0 && Number.isFinite(value)) return undefined;
  return (
    finite(quantity, value) ?? {
      code,
      message: `${quantity} = ${withUnit(value, unit)} must be more than 0`,
      allowed: 'more than 0',
    }
  );
}

/** A problem unless `low <= value <= high`. */
export function within(
  quantity: string,
  value: number,
  low: number,
  high: number,
  unit = '',
  code: ProblemCode = 'out-of-range',
): Problem | undefined {
  if (Number.isFinite(value) && value >= low && value <= high) return undefined;
  const allowed = high === Number.POSITIVE_INFINITY ? `${low} or more` : `${low} to ${withUnit(high, unit)}`;
  return (
    finite(quantity, value) ?? {
      code,
      message: `${quantity} = ${withUnit(value, unit)} is outside ${allowed}`,
      allowed,
    }
  );
}

/** A problem unless `low < value < high`. */
export function between(
  quantity: string,
  value: number,
  low: number,
  high: number,
  code: ProblemCode = 'out-of-range',
): Problem | undefined {
  if (value > low && value < high) return undefined;
  return (
    finite(quantity, value) ?? {
      code,
      message: `${quantity} = ${shown(value)} must lie between ${shown(low)} and ${shown(high)}, both excluded`,
      allowed: `more than ${shown(low)} and less than ${shown(high)}`,
    }
  );
}

/** A problem unless `low < value <= high`. */
export function over(quantity: string, value: number, low: number, high: number): Problem | undefined {
  if (value > low && value <= high) return undefined;
  return (
    finite(quantity, value) ?? {
      code: 'out-of-range',
      message: `${quantity} = ${shown(value)} must be more than ${low} and at most ${high}`,
      allowed: `more than ${low}, at most ${high}`,
    }
  );
}

/** Throws everything that was found, or returns. */
export function demand(...checks: readonly (Problem | undefined)[]): void {
  const problems = checks.filter((check) => check !== undefined);
  if (problems.length > 0) throw new SelvageError(problems);
}
