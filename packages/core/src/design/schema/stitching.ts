import * as z from 'zod/mini';
import { stitchTypeIds } from '../../stitch/index.js';
import { bridgingEntry } from './bridging.js';
import { choice, listOf, quantity, reference, section, text } from './fields.js';

const patterns = ['parallel', 'staggered', 'zigzag', 'crossing', 'edgeRows'] as const;

const edgeRow = section('one row along the edge', {
  offset: quantity('length', 'distance from the edge', { above: 0 }),
  length: z.optional(
    quantity('longLength', 'length of the row; by default from the edge and its turning angle', { above: 0 }),
  ),
  pitch: z.optional(quantity('length', 'pitch of this row', { above: 0 })),
  stagger: z.optional(quantity('length', 'shift of the first hole along the row', { min: 0 })),
});

export const stitchingEntry = section('a stitch plan', {
  title: z.optional(text('a name for readers')),
  laminate: z.optional(reference('the laminate that is stitched')),
  thread: reference('the needle thread: a thread of this file or of the library'),
  underThread: z.optional(reference('the bobbin or looper thread; by default the needle thread')),
  stitchType: choice('a stitch type', stitchTypeIds),
  strandsInNeedle: z.optional(
    quantity('number', 'strands of thread in the needle together; 1 by default, a doubled hand thread has 2', {
      min: 1,
      max: 8,
    }),
  ),
  pattern: choice('a pattern', patterns),
  pitch: quantity('length', 'distance between holes along a row', { above: 0, max: 1 }),
  rowSpacing: z.optional(quantity('length', 'distance between rows', { above: 0, max: 1 })),
  stagger: z.optional(quantity('fraction', 'shift of every other row, as a fraction of the pitch', { min: 0, max: 1 })),
  bight: z.optional(quantity('length', 'width of the zigzag', { above: 0, max: 1 })),
  crossing: z.optional(
    section('the second set of rows of a crossing pattern', {
      pitch: quantity('length', 'pitch of the second set', { above: 0, max: 1 }),
      rowSpacing: quantity('length', 'row spacing of the second set', { above: 0, max: 1 }),
      angle: quantity('angle', 'angle between the two sets', { above: 0, max: 90 }),
    }),
  ),
  field: z.optional(
    section('the stitched rectangle, for totals of a pattern that fills it', {
      length: quantity('longLength', 'length along the rows', { above: 0 }),
      width: quantity('longLength', 'width across the rows', { above: 0 }),
    }),
  ),
  edge: z.optional(
    section('the edge that the rows follow', {
      length: quantity('longLength', 'length of the stitched edge', { above: 0 }),
      turn: z.optional(quantity('angle', 'angle through which the convex edge turns', { min: 0, max: 360 })),
    }),
  ),
  rows: z.optional(listOf('rows along the edge, nearest to the edge first', edgeRow, 50)),
  dryFibreVolumeFraction: z.optional(
    quantity('fraction', 'fibre volume fraction of the dry stack under the presser foot', { min: 0.2, max: 0.7 }),
  ),
  dryThickness: z.optional(
    quantity('length', 'thickness of the dry stack, when it was measured', { above: 0, max: 0.2 }),
  ),
  needle: z.optional(
    quantity('number', 'needle number metric: blade diameter in hundredths of a millimetre', { min: 40, max: 400 }),
  ),
  hole: z.optional(quantity('length', 'width of the hole or resin pocket around the thread', { above: 0, max: 0.02 })),
  tails: z.optional(quantity('length', 'thread left hanging at each end of a row', { min: 0, max: 2 })),
  waste: z.optional(quantity('fraction', 'thread waste', { min: 0, max: 1 })),
  sewing: z.optional(
    section('how fast it is sewn', {
      rate: quantity('rate', 'stitches per time', { above: 0 }),
      rowSetUp: z.optional(quantity('time', 'set-up of each row', { min: 0 })),
      handling: z.optional(quantity('time', 'handling of the piece', { min: 0 })),
    }),
  ),
  bridging: z.optional(bridgingEntry),
  note: z.optional(text('a remark')),
});
