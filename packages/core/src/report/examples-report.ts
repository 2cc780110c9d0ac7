import {
  type CheckedExample,
  checkExample,
  type ExampleCounts,
  type ExampleEntry,
  exampleCatalogue,
  exampleCounts,
  exampleIds,
  exampleOf,
  findExamples,
  isIndependent,
  type Subject,
  subjects,
} from '../examples/index.js';
import { uniqueSources } from '../provenance/index.js';
import type { Block, Report } from './blocks.js';
import { exampleBlocks, independentBlocks, overviewList, overviewTable } from './example-blocks.js';
import { heading } from './sections/build.js';
import { sourcesSection } from './sections/sources.js';

const reading =
  'Of recalled values, agreement shows that the number is right for these inputs, not that the book prints it. The order is x, y, xy with engineering shear strain; the first ply lies at z = -h/2, and "top" is the face of a ply toward it. A deviation stands in units of the last digit that is printed, and relative to the number; allowed is half a unit of the last digit, or one where the source cut digits off or went on from rounded numbers. A value with a band is of a theory that goes further than that of the library: the deviation is that of the theories, and the band says how far it may go.';

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

/** Each sentence with the number that it is about: what there is nothing of is not told. */
function inWords(counts: ExampleCounts): string[] {
  const { values, within, banded, dropped, examples, sources, read, quoted, recalled, independent } = counts;
  const exact = values - banded.values;
  const sentences: readonly (readonly [number, string])[] = [
    [
      values,
      `${values} published values from ${sources} publications (${examples} examples) are compared: ${read} read in the publication, ${quoted} read where another publication quotes or solves it, ${recalled} recalled, not re-read.`,
    ],
    [exact, `${within} of ${exact} lie within the tolerance that their printed digits justify.`],
    [
      dropped,
      `${dropped} further recalled values do not follow from the inputs of their examples and are not among them, since a slip of memory cannot be told from one of the print. So the agreement is in part a choice: with them it is ${within} of ${exact + dropped}. They stand under their examples.`,
    ],
    [
      banded.values,
      `${banded.within} of ${banded.values} are of exact elasticity, which plate theory only approaches, and lie within the band stated beside them.`,
    ],
    [
      independent.values,
      `${independent.within} of ${independent.values} further values, which no publication prints (${independent.examples} examples), lie within the rounding of an independent script's result.`,
    ],
  ];
  return sentences.flatMap(([count, sentence]) => (count === 0 ? [] : [sentence]));
}

const inSubject = (entries: readonly ExampleEntry[], subject: Subject): ExampleEntry[] =>
  entries.filter((entry) => entry.subject === subject);

/** The subjects of some entries, each under a heading with what is told of it. */
function bySubject(
  entries: readonly ExampleEntry[],
  tell: (those: readonly ExampleEntry[]) => readonly Block[],
): Block[] {
  return (Object.keys(subjects) as Subject[]).flatMap((subject) => {
    const those = inSubject(entries, subject);
    return those.length === 0 ? [] : [heading(2, subjects[subject], `subject-${subject}`), ...tell(those)];
  });
}

/** Every example with all its values, the list of them first. */
function wholeExamples(examples: readonly CheckedExample[], catalogue: readonly ExampleEntry[]): Block[] {
  const published = catalogue.filter(({ independent }) => !independent);
  const alone = examples.filter(isIndependent);
  return [
    heading(2, 'At a glance', 'at-a-glance'),
    { kind: 'list', items: [...inWords(exampleCounts(examples)), ...againstScript(examples)] },
    ...(published.length === 0 ? [] : [overviewTable(published, examples)]),
    ...bySubject(published, (those) =>
      those.flatMap(({ id }) => examples.filter((one) => one.id === id).flatMap((one) => exampleBlocks(one, 3))),
    ),
    ...(alone.length === 0 ? [] : independentBlocks(alone)),
  ];
}

const howToGoOn =
  'One of them with its inputs and every value: `selvage examples ID`; as a design file: `selvage examples ID --design`. Those of a subject or with a word in title or source: `selvage examples strength`. All of them on one page: `selvage examples --out examples.html`.';

/** What there is, a few words on each example. */
function listedExamples(catalogue: readonly ExampleEntry[], counts: ExampleCounts, all: boolean): Block[] {
  const alone = catalogue.filter(({ independent }) => independent);
  const listed = all ? catalogue.filter(({ independent }) => !independent) : catalogue;
  return [
    ...(all ? [{ kind: 'list' as const, items: inWords(counts) }] : []),
    ...bySubject(listed, (those) => [overviewList(those)]),
    ...(all
      ? [
          {
            kind: 'paragraph' as const,
            text: `${alone.length} further examples, which no publication prints, are of an independent script: \`selvage examples independent-script\` lists them.`,
          },
        ]
      : []),
    { kind: 'paragraph', text: howToGoOn },
  ];
}

/** How much of the examples is shown. */
export interface ExamplesReportOptions {
  /** True for a list of them alone, a few words on each; an example that is named by its id is shown whole in any case. */
  readonly list?: boolean;
}

/**
 * The worked examples as a report: published value, the library's value, deviation and tolerance. The numbers stay in the units of
 * their sources, whatever units the reader has chosen.
 * @param what An id, a subject, or a word of titles and sources; all examples when not given.
 * @returns `data` holds the counts, the catalogue and, for each example, every value with its unit.
 * @throws unknown-name for what no example is about
 */
export function examplesReport(what?: string, { list = false }: ExamplesReportOptions = {}): Report {
  const ids = what === undefined ? exampleIds : findExamples(what);
  const examples = ids.map((id) => checkExample(exampleOf(id)));
  const catalogue = exampleCatalogue(examples);
  const one = what !== undefined && exampleIds.includes(what);
  const body: Block[] = one
    ? [
        { kind: 'paragraph', text: reading },
        ...examples.flatMap((example) => exampleBlocks(example)),
        ...againstScript(examples).map((text): Block => ({ kind: 'paragraph', text })),
      ]
    : list
      ? listedExamples(catalogue, exampleCounts(examples), what === undefined)
      : [{ kind: 'paragraph', text: reading }, ...wholeExamples(examples, catalogue)];
  return {
    title: 'Worked examples, published and computed',
    ...(what === undefined ? {} : { subtitle: what }),
    units: 'metric',
    blocks: [...body, ...(list && !one ? [] : sourcesSection(uniqueSources(examples.map(({ source }) => source))))],
    data: { counts: exampleCounts(examples), catalogue, examples },
  };
}
