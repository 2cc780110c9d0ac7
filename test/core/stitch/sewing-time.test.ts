import { describe, expect, it } from 'vitest';
import { sewingTime } from '../../../packages/core/src/stitch/index.js';
import { codesOf } from './support.js';

describe('sewing time', () => {
  it('is that of the stitches alone when nothing else is given', () => {
    expect(sewingTime({ stitches: 120, rows: 3, rate: 2 })).toBe(60);
  });

  it('adds the set-up of every row and the handling once', () => {
    expect(sewingTime({ stitches: 120, rows: 3, rate: 2, setup: 10, handling: 100 })).toBe(190);
  });

  it.each([{ rate: 0 }, { stitches: -1 }, { rows: -1 }, { setup: -1 }, { handling: Number.NaN }])(
    'is refused with %o',
    (wrong) => {
      expect(codesOf(() => sewingTime({ stitches: 120, rows: 3, rate: 2, ...wrong }))).toEqual(['out-of-range']);
    },
  );
});
