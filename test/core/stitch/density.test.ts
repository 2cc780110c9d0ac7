import { describe, expect, it } from 'vitest';
import {
  type CrossingPattern,
  countInField,
  type FieldPattern,
  holeDensity,
  meanRun,
  penetrationDensity,
  rowLengthPerArea,
} from '../../../packages/core/src/stitch/index.js';
import { expectNear, mm } from './support.js';

const degrees = 180 / Math.PI;
const square: CrossingPattern = {
  kind: 'crossing',
  pitch: 4 * mm,
  rowSpacing: 8 * mm,
  second: { pitch: 4 * mm, rowSpacing: 8 * mm },
};

describe('the density of penetrations', () => {
  it('is never infinite: a pitch whose inverse no number holds is refused', () => {
    expect(() => penetrationDensity({ kind: 'parallel', pitch: 1e-200, rowSpacing: 1e-200 })).toThrow('pitch');
  });

  it('is one in a cell of pitch by row spacing for parallel, staggered and zigzag rows', () => {
    const size = { pitch: 4 * mm, rowSpacing: 5.5 * mm };
    const wanted = 1 / (22 * mm * mm);
    expectNear(penetrationDensity({ kind: 'parallel', ...size }), wanted);
    expectNear(penetrationDensity({ kind: 'staggered', ...size }), wanted);
    expectNear(penetrationDensity({ kind: 'zigzag', ...size, swing: 2 * mm }), wanted);
  });

  it('is the sum of both sets of crossing rows, at any angle', () => {
    const pattern: CrossingPattern = {
      ...square,
      second: { pitch: 3 * mm, rowSpacing: 6 * mm },
      angle: 37,
    };
    expectNear(penetrationDensity(pattern), (1 / 32 + 1 / 18) / (mm * mm));
  });

  it.each<FieldPattern>([
    { kind: 'parallel', pitch: 3.7 * mm, rowSpacing: 5.3 * mm },
    { kind: 'staggered', pitch: 3.7 * mm, rowSpacing: 5.3 * mm, shift: 0.3 },
    { kind: 'zigzag', pitch: 3.7 * mm, rowSpacing: 5.3 * mm, swing: 2.1 * mm },
    { ...square, angle: 61, second: { pitch: 5 * mm, rowSpacing: 7 * mm } },
  ])('of $kind rows is what counting in ever larger fields comes to', (pattern) => {
    const error = (side: number) => {
      const counted = countInField(pattern, { length: side, width: side }).penetrations / side ** 2;
      return Math.abs(counted / penetrationDensity(pattern) - 1);
    };
    // A border line of holes more or less, on four sides.
    for (const side of [0.1, 0.4, 1.6]) expect(error(side)).toBeLessThan((4 * 8 * mm) / side);
  });

  it('counts the hole that two sets share once among the holes and twice among the passes', () => {
    // Set 1 has holes at (4i, 8j), set 2 at (8i, 4j): shared at (8i, 8j). Passes 2/32, shared 1/64 per mm^2.
    expectNear(penetrationDensity(square), 2 / 32 / (mm * mm));
    expectNear(holeDensity(square), (2 / 32 - 1 / 64) / (mm * mm));
  });

  it('finds no shared hole when the second set is moved off the first', () => {
    expectNear(holeDensity({ ...square, offset: { x: 2 * mm, y: 0 } }), penetrationDensity(square));
    expect(holeDensity({ ...square, offset: { x: 4 * mm, y: 0 } })).toBeLessThan(penetrationDensity(square));
  });

  it('finds every hole shared when one set lies on the other', () => {
    const both = { ...square, rowSpacing: 4 * mm, second: { pitch: 4 * mm, rowSpacing: 4 * mm } };
    expectNear(holeDensity(both), penetrationDensity(both) / 2);
  });

  it('finds the coincidences of a square grid turned by the 3-4-5 angle: one hole in five', () => {
    // Known from coincidence site lattices: turning a square lattice by atan(4/3) leaves one site in 5 in place.
    const turned: CrossingPattern = {
      kind: 'crossing',
      pitch: 1 * mm,
      rowSpacing: 1 * mm,
      second: { pitch: 1 * mm, rowSpacing: 1 * mm },
      angle: Math.atan2(4, 3) * degrees,
    };
    expectNear(penetrationDensity(turned) - holeDensity(turned), 0.2 / (mm * mm), 1e-9);
  });

  it('counts no shared hole where the sets never fall into step', () => {
    expect(holeDensity({ ...square, angle: 45 })).toBe(penetrationDensity(square));
  });

  it('of edge rows is their stitches over the band they stand for', () => {
    const rows = [6, 11, 17].map((offset) => ({ offset: offset * mm, length: 1.1, pitch: 4 * mm }));
    expectNear(penetrationDensity({ kind: 'rows', rows }), 1 / (4 * 5.5 * mm * mm));
    expectNear(penetrationDensity({ kind: 'rows', rows, bandWidth: 22 * mm }), 3 / (4 * 22 * mm * mm));
  });

  it('of a single edge row is counted over twice its offset', () => {
    const rows = [{ offset: 3 * mm, length: 0.3, pitch: 3 * mm }];
    expectNear(penetrationDensity({ kind: 'rows', rows }), 1 / (3 * 6 * mm * mm));
  });
});

describe('rows', () => {
  it('have one length of row in every row spacing', () => {
    expectNear(rowLengthPerArea({ kind: 'parallel', pitch: 4 * mm, rowSpacing: 5 * mm }), 200);
    expectNear(rowLengthPerArea(square), 250);
    const rows = [5, 9].map((offset) => ({ offset: offset * mm, length: 0.4, pitch: 4 * mm }));
    expectNear(rowLengthPerArea({ kind: 'rows', rows }), 250);
  });

  it('run from hole to hole over the pitch, in a zigzag over its slant', () => {
    expect(meanRun({ kind: 'staggered', pitch: 3 * mm, rowSpacing: 9 * mm })).toBe(3 * mm);
    expectNear(meanRun({ kind: 'zigzag', pitch: 3 * mm, swing: 4 * mm, rowSpacing: 9 * mm }), 5 * mm);
  });

  it('of two crossing sets run the mean over all passes', () => {
    const pattern: CrossingPattern = { ...square, second: { pitch: 2 * mm, rowSpacing: 8 * mm } };
    // Twice as many passes of 2 mm as of 4 mm.
    expectNear(meanRun(pattern), (4 + 2 * 2) * (mm / 3));
  });
});
