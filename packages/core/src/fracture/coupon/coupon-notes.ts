import type { Note } from '../../provenance/index.js';
import type { Discreteness, Toughness } from '../../stitch/index.js';
import type { Reading } from './reading.js';
import type { Coupon } from './types.js';

/** Assumptions of a prediction that hold whatever comes out. */
export function couponNotes(coupon: Coupon, samples: number, rows: number): readonly Note[] {
  const { stitching, bondToughnessRange } = coupon;
  const bond = bondToughnessRange === undefined ? 'scatter of the bond from panel to panel' : 'the range of the bond';
  const stitch =
    stitching === undefined
      ? ''
      : stitching.measured === undefined
        ? 'parameters of the stitch, '
        : 'stitch as measured, ';
  const ranges: Note = {
    level: 'assumption',
    text: `Ranges hold nine in ten of ${samples} samples: ${stitch}${bond}, strength and stiffness of the arms (common practice). The error of the model itself is not in them.`,
    source: 'common-practice',
  };
  return [ranges, ...couponWarnings(coupon, rows)];
}

/** What to mind of a coupon with this many rows, besides the ranges. */
export function couponWarnings({ specimen, stitching }: Coupon, rows: number): readonly Note[] {
  const notes: Note[] = [];
  if (stitching !== undefined && rows === 0) {
    notes.push({
      level: 'warning',
      text: 'No row of the pattern lies in the stitched stretch: the coupon is as without stitches.',
    });
  }
  if (stitching?.measured !== undefined && specimen.kind === 'enf') {
    notes.push({
      level: 'warning',
      text: 'The measured curve of the stitch is taken as that of sliding; a curve of opening would be another.',
    });
  }
  if (specimen.kind === 'enf' && stitching !== undefined) {
    notes.push({
      level: 'warning',
      text: 'Bending an end-notched specimen was judged unsuitable for stitched laminates: the bridged zone seldom has room before the load point; read its toughness as that of this specimen only.',
      source: 'mouritz-jain-1999',
    });
  }
  if (specimen.kind === 'wedge' && rows > 0) {
    notes.push({
      level: 'warning',
      text: 'No toughness for an edge: its rows are fewer than a bridged zone; read where the split stops and which rows break.',
    });
  }
  return notes;
}

/** What rows apart do to the test of this coupon, by its own simulation at the middle values. */
export function distantRowsNote(
  { ratio, testFactor }: Discreteness,
  { toughness, of }: Reading,
  { steady }: Toughness,
): readonly Note[] {
  const rows = `Rows are ${Number(ratio.toPrecision(2))} bridging lengths apart`;
  const alone = testFactor === undefined;
  const times = steady !== undefined && of === 'fullZone' ? toughness / steady : undefined;
  if (times === undefined) {
    return alone
      ? [{ level: 'warning', text: `${rows}: each acts on its own, and a test reads strength, not toughness.` }]
      : [];
  }
  if (times < 1.1 && !alone) return [];
  const strength = alone ? ' Each row acts on its own: that is strength, not toughness.' : '';
  return [
    {
      level: 'warning',
      text: `${rows}: by the simulation of this coupon, at its middle values, a tester reads ${Number(times.toPrecision(2))} times the steady toughness; design with the steady one.${strength}`,
    },
  ];
}
