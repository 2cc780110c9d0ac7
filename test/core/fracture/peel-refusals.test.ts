import { describe, expect, it } from 'vitest';
import { type PeelSpecimen, simulatePeel } from '../../../packages/core/src/fracture/index.js';
import { arm, breaking, coupon, rowsOf } from './peel-support.js';
import { codeOf } from './support.js';

const wrong = (rest: Partial<PeelSpecimen>) => codeOf(() => simulatePeel(coupon(rest)));
const withCurve = (opening: number[], force: number[]) =>
  wrong({ rows: rowsOf(1, 0.055, 0.005, { curve: { opening, force }, failure: 'threadPullOut' }) });

describe('simulatePeel refuses as out of range', () => {
  const bad = arm(0.6e-3, 20e9, { failureStrain: { tension: 0, compression: 0.02 } });
  it.each<[string, Partial<PeelSpecimen>]>([
    ['an arm without thickness', { arms: [arm(0), arm()] }],
    ['a soft bed of 0', { arms: [arm(), arm(0.6e-3, 20e9, { E3: 0 })] }],
    ['a failure strain of 0', { arms: [bad, bad] }],
    ['a width of 0', { width: 0 }],
    ['a bond without toughness', { bondToughness: 0 }],
    ['a bond of endless toughness', { bondToughness: Number.POSITIVE_INFINITY }],
    ['a front at the grips', { crackLength: 0 }],
    ['a front beyond the bond', { crackLength: 0.13 }],
    ['a bond too short to grow in', { crackLength: 0.1199 }],
    ['a displacement of 0', { until: { displacement: 0 } }],
    ['a test that ends ahead of the front', { until: { crackLength: 0.04 } }],
    ['coarser steps than the plain ones', { refine: 0.5 }],
    ['a row beyond the bond', { rows: rowsOf(1, 0.13, 0.005, breaking()) }],
    ['more rows than can be followed', { length: 0.3, rows: rowsOf(151, 0.055, 0.001, breaking()) }],
    ['more rows than asked for', { rows: rowsOf(3, 0.055, 0.005, breaking()), mostRows: 2 }],
    ['a row without penetrations', { rows: rowsOf(1, 0.055, 0.005, breaking(), 0) }],
  ])('%s', (_what, rest) => {
    expect(wrong(rest)).toBe('out-of-range');
  });

  it('a curve that is not one', () => {
    expect(withCurve([0, 1e-4], [0])).toBe('out-of-range');
    expect(withCurve([0], [0])).toBe('out-of-range');
    expect(withCurve([1e-5, 1e-4], [0, 0])).toBe('out-of-range');
    expect(withCurve([0, 1e-4, 5e-5], [0, 10, 0])).toBe('out-of-range');
    expect(withCurve([0, 1e-4], [0, -1])).toBe('out-of-range');
    expect(withCurve([0, 1e-4], [0, Number.NaN])).toBe('out-of-range');
  });
});

describe('simulatePeel refuses as not admissible', () => {
  it('a curve that drops where it has become stiffer again, but not down to what it was', () => {
    expect(withCurve([0, 1e-5, 1e-4, 2e-4, 2e-4, 3e-4], [0, 10, 5, 15, 12, 0])).toBe('not-admissible');
  });
});

describe('simulatePeel refuses as not computable', () => {
  it('arms that stretch without end', () => {
    const jelly = arm(0.6e-3, 20e9, { axialStiffness: 1e-60 });
    expect(wrong({ arms: [jelly, jelly] })).toBe('not-computable');
  });
});

describe('simulatePeel warns', () => {
  it('where the bed turns too far', () => {
    const stubby = arm(0.6e-3, 20e9, { E3: 1e6 });
    const { notes } = simulatePeel(coupon({ arms: [stubby, stubby], bondToughness: 2000 }));
    expect(notes.some(({ level, text }) => level === 'warning' && text.includes('turns by'))).toBe(true);
  });

  it('that an arm without failure strain is not checked', () => {
    expect(simulatePeel(coupon()).notes.some(({ text }) => text.includes('not checked for breaking'))).toBe(true);
  });
});
