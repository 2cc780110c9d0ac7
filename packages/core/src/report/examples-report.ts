import {
  type CheckedExample,
  checkExamples,
  type ExampleCounts,
  exampleCounts,
  exampleIds,
  isIndependent,
} from '../examples/index.js';
import { fail, nearestHint } from '../problem/index.js';
import { uniqueSources } from '../provenance/index.js';
import type { Block, Report } from './blocks.js';
import { exampleBlocks, independentBlocks, overviewTable } from './example-blocks.js';
import { heading } from './sections/build.js';
import { sourcesSection } from './sections/sources.js';

const reading =
  'Of recalled values, agreement shows that the number is right for these inputs, not that the book prints it. The order is x, y, xy with engineering shear strain; the first ply lies at z = -h/2, and "top" is the face of a ply toward it. The tolerance is half a unit of the last printed digit, or one unit where the source cut digits off or went on from rounded numbers.';

/** How closely the independent script is met, relative to the size of each number. */
const oracleTolerance = 1e-9;

function againstScript(examples: readonly CheckedExample[]): string {
  const values = examples.flatMap((one) => [...one.rows, ...one.dropped]);
  const met = values.filter(({ oracleDeviation }) => Math.abs(oracleDeviation) <= oracleTolerance).length;
  return `${met} of ${values.length} computed values agree with the full-precision result of an independent script to 1e-9 of their size.`;
}

function inWords({ values, within, examples, sources, read, independent }: ExampleCounts): string[] {
  return [
    `${within} of ${values} values from ${sources} publications (${examples} examples) lie within the tolerance that their printed digits justify. ${read} of them were read in the publication, the others are recalled, not re-read.`,
    `${independent.within} of ${independent.values} further values, which no publication prints (${independent.examples} examples), lie within the rounding of an independent script's result.`,
  ];
}

function allExamples(examples: readonly CheckedExample[]): Block[] {
  const published = examples.filter((one) => !isIndependent(one));
  return [
    heading(2, 'At a glance', 'at-a-glance'),
    { kind: 'list', items: [...inWords(exampleCounts(examples)), againstScript(examples)] },
    overviewTable(published),
    ...published.flatMap(exampleBlocks),
    ...independentBlocks(examples.filter(isIndependent)),
  ];
}

/**
 * The worked examples as a report: published value, the library's value, deviation and tolerance, of all examples or of one.
 * The numbers stay in the units of their sources, whatever units the reader has chosen.
 * @param id Of an example; all when not given.
 * @returns `data` holds the counts and, for each example, every value with its unit.
 * @throws unknown-name for an id that is not there
 */
export function examplesReport(id?: string): Report {
  if (id !== undefined && !exampleIds.includes(id)) {
    fail({
      code: 'unknown-name',
      message: `there is no worked example \`${id}\``,
      allowed: 'an id from the overview of all examples',
      ...nearestHint(id, exampleIds),
    });
  }
  const examples = checkExamples().filter((one) => id === undefined || one.id === id);
  const body: Block[] =
    id === undefined
      ? allExamples(examples)
      : [...examples.flatMap(exampleBlocks), { kind: 'paragraph', text: againstScript(examples) }];
  return {
    title: 'Worked examples, published and computed',
    ...(id === undefined ? {} : { subtitle: id }),
    units: 'metric',
    blocks: [
      { kind: 'paragraph', text: reading },
      ...body,
      ...sourcesSection(uniqueSources(examples.map(({ source }) => source))),
    ],
    data: { counts: exampleCounts(examples), examples },
  };
}
