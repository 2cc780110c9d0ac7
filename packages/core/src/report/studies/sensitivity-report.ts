import type { UnitSystem } from '../../quantity/index.js';
import type { Sensitivity } from '../../study/index.js';
import type { Block, Cell, Report } from '../blocks.js';
import { barsFigure } from '../figures/index.js';
import { amount, heading, listOf, slug, table } from '../sections/build.js';

const mostRows = 40;
const mostBars = 12;

function tornado({ quantities, inputs }: Sensitivity, index: number): Block[] {
  const quantity = quantities[index];
  const ranked = inputs
    .map(({ path, responses }) => ({ path, elasticity: responses[index]?.elasticity ?? 0 }))
    .filter(({ elasticity }) => elasticity !== 0)
    .sort((a, b) => Math.abs(b.elasticity) - Math.abs(a.elasticity))
    .slice(0, mostBars);
  if (quantity === undefined || ranked.length === 0) return [];
  return [
    barsFigure({
      id: `sensitivity-${slug(quantity.path)}`,
      title: `What moves ${quantity.path}`,
      axis: 'percent for one percent of the input',
      bars: ranked.map(({ path, elasticity }) => ({ label: path, value: elasticity })),
    }),
  ];
}

/** The report of a sensitivity study: ranked elasticities, a figure for each quantity, inputs that move none of them, numbers that are no quantities. */
export function sensitivityReport(
  found: Sensitivity,
  { units = 'metric' }: { readonly units?: UnitSystem } = {},
): Report {
  const { quantities, inputs, idle, nominal, fixed } = found;
  const rows = inputs
    .slice(0, mostRows)
    .map(({ path, value, step, responses }): Cell[] => [
      path,
      String(value),
      amount(step, 'fraction', 2),
      ...responses.map(({ elasticity }): Cell => amount(elasticity, 'number', 3)),
    ]);
  const rest = inputs.length - rows.length;
  return {
    title: 'What moves the design',
    subtitle: 'each number of the design file moved a little up and down, one at a time',
    units,
    blocks: [
      heading(2, 'Quantities', 'quantities'),
      {
        kind: 'facts',
        items: quantities.map(({ path, kind, value }) => ({ label: path, value: amount(value, kind) })),
      },
      heading(2, 'Inputs by what they move', 'elasticities'),
      ...(rows.length === 0
        ? [{ kind: 'paragraph' as const, text: 'No input moves any of these quantities.' }]
        : [
            table(
              'elasticities',
              'Elasticities: percent of the quantity for one percent of the input',
              [
                { label: 'Input' },
                { label: 'Value' },
                { label: 'Moved by' },
                ...quantities.map(({ path }) => ({ label: path })),
              ],
              rows,
            ),
          ]),
      ...listOf(rest > 0 ? [`and ${rest} more; the JSON form has them all`] : []),
      ...quantities.flatMap((_, i) => tornado(found, i)),
      ...(idle.length === 0
        ? []
        : [heading(2, 'Inputs that move none of these quantities', 'idle'), ...listOf([idle.join(', ')])]),
      ...(nominal.length === 0
        ? []
        : [heading(2, 'Numbers that name or count something, not varied', 'nominal'), ...listOf([nominal.join(', ')])]),
      ...(fixed.length === 0
        ? []
        : [
            heading(2, 'Inputs that were not moved', 'fixed'),
            ...listOf(fixed.map(({ path, why }) => `${path}: ${why}`)),
          ]),
    ],
    data: { format: 1, ...found },
  };
}
