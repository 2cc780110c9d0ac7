import { type PenetrationInput, stitchType, withStrands } from '../../stitch/index.js';
import type { StitchingModel } from '../model.js';
import { defined } from './constituents.js';

/** One stitch of a plan through a laminate of a thickness, the crack at a depth below its needle side (at half the thickness when not given); m. */
export function penetrationOf(
  { plan, summary, bridging }: StitchingModel,
  thickness: number,
  crackDepth?: number,
): PenetrationInput {
  const { type, strands = 1, needleThread, underThread } = plan;
  const { parameters, anchors, bends } = bridging;
  return defined({
    type: withStrands(stitchType(type), strands),
    needleThread,
    underThread,
    thickness,
    crackDepth,
    anchors,
    bends,
    pitch: bends === 'yielding' ? summary.meanRun : undefined,
    parameters,
  });
}
