import { leadingNumber } from '../quantity/index.js';

/** A number as it was written: its digits say how closely it was meant. */
interface WrittenNumber {
  /** The number alone, without its unit. */
  readonly text: string;
  /** Half a unit of the last written digit, in the unit of the number; 0 for a fraction such as `5/8`. */
  readonly half: number;
  /** Digits that count: leading zeros, and zeros that only fill up a whole number, do not. */
  readonly digits: number;
}

/** Digits of an exact fraction: more than any answer has. */
const exact = 15;

/** The number at the beginning of a text, with what its digits say. */
export function writtenNumber(given: string): WrittenNumber {
  const trimmed = given.trim();
  const number = leadingNumber(trimmed);
  if (number === undefined) return { text: '', half: 0, digits: 0 };
  const text = trimmed.slice(0, number.length);
  if (number.decimal === undefined) return { text, half: 0, digits: exact };
  const { before, behind, power } = number.decimal;
  const digits = `${before}${behind ?? ''}`.replace(/^0+/, '');
  return {
    text,
    half: 0.5 * 10 ** (power - (behind?.length ?? 0)),
    digits: (behind === undefined ? digits.replace(/0+$/, '') : digits).length,
  };
}
