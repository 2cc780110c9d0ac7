import type { Note } from '../../provenance/index.js';
import type { Coupon } from './types.js';

/** Assumptions of a prediction that hold whatever comes out. */
export function couponNotes(
  { specimen, stitching, bondToughnessRange }: Coupon,
  samples: number,
  rows: number,
): readonly Note[] {
  const notes: Note[] = [];
  const bond = bondToughnessRange === undefined ? 'scatter of the bond from panel to panel' : 'the range of the bond';
  const stitch =
    stitching === undefined
      ? ''
      : stitching.measured === undefined
        ? 'parameters of the stitch, '
        : 'stitch as measured, ';
  notes.push({
    level: 'assumption',
    text: `Ranges hold nine in ten of ${samples} samples: ${stitch}${bond}, strength and stiffness of the arms (common practice). The error of the model itself is not in them.`,
    source: 'common-practice',
  });
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
