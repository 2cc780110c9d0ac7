import { describe, expect, it } from 'vitest';
import { closeRow, countedWidth, offsetRowLength } from '../../../packages/core/src/stitch/index.js';
import { codesOf, expectNear, mm } from './support.js';

describe('a row offset inside a convex outline', () => {
  // Row lengths of the three demonstration blades, rounded to the millimetre (invented scenario, computed by an independent script).
  it.each([
    [1100, 5, 180, 1084],
    [1100, 11, 180, 1065],
    [820, 4.5, 180, 806],
    [980, 5.5, 90, 971],
  ])('of %d mm, %f mm further in, with a turn of %d degrees measures %d mm', (outer, distance, turn, inner) => {
    expect(Math.abs(offsetRowLength(outer * mm, distance * mm, turn) / mm - inner)).toBeLessThanOrEqual(0.5);
  });

  it('is that of the inner arc around a half circle with straight legs', () => {
    const [leg, outer, inner] = [0.3, 0.08, 0.07];
    const arc = (radius: number) => 2 * leg + Math.PI * radius;
    expectNear(offsetRowLength(arc(outer), outer - inner, 180), arc(inner));
  });

  it('is the sum of chords of an inset polygon in the limit', () => {
    // A circle as 20 000 chords: the path is walked, not computed from its turn.
    const chords = (radius: number) => {
      const points = Array.from({ length: 20_001 }, (_, k) => (2 * Math.PI * k) / 20_000);
      return points.slice(1).reduce((sum, t, k) => {
        const [x, y] = [Math.cos(t) - Math.cos(points[k]!), Math.sin(t) - Math.sin(points[k]!)];
        return sum + radius * Math.hypot(x, y);
      }, 0);
    };
    expectNear(offsetRowLength(chords(0.1), 0.03, 360), chords(0.07), 1e-7);
  });

  it('keeps its length where nothing turns', () => {
    expect(offsetRowLength(0.5, 0.01, 0)).toBe(0.5);
  });

  it('is refused when nothing is left of it, or an argument makes no sense', () => {
    expect(codesOf(() => offsetRowLength(0.1, 0.04, 180))).toEqual(['out-of-range']);
    expect(codesOf(() => offsetRowLength(0, 0.04, 180))).toEqual(['out-of-range']);
    expect(codesOf(() => offsetRowLength(0.1, -1, 180))).toEqual(['out-of-range']);
    expect(codesOf(() => offsetRowLength(0.1, 0.01, -1))).toEqual(['out-of-range']);
  });
});

describe('a row closed by whole stitches', () => {
  // Counts of the demonstration rows (invented scenario, computed by an independent script).
  it.each([
    [1100, 4, 275],
    [1084, 4, 271],
    [1065, 4, 266],
    [820, 3.5, 234],
    [806, 3.5, 230],
    [980, 4.5, 218],
    [971, 4.5, 216],
  ])('of %d mm at %f mm has %d stitches', (length, pitch, stitches) => {
    const row = closeRow({ offset: 5 * mm, length: length * mm, pitch: pitch * mm });
    expect(row.stitches).toBe(stitches);
    expect(row.penetrations).toBe(stitches + 1);
    expectNear(row.pitch * row.stitches, length * mm);
  });

  it('keeps its stagger as a share of the pitch', () => {
    const row = closeRow({ offset: 5 * mm, length: 21 * mm, pitch: 4 * mm, stagger: 1 * mm });
    expectNear(row.start, row.pitch / 4);
    expect(row.penetrations).toBe(row.stitches);
  });

  it('is refused when it makes no sense', () => {
    expect(codesOf(() => closeRow({ offset: 5 * mm, length: 0, pitch: 4 * mm }))).toEqual(['out-of-range']);
  });
});

describe('the width over which edge rows are counted', () => {
  const rows = [6, 11, 17].map((offset) => ({ offset: offset * mm, length: 1, pitch: 4 * mm }));
  it('is the number of rows times their mean distance', () => {
    expectNear(countedWidth({ kind: 'rows', rows }), 3 * 5.5 * mm);
  });
  it('is refused for a pattern that makes no sense', () => {
    expect(codesOf(() => countedWidth({ kind: 'rows', rows: [] }))).toEqual(['out-of-range']);
  });
});
