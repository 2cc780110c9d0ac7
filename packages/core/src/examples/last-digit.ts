import { fail } from '../problem/index.js';

const grouped = /^[+-]?\d{1,3}(?:[ \u00a0\u2009\u202f,'’]\d{3})+(?![\d])/;
const marks = /[ \u00a0\u2009\u202f,'’]/g;
const number = /^[+-]?(?:\d+(?:\.(?<decimals>\d*))?|\.(?<bare>\d+))(?:e(?<exponent>[+-]?\d+))?$/i;

/** A number as a source prints it: its value, and the worth of one unit of its last digit. */
export interface PrintedNumber {
  readonly value: number;
  readonly lastDigit: number;
}

/**
 * Reads a printed number: "0.30" is 0.3 to the hundredth, "1.20e6" 1 200 000 to ten thousand, "-45" to the unit, "12 500" to the
 * unit as well, since a zero at the end of a whole number is taken as a digit that was meant.
 *
 * @param printed decimals, an exponent behind `e`, and groups of three parted by a space, a comma or an apostrophe
 * @throws not-a-number
 */
export function readPrinted(printed: string): PrintedNumber {
  const plain = printed.replace('−', '-');
  const text = plain.replace(grouped, (whole) => whole.replace(marks, ''));
  const found = number.exec(text);
  if (found === null) {
    return fail({
      code: 'not-a-number',
      message: `\`${printed}\` is no printed number`,
      allowed: 'digits with a decimal point, and a power of ten behind e, for example 1.20e6',
    });
  }
  const { decimals = '', bare = '', exponent = '0' } = found.groups ?? {};
  return { value: Number(text), lastDigit: Number(`1e${Number(exponent) - decimals.length - bare.length}`) };
}

/** By how many units of its last digit a printed number would have to grow to be the other one. */
export function inLastDigits(value: number, printed: string): number {
  const { value: published, lastDigit } = readPrinted(printed);
  return (value - published) / lastDigit;
}
