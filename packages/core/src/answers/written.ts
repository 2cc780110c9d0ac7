/** A number as it was written: its digits say how closely it was meant. */
interface WrittenNumber {
  /** The number alone, without its unit. */
  readonly text: string;
  /** Half a unit of the last written digit, in the unit of the number; 0 for a fraction such as `5/8`. */
  readonly half: number;
  /** Digits that count: leading zeros, and zeros that only fill up a whole number, do not. */
  readonly digits: number;
}

const decimal = /^[+-]?(?=\.?\d)(\d*)(?:\.(\d*))?(?:[eE]([+-]?\d+))?/;
const fraction = /^[+-]?(?:\d+[ \u00a0]+)?\d+\s*\/\s*\d+(?=\s*(?:[a-zA-Zµμ°"'%]|$))/;

/** Digits of an exact fraction: more than any answer has. */
const exact = 15;

/** The number at the beginning of a text, with what its digits say. */
export function writtenNumber(given: string): WrittenNumber {
  const text = given.trim();
  const whole = fraction.exec(text)?.[0];
  if (whole !== undefined) return { text: whole, half: 0, digits: exact };
  const [number = '', before = '', behind, power = '0'] = decimal.exec(text) ?? [];
  const digits = `${before}${behind ?? ''}`.replace(/^0+/, '');
  return {
    text: number,
    half: 0.5 * 10 ** (Number(power) - (behind?.length ?? 0)),
    digits: (behind === undefined ? digits.replace(/0+$/, '') : digits).length,
  };
}
