import { defined } from '../assemble/constituents.js';
import type { StitchingModel } from '../model.js';
import { withoutProvenance } from './laminates.js';

/** A stitch plan's part of the JSON document: SI numbers. */
export function stitchingData({ title, laminate, plan, summary }: StitchingModel): Record<string, unknown> {
  return {
    ...defined({ title, laminate }),
    stitchType: plan.type,
    pattern: plan.pattern,
    dryThickness: plan.dryThickness,
    ...withoutProvenance(summary),
    notes: summary.notes,
    sources: summary.sources,
  };
}
