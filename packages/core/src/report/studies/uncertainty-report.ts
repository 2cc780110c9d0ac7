import { formatNumber, type UnitSystem } from '../../quantity/index.js';
import type { UncertainInput, UncertainQuantity, Uncertainty } from '../../study/index.js';
import type { Block, Cell, Report } from '../blocks.js';
import { amount, heading, listOf, table } from '../sections/build.js';
import { sourcesSection } from '../sections/sources.js';
import { limitWords } from '../sections/target-words.js';

const inUnit = (value: number, unit: string): string => `${formatNumber(value)}${unit === '' ? '' : ` ${unit}`}`;

function spreadOf({ distribution: d, amount: { unit } }: UncertainInput): string {
  const show = (value: number): string => inUnit(value, unit);
  if (d.kind === 'normal') return `normal, ${show(d.mean)}, standard deviation ${show(d.standardDeviation)}`;
  if (d.kind === 'lognormal') return `lognormal, median ${show(d.median)}, ${formatNumber(100 * d.logDeviation, 3)} %`;
  if (d.kind === 'uniform') return `uniform, ${show(d.low)} to ${show(d.high)}`;
  return `triangular, ${show(d.low)} to ${show(d.high)}, likeliest ${show(d.likeliest)}`;
}

function quantitiesTable({ quantities }: Uncertainty): Block {
  const rows = quantities.map(({ path, kind, nominal, linear, summary }): Cell[] => [
    path,
    amount(nominal, kind),
    amount(summary.mean.value, kind),
    amount(summary.standardDeviation.value, kind, 3),
    ...summary.percentiles.map(({ value }): Cell => amount(value, kind)),
    amount(linear.mean, kind),
    amount(linear.standardDeviation, kind, 3),
  ]);
  return table(
    'uncertainty',
    'Quantities by sampling, and by first order and second moments (FOSM) beside it',
    [
      { label: 'Quantity' },
      { label: 'As written' },
      { label: 'Mean' },
      { label: 'Std. deviation' },
      ...(quantities[0]?.summary.percentiles ?? []).map(({ share }) => ({ label: `${formatNumber(100 * share)} %` })),
      { label: 'FOSM mean' },
      { label: 'FOSM std. deviation' },
    ],
    rows,
  );
}

function targetsTable({ targets, allMet }: Uncertainty, units: UnitSystem): Block[] {
  if (targets.length === 0) return [];
  const rows = targets.map((target): Cell[] => [
    target.quantity,
    limitWords(target, units),
    amount(target.probability.value, 'fraction'),
    amount(target.probability.low, 'fraction', 3),
    amount(target.probability.high, 'fraction', 3),
  ]);
  if (allMet !== undefined && targets.length > 1) {
    const { value, low, high } = allMet;
    rows.push([
      'all hard targets together',
      '',
      amount(value, 'fraction'),
      amount(low, 'fraction', 3),
      amount(high, 'fraction', 3),
    ]);
  }
  return [
    table(
      'probabilities',
      'How likely each target is met, with the range that the number of samples leaves (95 %)',
      [{ label: 'Quantity' }, { label: 'Limit' }, { label: 'Probability' }, { label: 'From' }, { label: 'To' }],
      rows,
    ),
  ];
}

function causesTable({ inputs, quantities }: Uncertainty): Block {
  const share = ({ causes, linear }: UncertainQuantity, i: number): Cell[] => {
    const cause = causes[i];
    const linearShare = amount(linear.effects[i]?.share ?? 0, 'fraction', 3);
    if (cause === undefined) return ['–', '–', linearShare];
    const share = (value: number) => formatNumber(100 * Math.max(0, value), 2);
    const range = `${share(cause.low)} to ${share(cause.high)} %`;
    return [amount(Math.max(0, cause.value), 'fraction', 3), range, linearShare];
  };
  const rows = quantities.flatMap((quantity) =>
    inputs
      .map((input, i): [weight: number, cells: Cell[]] => [
        quantity.causes[i]?.value ?? 0,
        [quantity.path, input.path, ...share(quantity, i)],
      ])
      .sort(([a], [b]) => b - a)
      .map(([, cells]) => cells),
  );
  return table(
    'causes',
    'What causes the spread: share of the variance that each input explains by itself (correlation ratio with its range, 95 %), and to first order',
    [{ label: 'Quantity' }, { label: 'Input' }, { label: 'Share' }, { label: 'Range' }, { label: 'First order' }],
    rows,
  );
}

/** The report of a study of uncertainty. */
export function uncertaintyReport(
  found: Uncertainty,
  { units = 'metric' }: { readonly units?: UnitSystem } = {},
): Report {
  const { inputs, quantities, samples, seed, notes, sources } = found;
  return {
    title: 'How sure the design is',
    subtitle: `${samples} samples, seed ${seed}`,
    units,
    blocks: [
      heading(2, 'Inputs and how well they are known', 'inputs'),
      table(
        'tolerances',
        'Inputs with tolerances',
        [{ label: 'Input' }, { label: 'As written' }, { label: 'Spread' }],
        inputs.map((input) => [input.path, inUnit(input.amount.number, input.amount.unit), spreadOf(input)]),
      ),
      heading(2, 'What follows', 'follows'),
      quantitiesTable(found),
      ...targetsTable(found, units),
      heading(2, 'What causes it', 'what-causes'),
      causesTable(found),
      heading(2, 'Whether the samples are enough', 'convergence'),
      ...listOf(quantities.map(({ path, convergence }) => `${path}: ${convergence.statement}`)),
      { kind: 'notes', notes },
      ...sourcesSection(sources),
    ],
    data: { format: 1, ...found },
  };
}
