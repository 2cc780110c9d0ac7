/** The number that stands at the beginning of a quantity, with what its digits say. */
export interface LeadingNumber {
  readonly value: number;
  /** Characters that it takes, its power of ten included. */
  readonly length: number;
  /** The digits before the point, and those behind it when there is one; absent for a fraction such as `5/8`. */
  readonly decimal?: { readonly before: string; readonly behind: string | undefined; readonly power: number };
}

const sign = '[+\\-−]?';
const decimalPattern = new RegExp(`^(${sign})(?=\\.?\\d)(\\d*)(?:\\.(\\d*))?(?:[eE](${sign}\\d+))?`);
/** `·10⁻⁶`, `× 10^9`, `x 10^-3`, `*10^7`. */
const powerOfTen = new RegExp(`^\\s*[·⋅×*xX]\\s*10(?:\\^(${sign}\\d+|\\(${sign}\\d+\\))|([⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+))`);
const fractionPattern = new RegExp(
  `^(?:(${sign}\\d+)[ \\u00a0]+)?(${sign}\\d+)\\s*\\/\\s*(\\d+)(?=\\s*(?:[a-zA-Zµμ°"'%]|$))`,
);

/** An integer with its sign, which may be a typographic minus or raised as a whole. */
const integer = (text: string): number =>
  Number(
    text
      .replace(/[()]/g, '')
      .replace(/[−⁻]/, '-')
      .replace('⁺', '+')
      .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]/g, (digit) => String('⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(digit))),
  );

/**
 * The number at the beginning of a text: `0.25`, `-1.5e-3`, `1.739×10⁹`, `−390.7·10⁻⁶`, `3.343 x 10^7`, `1 1/4`; undefined when there is none.
 * A number too large to be kept is infinite.
 */
export function leadingNumber(text: string): LeadingNumber | undefined {
  const fraction = fractionPattern.exec(text);
  if (fraction !== null) {
    const whole = fraction[1] === undefined ? 0 : integer(fraction[1]);
    const part = integer(fraction[2] ?? '') / Number(fraction[3]);
    return { value: whole < 0 ? whole - part : whole + part, length: fraction[0].length };
  }
  const decimal = decimalPattern.exec(text);
  if (decimal === null) return undefined;
  const [plain, minus = '', before = '', behind, exponent = '0'] = decimal;
  const [times = '', written, raised] = powerOfTen.exec(text.slice(plain.length)) ?? [];
  const power = integer(exponent) + integer(written ?? raised ?? '0');
  return {
    value: Number(`${minus.replace('−', '-')}${before}.${behind ?? ''}e${power}`),
    length: plain.length + times.length,
    decimal: { before, behind, power },
  };
}
