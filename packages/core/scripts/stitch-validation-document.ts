import { uniqueSources } from '../src/provenance/index.js';
import { type Report, render } from '../src/report/index.js';
import { sourcesSection } from '../src/report/sections/sources.js';
import { comparisons, dataSets, entry, rowOf } from './stitch-validation/inputs.js';
import {
  gateBlocks,
  inPlaneBlocks,
  lengthBlocks,
  statementBlocks,
  unpredictedBlocks,
} from './stitch-validation/other-blocks.js';
import { stitchValidation } from './stitch-validation/results.js';
import { summaryBlocks } from './stitch-validation/summary-blocks.js';
import { toughnessBlocks } from './stitch-validation/toughness-blocks.js';

/** From the root of the repository. */
const command = 'node --conditions=@selvage/source --import=tsx packages/core/scripts/write-stitch-validation.ts';

/** docs/validation-stitching.md: what is printed of stitched laminates beside what the library computes now. */
export function stitchValidationDocument(): string {
  const found = stitchValidation();
  const sources = comparisons.flatMap((one) => [
    entry(dataSets, one.dataSet).source,
    ...[rowOf(one).source ?? []].flat(),
  ]);
  const report: Report = {
    title: 'Stitched laminates, published and predicted',
    units: 'metric',
    blocks: [
      ...summaryBlocks(found),
      ...toughnessBlocks(found),
      ...lengthBlocks(found),
      ...inPlaneBlocks(found),
      ...unpredictedBlocks(),
      ...statementBlocks(found),
      ...gateBlocks(found),
      ...sourcesSection(uniqueSources(sources)),
    ],
    data: {},
  };
  const head = `<!-- Generated, do not edit. Written by: ${command} -->`;
  return `${head}\n\n${render(report, 'markdown')}`;
}
