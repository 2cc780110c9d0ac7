import { describe, expect, it } from 'vitest';
import { measuredBridgingLaw } from '../../../../packages/core/src/stitch/index.js';
import { codesOf, expectNear, mm } from '../support.js';

/** Invented: a rise, a drop at one opening, a pull-out. */
const points = [
  { opening: 0, force: 0 },
  { opening: 0.1 * mm, force: 100 },
  { opening: 0.2 * mm, force: 160 },
  { opening: 0.2 * mm, force: 20 },
  { opening: 1.2 * mm, force: 0 },
];

describe('a measured curve in place of the law', () => {
  it('is taken as it is, with its own peak and area', () => {
    const law = measuredBridgingLaw(points, 'threadAtAnchor');
    expect(law.opening).toEqual(points.map((point) => point.opening));
    expect(law.force).toEqual(points.map((point) => point.force));
    expect(law.peak).toEqual({ force: 160, opening: 0.2 * mm });
    // Triangle, trapezium and triangle by hand: 5 + 13 + 10 mJ.
    expectNear(law.work, 28e-3);
    expect([law.failure, law.measured]).toEqual(['threadAtAnchor', true]);
    expect(law.notes.map((note) => note.level)).toEqual(['assumption']);
  });

  it('may end before the stitch lets go when it is said to be cut off, and then bounds the work from below', () => {
    const law = measuredBridgingLaw(points.slice(0, 3), 'threadAtCrack', { cutOff: true });
    expectNear(law.work, 18e-3);
    expect(law.notes[1]).toMatchObject({ level: 'warning', text: expect.stringContaining('lower bound') });
  });

  it('may end at 5 % of its peak', () => {
    const last = { opening: 2e-4, force: 5 };
    const law = measuredBridgingLaw([{ opening: 0, force: 0 }, { opening: 1e-4, force: 100 }, last], 'threadAtCrack');
    expectNear(law.work, 10.25e-3);
  });

  it('is refused where it is no curve of a stitch', () => {
    const of = (...list: (readonly [number, number])[]) =>
      codesOf(() =>
        measuredBridgingLaw(
          list.map(([opening, force]) => ({ opening, force })),
          'threadAtCrack',
        ),
      );
    const refused = ['out-of-range'];
    expect(of([0, 0])).toEqual(refused);
    expect(of([1e-4, 0], [2e-4, 5], [3e-4, 0])).toEqual(refused);
    expect(of([0, 0], [2e-4, 5], [1e-4, 0])).toEqual(refused);
    expect(of([0, 0], [2e-4, -5], [3e-4, 0])).toEqual(refused);
    expect(of([0, 0], [2e-4, Number.NaN], [3e-4, 0])).toEqual(refused);
    expect(of([0, 0], [Number.POSITIVE_INFINITY, 0])).toEqual(refused);
    expect(of([0, 0], [1e-4, 0])).toEqual(refused);
    expect(of([0, 5], [0, 0])).toEqual(refused);
    expect(of([0, 0], [1e-4, 10])).toEqual(refused);
  });
});
