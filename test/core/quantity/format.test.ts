import { describe, expect, it } from 'vitest';
import { displayUnit, formatNumber, formatQuantity } from '../../../packages/core/src/quantity/index.js';

describe('numbers are printed with sensible digits', () => {
  it.each([
    [0, '0'],
    [4e-3 * 1e3, '4'],
    [2.6772, '2.677'],
    [18.2, '18.2'],
    [33161.4, '33161'],
    [0.000123456, '0.0001235'],
    [0.00001234, '1.234e-5'],
    [1.739e9, '1.739e9'],
    [-0.5, '-0.5'],
  ])('%d as %s', (value, text) => expect(formatNumber(value)).toBe(text));
  it('refuses what is not a number', () => {
    expect(() => formatNumber(Number.NaN)).toThrow(RangeError);
    expect(() => formatNumber(Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});

describe('quantities are printed in the units of the reader', () => {
  it('metric and US', () => {
    expect(formatQuantity(0.0254, 'length')).toBe('25.4 mm');
    expect(formatQuantity(0.0254, 'length', { units: 'us' })).toBe('1 in');
    expect(formatQuantity(0.3, 'arealMass')).toBe('300 g/m²');
    expect(formatQuantity(75e-6, 'linearDensity')).toBe('75 tex');
    expect(formatQuantity(75e-6, 'linearDensity', { units: 'us' })).toBe('675 denier');
    expect(formatQuantity(333.15, 'temperature')).toBe('60 °C');
    expect(formatQuantity(-45, 'angle')).toBe('-45°');
    expect(formatQuantity(0.5, 'fraction')).toBe('50 %');
  });
  it('spells units as a reader writes them', () => {
    expect(displayUnit('toughness', 'us')).toBe('in·lbf/in²');
    expect(displayUnit('expansion')).toBe('10⁻⁶/K');
  });
});
