import { describe, expect, it } from 'vitest';
import { workedExamples } from '../../../packages/core/src/examples/index.js';
import { inLastDigits, readPrinted } from '../../../packages/core/src/examples/last-digit.js';

describe('a number as it is printed', () => {
  it.each([
    ['0.30', 0.3, 0.01],
    ['.5', 0.5, 0.1],
    ['1.20e6', 1.2e6, 1e4],
    ['4.2e-3', 4.2e-3, 1e-4],
    ['-294.4E-6', -294.4e-6, 1e-7],
    ['-45', -45, 1],
    ['−45', -45, 1],
    ['1280', 1280, 1],
    ['12 500', 12500, 1],
    ['1,234,567.8', 1234567.8, 0.1],
    ['7.', 7, 1],
  ])('%s is %d, its last digit worth %d', (printed, value, lastDigit) => {
    expect(readPrinted(printed)).toEqual({ value, lastDigit });
  });

  it.each(['', 'about 3', '1,2', '12 50', '1.2.3', '5 %'])('is not `%s`', (printed) => {
    expect(() => readPrinted(printed)).toThrow(
      expect.objectContaining({ problems: [expect.objectContaining({ code: 'not-a-number' })] }),
    );
  });

  it('is what every example holds as its value', () => {
    for (const { id, values } of workedExamples) {
      for (const [key, { printed, value }] of Object.entries(values)) {
        expect(Math.abs(readPrinted(printed).value - value), `${id} ${key}`).toBeLessThanOrEqual(
          1e-12 * Math.abs(value),
        );
      }
    }
  });
});

describe('a deviation in units of the last digit', () => {
  it.each([
    [181.812, '181.8', 0.12],
    [0.295, '0.30', -0.5],
    [1.23e6, '1.20e6', 3],
    [-45.25, '-45', -0.25],
    [12501, '12 500', 1],
  ])('of %d beside %s is %d', (computed, printed, units) => {
    expect(inLastDigits(computed, printed)).toBeCloseTo(units, 9);
  });
});
