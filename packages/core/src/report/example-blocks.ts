import { type CheckedExample, type CheckedValue, inputsInWords, likePrinted } from '../examples/index.js';
import { citation } from '../material/index.js';
import { accessInWords } from '../provenance/index.js';
import type { Block, Cell, Column } from './blocks.js';
import { amount, heading, table, withoutNoise } from './sections/build.js';

const columns: readonly Column[] = [
  { label: 'Value' },
  { label: 'Unit' },
  { label: 'Published', kind: 'number' },
  { label: 'Computed', kind: 'number' },
  { label: 'Deviation', kind: 'fraction' },
  { label: 'Tolerance', kind: 'number' },
  { label: 'Within' },
];

const droppedColumns: readonly Column[] = [
  { label: 'Value' },
  { label: 'Unit' },
  { label: 'Recalled', kind: 'number' },
  { label: 'Computed', kind: 'number' },
];

/** "0.00050" as "0.0005", "50.0e6" as "50e6". */
const shortened = (number: string): string => number.replace(/(\.\d*?)0+(?=e|$)/, '$1').replace(/\.(?=e|$)/, '');

/** What the deviation may be: the rounding of the print, or a band of the theory. */
const allowance = ({ tolerance, band, printed }: CheckedValue): string =>
  band === undefined ? shortened(likePrinted(tolerance, printed)) : `band ${Number((100 * band).toPrecision(3))} %`;

const verdict = ({ within, band }: CheckedValue): string => {
  if (!within) return 'NO';
  return band === undefined ? 'yes' : 'in the band';
};

const valueCells = (row: CheckedValue): Cell[] => [
  row.key,
  row.unit,
  row.printed,
  likePrinted(row.computed, row.printed),
  amount(withoutNoise(row.deviation, 1), 'fraction', 2),
  allowance(row),
  verdict(row),
];

const withinOf = ({ rows }: CheckedExample): number => rows.filter(({ within }) => within).length;

/** "; 2 not counted" where recalled values do not follow from the inputs. */
const notCounted = ({ dropped }: CheckedExample): string =>
  dropped.length === 0 ? '' : `; ${dropped.length} not counted`;

/** Examples of publications, one row each. */
export function overviewTable(examples: readonly CheckedExample[]): Block {
  const heads = ['Example', 'What it is', 'Source', 'How obtained'].map((label): Column => ({ label }));
  const rows = examples.map((one): Cell[] => [
    one.id,
    one.title,
    one.source,
    accessInWords(one.access),
    amount(one.rows.length, 'number'),
    `${withinOf(one) === one.rows.length ? 'all' : `ONLY ${withinOf(one)}`}${notCounted(one)}`,
  ]);
  return table(
    'examples',
    'Examples, the number of values compared and how many lie within their tolerance',
    [...heads, { label: 'Values', kind: 'number' }, { label: 'Within' }],
    rows,
  );
}

/** One example: where it stands, its inputs, and every value printed and computed. */
export function exampleBlocks(one: CheckedExample): Block[] {
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
  ];
  const droppedRows = dropped.map((row): Cell[] => [
    row.key,
    row.unit,
    row.printed,
    likePrinted(row.computed, row.printed),
  ]);
  return [
    heading(2, title, `example-${id}`),
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
