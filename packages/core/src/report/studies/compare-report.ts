import type { UnitSystem } from '../../quantity/index.js';
import type { Comparison, MovedQuantity } from '../../study/index.js';
import type { Block, Cell, Report } from '../blocks.js';
import { amount, heading, listOf, table } from '../sections/build.js';
import { limitWords, verdictWords } from '../sections/target-words.js';
import { changeCell, valueCell } from './cells.js';
import { overlays } from './compare-figures.js';

/** Rows of a table that a reader still reads; the JSON document has all. */
const mostRows = 40;

function inputsTable({ designs, inputs }: Comparison): Block {
  if (inputs.length === 0) return { kind: 'paragraph', text: 'No input differs.' };
  return table(
    'inputs',
    'Inputs that differ, as written in the design files',
    [{ label: 'Input' }, ...designs.map(({ name }) => ({ label: name }))],
    inputs.map(({ path, values }) => [path, ...values.map((value) => (value === undefined ? '–' : String(value)))]),
  );
}

/** Every target of any design with what comes of it in each; the limits are those of the first design that has it. */
function targetsTable({ designs }: Comparison, units: UnitSystem): Block[] {
  const all = designs.map(({ results }) => new Map(results.targets.map((target) => [target.quantity, target])));
  const quantities = [...new Set(all.flatMap((targets) => [...targets.keys()]))];
  if (quantities.length === 0) return [];
  const rows = quantities.map((quantity): Cell[] => {
    const first = all.map((targets) => targets.get(quantity)).find((target) => target !== undefined);
    return [
      quantity,
      first === undefined ? '' : limitWords(first, units),
      ...all.flatMap((targets): Cell[] => {
        const target = targets.get(quantity);
        return target === undefined ? ['–', ''] : [amount(target.value, target.kind), verdictWords(target)];
      }),
    ];
  });
  return [
    table(
      'targets',
      'Targets',
      [
        { label: 'Quantity' },
        { label: 'Limit' },
        ...designs.flatMap(({ name }) => [{ label: name }, { label: 'Verdict' }]),
      ],
      rows,
    ),
  ];
}

function movedTable(id: string, caption: string, { designs }: Comparison, moved: readonly MovedQuantity[]): Block[] {
  if (moved.length === 0) return [];
  const [base, ...others] = designs;
  const columns = [
    { label: 'Quantity' },
    { label: base?.name ?? '' },
    ...others.flatMap(({ name }) => [{ label: name }, { label: 'Change' }]),
  ];
  const rows = moved
    .slice(0, mostRows)
    .map(({ path, values, percent }): Cell[] => [
      path,
      valueCell(path, values[0]),
      ...others.flatMap((_, i): Cell[] => [valueCell(path, values[i + 1]), changeCell(percent[i + 1])]),
    ]);
  const rest = moved.length - rows.length;
  return [
    table(id, caption, columns, rows),
    ...listOf(rest > 0 ? [`and ${rest} more; the JSON form has them all`] : []),
  ];
}

/** The report of a comparison. */
export function comparisonReport(
  comparison: Comparison,
  { units = 'metric' }: { readonly units?: UnitSystem } = {},
): Report {
  const { designs, inputs, quantities } = comparison;
  const names = designs.map(({ name }) => name);
  const first = quantities.filter(({ rank }) => rank === 1);
  // Entries of matrices and of single plies are for programs.
  const rest = quantities.filter(({ rank, path }) => rank === 2 && !/\.\d+(\.|$)/.test(path));
  const entries = quantities.filter(({ rank }) => rank === 2).length - rest.length;
  return {
    title: `${names.join(' and ')} side by side`,
    subtitle: `changes are counted from ${names[0]}`,
    units,
    blocks: [
      heading(2, 'What is different', 'different'),
      inputsTable(comparison),
      heading(2, 'What came of it', 'moved'),
      ...targetsTable(comparison, units),
      ...movedTable('moved-first', 'What moved, most important first', comparison, first),
      ...movedTable('moved-rest', 'Everything else that moved', comparison, rest),
      ...listOf(
        entries > 0 ? [`${entries} entries of matrices, lists and single plies moved too; the JSON form has them`] : [],
      ),
      ...(quantities.length === 0 ? [{ kind: 'paragraph' as const, text: 'No result that they share moved.' }] : []),
      ...overlays(comparison, units),
      { kind: 'paragraph', text: 'Models, notes and sources stand in the report of each design.' },
    ],
    data: {
      format: 1,
      designs: designs.map(({ name, results }) => ({ name, title: results.model.title })),
      inputs: inputs.map(({ path, values }) => ({ path, values: values.map((value) => value ?? null) })),
      quantities: quantities.map(({ path, values, percent }) => ({
        path,
        values: values.map((value) => value ?? null),
        percent: percent.map((value) => value ?? null),
      })),
      targets: designs.map(({ name, results }) => ({ name, targets: results.targets })),
    },
  };
}
