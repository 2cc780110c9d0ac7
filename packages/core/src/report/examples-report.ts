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
  'Of recalled values, agreement shows that the number is right for these inputs, not that the book prints it. The order is x, y, xy with engineering shear strain; the first ply lies at z = -h/2, and "top" is the face of a ply toward it. The tolerance is half a unit of the last printed digit, or one unit where the source cut digits off or went on from rounded numbers. A value with a band is of a theory that goes further than that of the library: the deviation is that of the theories, and the band says how far it may go.';

/** How many values meet the independent script, by how closely its digits allow it; a band is of another theory. */
function againstScript(examples: readonly CheckedExample[]): string[] {
  const values = examples.flatMap((one) =>
    [...one.rows.filter(({ band }) => band === undefined), ...one.dropped].map(({ oracleDeviation }) => ({
      tolerance: one.oracleTolerance,
      met: Math.abs(oracleDeviation) <= one.oracleTolerance,
    })),
  );
  const shares = [...new Set(values.map(({ tolerance }) => tolerance))]
    .sort((one, other) => one - other)
    .map((tolerance) => {
      const those = values.filter((value) => value.tolerance === tolerance);
      const met = those.filter((value) => value.met).length;
      return `${met} of ${those.length} to ${tolerance.toExponential(0)} of their size`;
    });
  if (shares.length === 0) return [];
  return [
    `Computed values agree with the unrounded ones of an independent script as closely as the digits recorded of it allow: ${shares.join(', ')}. Its numbers stand as "oracle" in reference-data/examples and in the JSON of this report; the script itself is not part of the repository.`,
  ];
}

function inWords(counts: ExampleCounts): string[] {
  const { values, within, banded, dropped, examples, sources, read, quoted, recalled, independent } = counts;
  return [
    `${values} published values from ${sources} publications (${examples} examples) are compared: ${read} read in the publication, ${quoted} read where another publication quotes or solves it, ${recalled} recalled, not re-read.`,
    `${within} of ${values - banded.values} lie within the tolerance that their printed digits justify.`,
    ...(dropped === 0
      ? []
      : [
          `${dropped} further recalled values do not follow from the inputs of their examples and are not among them, since a slip of memory cannot be told from one of the print. So the agreement is in part a choice: with them it is ${within} of ${values - banded.values + dropped}. They stand under their examples.`,
        ]),
    `${banded.within} of ${banded.values} are of exact elasticity, which plate theory only approaches, and lie within the band stated beside them.`,
    `${independent.within} of ${independent.values} further values, which no publication prints (${independent.examples} examples), lie within the rounding of an independent script's result.`,
  ];
}

function allExamples(examples: readonly CheckedExample[]): Block[] {
  const published = examples.filter((one) => !isIndependent(one));
  return [
    heading(2, 'At a glance', 'at-a-glance'),
    { kind: 'list', items: [...inWords(exampleCounts(examples)), ...againstScript(examples)] },
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
      : [
          ...examples.flatMap(exampleBlocks),
          ...againstScript(examples).map((text): Block => ({ kind: 'paragraph', text })),
        ];
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
