import { type Problem, SelvageError } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { defined } from '../assemble/constituents.js';
import { placed } from '../assemble/context.js';
import type { Model, StitchingModel } from '../model.js';
import { locate, parseSource } from '../source.js';
import { withoutProvenance } from './laminates.js';
import { type StitchHolding, stitchHolding } from './stitch-holding.js';
import { holdingData } from './stitch-holding-data.js';
import { type StitchPrice, stitchPrice } from './stitch-price.js';
import { priceData } from './stitch-price-data.js';

/** A stitch plan with what its stitches hold and what they cost. */
export interface StitchingResult {
  readonly model: StitchingModel;
  readonly holding: StitchHolding;
  readonly price: StitchPrice;
}

/**
 * What one stitch of every plan holds, and what stitching costs in the plane.
 * @throws SelvageError all problems of all plans at once, each with the place of its plan
 */
export function stitchingResults({ stitching, laminates, source }: Model): StitchingResult[] {
  const problems: Problem[] = [];
  const results = stitching.flatMap((model) => {
    const laminate = laminates.find(({ name }) => name === model.laminate);
    try {
      return placed(['stitching', model.name], () => [
        { model, holding: stitchHolding(model, laminate), price: stitchPrice(model, laminate) },
      ]);
    } catch (error) {
      if (!(error instanceof SelvageError)) throw error;
      problems.push(...error.problems);
      return [];
    }
  });
  if (problems.length > 0) throw new SelvageError(locate(problems, parseSource(source.text)));
  return results;
}

/** What a reader must know about a plan. */
const stitchingNotes = ({ model, holding, price }: StitchingResult): Note[] =>
  uniqueNotes([...model.summary.notes, ...holding.notes, ...holding.growthNotes, ...price.notes]);

/** Sources of every model that a plan used, and of what its notes say. */
export const stitchingSources = (result: StitchingResult): SourceKey[] =>
  uniqueSources(
    result.model.summary.sources,
    result.holding.sources,
    result.price.sources,
    stitchingNotes(result).flatMap(({ source }) => source ?? []),
  );

/** What geometry alone tells of a plan, in the JSON document: SI numbers. */
export const summaryData = ({ title, laminate, plan, summary }: StitchingModel): Record<string, unknown> => ({
  ...defined({ title, laminate }),
  stitchType: plan.type,
  pattern: plan.pattern,
  dryThickness: plan.dryThickness,
  ...withoutProvenance(summary),
});

/** A stitch plan's part of the JSON document: SI numbers. */
export const stitchingData = ({ model, holding, price }: StitchingResult): Record<string, unknown> => ({
  ...summaryData(model),
  bridging: holdingData(holding),
  inPlane: priceData(price),
  notes: model.summary.notes,
  sources: model.summary.sources,
});
