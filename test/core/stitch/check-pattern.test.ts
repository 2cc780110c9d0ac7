import { describe, expect, it } from 'vitest';
import { checkPattern, type Pattern } from '../../../packages/core/src/stitch/index.js';
import { codesOf, mm } from './support.js';

const row = { offset: 6 * mm, length: 0.1, pitch: 4 * mm };
const wrong: readonly (readonly [string, Pattern])[] = [
  ['a pitch of 0', { kind: 'parallel', pitch: 0, rowSpacing: 5 * mm }],
  ['an endless pitch', { kind: 'parallel', pitch: Number.POSITIVE_INFINITY, rowSpacing: 5 * mm }],
  ['a negative row spacing', { kind: 'parallel', pitch: 4 * mm, rowSpacing: -1 }],
  ['a shift of a whole pitch', { kind: 'staggered', pitch: 4 * mm, rowSpacing: 5 * mm, shift: 1 }],
  ['a shift that is no number', { kind: 'staggered', pitch: 4 * mm, rowSpacing: 5 * mm, shift: Number.NaN }],
  ['no swing', { kind: 'zigzag', pitch: 4 * mm, rowSpacing: 5 * mm, swing: 0 }],
  ['two sets one way', { kind: 'crossing', pitch: 1, rowSpacing: 1, second: { pitch: 1, rowSpacing: 1 }, angle: 0 }],
  ['a second set without pitch', { kind: 'crossing', pitch: 1, rowSpacing: 1, second: { pitch: 0, rowSpacing: 1 } }],
  ['a second set without spacing', { kind: 'crossing', pitch: 1, rowSpacing: 1, second: { pitch: 1, rowSpacing: 0 } }],
  [
    'an offset that is no number',
    {
      kind: 'crossing',
      pitch: 1,
      rowSpacing: 1,
      second: { pitch: 1, rowSpacing: 1 },
      offset: { x: Number.NaN, y: 0 },
    },
  ],
  ['no rows', { kind: 'rows', rows: [] }],
  ['a row on the edge', { kind: 'rows', rows: [{ ...row, offset: 0 }] }],
  ['a row shorter than a pitch', { kind: 'rows', rows: [{ ...row, length: 3.9 * mm }] }],
  ['a row without length', { kind: 'rows', rows: [{ ...row, length: 0 }] }],
  ['a row without pitch', { kind: 'rows', rows: [{ ...row, pitch: 0 }] }],
  ['a stagger of a whole pitch', { kind: 'rows', rows: [{ ...row, stagger: 4 * mm }] }],
  ['a negative stagger', { kind: 'rows', rows: [{ ...row, stagger: -1 * mm }] }],
  ['rows out of order', { kind: 'rows', rows: [row, { ...row, offset: 5 * mm }] }],
  ['rows on each other', { kind: 'rows', rows: [row, row] }],
  ['a band narrower than its rows', { kind: 'rows', rows: [row, { ...row, offset: 12 * mm }], bandWidth: 5.9 * mm }],
  ['a band without width', { kind: 'rows', rows: [row], bandWidth: 0 }],
];

describe('a pattern', () => {
  it.each(wrong)('with %s is refused', (_, pattern) => {
    expect(codesOf(() => checkPattern(pattern))).toEqual(['out-of-range']);
  });

  it('is named in the message by the value and the limit', () => {
    expect(() => checkPattern({ kind: 'parallel', pitch: -0.004, rowSpacing: 0.005 })).toThrow(
      'pitch = -4 mm, must be above 0',
    );
  });

  it('of good sense passes', () => {
    expect(() =>
      checkPattern({ kind: 'rows', rows: [row, { ...row, offset: 12 * mm }], bandWidth: 6 * mm }),
    ).not.toThrow();
  });
});
