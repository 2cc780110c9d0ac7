import {
  type CheckedExample,
  type CheckedValue,
  type ExampleEntry,
  exampleOf,
  inputsInWords,
  likePrinted,
  readPrinted,
  subjects,
  whyNoDesign,
} from '../examples/index.js';
import { citation } from '../material/index.js';
import { accessInWords } from '../provenance/index.js';
import type { Block, Cell, Column } from './blocks.js';
import { amount, heading, table, withoutNoise } from './sections/build.js';

const columns: readonly Column[] = [
  { label: 'Value' },
  { label: 'Unit' },
  { label: 'Published', kind: 'number' },
  { label: 'Computed', kind: 'number' },
  { label: 'Last digit', kind: 'number' },
  { label: 'Allowed', kind: 'number' },
  { label: 'Relative', kind: 'fraction' },
  { label: 'Within' },
];

const droppedColumns: readonly Column[] = [
  { label: 'Value' },
  { label: 'Unit' },
  { label: 'Recalled', kind: 'number' },
  { label: 'Computed', kind: 'number' },
];

/** A deviation in units of the last digit, to a tenth of one and with its sign. */
function inDigits(lastDigits: number): string {
  const tenths = Math.round(lastDigits * 10);
  if (tenths === 0) return '0';
  return `${tenths > 0 ? '+' : ''}${(tenths / 10).toFixed(1)}`;
}

/** What the deviation may be: units of the last digit, or a band of the theory. */
const allowance = ({ tolerance, band, printed }: CheckedValue): string =>
  band === undefined
    ? String(Number((tolerance / readPrinted(printed).lastDigit).toPrecision(3)))
    : `band ${Number((100 * band).toPrecision(3))} %`;

const verdict = ({ within, band }: CheckedValue): string => {
  if (!within) return 'NO';
  return band === undefined ? 'yes' : 'in the band';
};

const valueCells = (row: CheckedValue): Cell[] => [
  row.key,
  row.unit,
  row.printed,
  likePrinted(row.computed, row.printed),
  inDigits(row.lastDigits),
  allowance(row),
  amount(withoutNoise(row.deviation, 1), 'fraction', 2),
  verdict(row),
];

const withinOf = ({ rows }: CheckedExample): number => rows.filter(({ within }) => within).length;

/** "; 2 not counted" where recalled values do not follow from the inputs. */
const notCounted = ({ dropped }: CheckedExample): string =>
  dropped.length === 0 ? '' : `; ${dropped.length} not counted`;

/** Of values of a theory that goes further than that of the library no digits are compared. */
const worstOf = ({ worst }: ExampleEntry): string => (worst === undefined ? 'band' : inDigits(worst));

const headingId = (id: string): string => `example-${id}`;

/** Examples of publications, one row each, which leads to the example on a page. */
export function overviewTable(entries: readonly ExampleEntry[], examples: readonly CheckedExample[]): Block {
  const words = ['Example', 'Subject', 'What it is', 'Source', 'How obtained'].map((label): Column => ({ label }));
  const rows = entries.flatMap((entry): Cell[][] => {
    const one = examples.find(({ id }) => id === entry.id);
    if (one === undefined) return [];
    const within = withinOf(one) === one.rows.length ? 'all' : `ONLY ${withinOf(one)}`;
    return [
      [
        entry.id,
        subjects[entry.subject],
        entry.title,
        entry.sourceName,
        accessInWords(one.access),
        amount(entry.values, 'number'),
        worstOf(entry),
        `${within}${notCounted(one)}`,
        entry.design ? 'yes' : 'no',
      ],
    ];
  });
  return {
    kind: 'table',
    id: 'examples',
    caption:
      'Examples: values compared, worst deviation in units of the last digit printed, how many lie within their tolerance, and whether there is a design file',
    columns: [
      ...words,
      { label: 'Values', kind: 'number' },
      { label: 'Worst', kind: 'number' },
      { label: 'Within' },
      { label: 'Design' },
    ],
    rows,
    rowLinks: entries.map(({ id }) => headingId(id)),
  };
}

/** A few words on each example, for a terminal. */
export function overviewList(entries: readonly ExampleEntry[]): Block {
  const items = entries.map((entry) => {
    const { id, title, sourceName, values, worst, design } = entry;
    const digits = worst === undefined ? 'in the band' : `worst ${inDigits(worst)} of the last digit`;
    const count = `${values} ${values === 1 ? 'value' : 'values'}`;
    return `${id}: ${title}. ${sourceName}; ${count}, ${digits}; ${design ? 'design file' : 'no design file'}`;
  });
  return { kind: 'list', items };
}

function designInWords(id: string): string {
  const why = whyNoDesign(exampleOf(id));
  return why === undefined ? `selvage examples ${id} --design` : `none: ${why}`;
}

/** One example: where it stands, its inputs, and every value printed and computed. */
export function exampleBlocks(one: CheckedExample, level: 2 | 3 = 2): Block[] {
  const { id, title, source, where, access, confidence, inputs, note, rows, dropped } = one;
  const banded = rows.some(({ band }) => band !== undefined);
  const facts = [
    { label: 'Example', value: id },
    { label: 'Source', value: citation(source) },
    { label: 'Place', value: where },
    { label: 'How obtained', value: `${accessInWords(access)}; confidence ${confidence}` },
    { label: 'Inputs', value: inputsInWords(inputs) },
    ...(note === undefined ? [] : [{ label: 'Remark', value: note }]),
    {
      label: 'Agreement',
      value: `${withinOf(one)} of ${rows.length} within the ${banded ? 'band' : 'tolerance'}${notCounted(one)}`,
    },
    { label: 'Design file', value: designInWords(id) },
  ];
  const droppedRows = dropped.map((row): Cell[] => [
    row.key,
    row.unit,
    row.printed,
    likePrinted(row.computed, row.printed),
  ]);
  return [
    heading(level, title, headingId(id)),
    { kind: 'facts', items: facts },
    table(id, `${id}: published and computed`, columns, rows.map(valueCells)),
    ...(dropped.length === 0
      ? []
      : [
          table(
            `${id}-dropped`,
            `${id}: recalled, but not what the inputs give; not counted`,
            droppedColumns,
            droppedRows,
          ),
        ]),
  ];
}

/** Values of an independent script in one table: without a publication there is nothing to tell of each example. */
export function independentBlocks(examples: readonly CheckedExample[]): Block[] {
  const heads = columns.map((column) => (column.label === 'Published' ? { ...column, label: 'Script' } : column));
  return [
    heading(2, 'Values of an independent script', 'independent-script'),
    table(
      'independent-script',
      'Computed by an independent script, printed by no publication',
      [{ label: 'Example' }, ...heads],
      examples.flatMap((one) => one.rows.map((row): Cell[] => [one.id, ...valueCells(row)])),
    ),
  ];
}
