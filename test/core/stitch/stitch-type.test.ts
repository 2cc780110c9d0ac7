import { describe, expect, it } from 'vitest';
import {
  hasUnderThread,
  type StitchType,
  stitchType,
  stitchTypeIds,
  stitchTypes,
  withStrands,
} from '../../../packages/core/src/stitch/index.js';
import { codesOf } from './support.js';

/** Strands of a thread in a hole averaged over the thickness. */
const meanLegs = (type: StitchType, thread: 'needle' | 'under') =>
  type.legsAbove[thread] * type.lockDepth + type.legsBelow[thread] * (1 - type.lockDepth);

describe('stitch types', () => {
  it.each(stitchTypes)('$id sends as much thread through the thickness as its legs hold', (type) => {
    expect(type.needle.depth).toBe(meanLegs(type, 'needle'));
    expect(type.under.depth).toBe(meanLegs(type, 'under'));
  });

  // The usual constants of sewing engineering (recalled, not re-read): whole thread per stitch, in runs and thicknesses.
  it.each([
    ['101', 3, 2],
    ['301', 2, 2],
    ['301-modified', 2, 2],
    ['304', 2, 2],
    ['401', 4, 2],
    ['running', 1, 1],
    ['saddle', 2, 2],
  ])('%s takes %d runs and %d thicknesses of thread', (id, run, depth) => {
    const { needle, under } = stitchType(id);
    expect(needle.run + under.run).toBe(run);
    expect(needle.depth + under.depth).toBe(depth);
  });

  it('are listed once each', () => {
    expect(stitchTypes.map((type) => type.id)).toEqual(stitchTypeIds);
    expect(new Set(stitchTypeIds).size).toBe(stitchTypeIds.length);
  });

  it('are found by number and by id', () => {
    expect(stitchType(301)).toBe(stitchType('301'));
  });

  it('put bobbin thread under a lock inside the stack and needle thread under a lock at the face', () => {
    expect(stitchType(301).legsBelow).toEqual({ needle: 0, under: 2 });
    expect(stitchType('301-modified').legsBelow).toEqual({ needle: 2, under: 0 });
  });

  it('tell which of them need a second thread', () => {
    expect(stitchTypes.filter((type) => !hasUnderThread(type)).map((type) => type.id)).toEqual(['101', 'running']);
  });

  it('multiply the needle thread of a doubled strand and nothing else', () => {
    const doubled = withStrands(stitchType('saddle'), 2);
    expect(doubled.needle).toEqual({ run: 2, depth: 2 });
    expect(doubled.under).toEqual({ run: 1, depth: 1 });
    expect(doubled.legsAbove).toEqual({ needle: 2, under: 1 });
  });

  it('refuse an unknown name with the nearest one', () => {
    expect(codesOf(() => stitchType('runing'))).toEqual(['not-a-choice']);
    expect(codesOf(() => stitchType('toString'))).toEqual(['not-a-choice']);
    expect(codesOf(() => withStrands(stitchType(301), 1.5))).toEqual(['out-of-range']);
  });
});
