import { describe, expect, it } from 'vitest';
import { writtenNumber } from '../../../packages/core/src/answers/written.js';

describe('the digits of a number as written', () => {
  it.each([
    ['45.2', '45.2', 0.05, 3],
    ['45.20 kN/mm', '45.20', 0.005, 4],
    ['-0.0123', '-0.0123', 0.00005, 3],
    ['1.739e9', '1.739e9', 0.0005e9, 4],
    ['+2.50E-3 mm', '+2.50E-3', 0.005e-3, 3],
    ['.5', '.5', 0.05, 1],
    ['7.', '7.', 0.5, 1],
    ['45000', '45000', 0.5, 2],
    ['45013', '45013', 0.5, 5],
    ['0', '0', 0.5, 0],
    ['0.00', '0.00', 0.005, 0],
    ['−390.7·10⁻⁶', '−390.7·10⁻⁶', 0.05e-6, 4],
    ['1.739×10⁹ N/m', '1.739×10⁹', 0.0005e9, 4],
    ['3.34 x 10^7 N*mm', '3.34 x 10^7', 0.005e7, 3],
    ['45000 * 10^(-3) mm', '45000 * 10^(-3)', 0.5e-3, 2],
    ['5/8 in', '5/8', 0, 15],
    ['  12.5  mm', '12.5', 0.05, 3],
  ])('%s: the number, half of its last digit, the digits that count', (given, text, half, digits) => {
    const written = writtenNumber(given);
    expect(written.text).toBe(text);
    expect(written.half).toBeCloseTo(half, 12);
    expect(written.digits).toBe(digits);
  });

  it('finds no number in a word', () => {
    expect(writtenNumber('one').text).toBe('');
  });
});
