import { compute, type Model, type Results } from '../design/index.js';
import type { UnitSystem } from '../quantity/index.js';
import type { Block, Report } from './blocks.js';
import { cautionSection, materialsSection } from './sections/closing.js';
import { constituentsSection } from './sections/constituents.js';
import { couponSection } from './sections/coupons/section.js';
import { laminateSection } from './sections/laminate.js';
import { loadSection } from './sections/loads.js';
import { overviewSection } from './sections/overview.js';
import { sourcesSection } from './sections/sources.js';
import { stitchingSection } from './sections/stitching.js';

/** What a report holds, and in which units its drawings are. */
export interface ReportOptions {
  /** Units of drawings and of limits in words; the design's own by default. Renderers take theirs again for numbers. */
  readonly units?: UnitSystem;
  /** Only what a reader wants to know first. */
  readonly summary?: boolean;
}

/**
 * The report of a design as a tree of blocks, with the JSON document beside it.
 * @param model from `assemble`, or results from `compute`
 * @throws SelvageError what {@link compute} throws
 */
export function report(model: Model | Results, options: ReportOptions = {}): Report {
  const results = 'data' in model ? model : compute(model);
  const units = options.units ?? results.model.units;
  const overview = overviewSection(results, units);
  const blocks: Block[] =
    options.summary === true
      ? [...overview, cautionSection(results)]
      : [
          ...overview,
          ...results.laminates.flatMap((one) => laminateSection(one, units)),
          ...results.stitching.flatMap((one) => stitchingSection(one, units)),
          ...results.loads.flatMap((one, i) => loadSection(one, units, results.loads.slice(0, i))),
          ...results.coupons.flatMap((one, i) => couponSection(one, units, results.coupons.slice(0, i))),
          ...constituentsSection(results, units),
          ...materialsSection(results),
          cautionSection(results),
          ...sourcesSection(results.sources),
        ];
  return {
    title: results.model.title,
    units,
    blocks: blocks.filter((block) => block.kind !== 'notes' || block.notes.length > 0),
    data: results.data,
  };
}
