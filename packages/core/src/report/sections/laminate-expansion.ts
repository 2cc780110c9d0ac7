import type { LaminateResult } from '../../design/index.js';
import { curedShape, type FreeExpansion, type Vector3 } from '../../laminate/index.js';
import { formatQuantity, type KindName, type UnitSystem } from '../../quantity/index.js';
import type { Block, Cell } from '../blocks.js';
import { amount, heading, listOf, table, withoutNoise } from './build.js';
import { furtherNotes } from './further-notes.js';
import { shapeWords } from './loads/cured-shape.js';

/** A length and a cooling that a reader can picture. */
const picture = {
  metric: { length: 1, cooling: 100 },
  us: { length: 0.9144, cooling: 100 / 1.8 },
} as const;
const moistureTaken = 0.01;

const axes = ['x', 'y', 'xy'] as const;

interface TableOf {
  readonly id: string;
  readonly caption: string;
  readonly coefficient: { readonly label: string; readonly kind: KindName };
  readonly curvature: { readonly label: string; readonly kind: KindName };
  /** How much of heat or moisture the change of length is for, and over which length. */
  readonly amount: number;
  readonly length: number;
  readonly change: string;
}

function expansionTable({ strain, curvature }: FreeExpansion, thickness: number, of: TableOf): Block {
  const size = Math.max(...strain.map(Math.abs));
  const curved = curvature.some((value) => Math.abs(value) * thickness > 1e-9 * size);
  const rows = axes.map((axis, i): Cell[] => {
    const coefficient = withoutNoise(strain[i] ?? 0, size);
    return [
      axis,
      amount(coefficient, of.coefficient.kind),
      axis === 'xy' ? '–' : amount(coefficient * of.amount * of.length, 'length', 3),
      ...(curved ? [amount(withoutNoise(curvature[i] ?? 0, size / thickness), of.curvature.kind)] : []),
    ];
  });
  return table(
    of.id,
    of.caption,
    [{ label: '' }, of.coefficient, { label: of.change, kind: 'length' }, ...(curved ? [of.curvature] : [])],
    rows,
  );
}

/** What heat and moisture do to the unloaded laminate; absent when its layers have no coefficients. */
export function laminateExpansion(result: LaminateResult, id: string, units: UnitSystem): Block[] {
  const { expansion, stiffness } = result;
  if (expansion === undefined) return [];
  const { thermal, moisture } = expansion;
  const { length, cooling } = picture[units];
  const long = formatQuantity(length, 'longLength', { units, digits: 3 });
  const colder = formatQuantity(cooling, 'temperatureChange', { units });
  return [
    heading(3, 'Expansion', `${id}--expansion`),
    ...(thermal === undefined
      ? []
      : [
          expansionTable(thermal, stiffness.thickness, {
            id: `${id}--thermal`,
            caption: 'Thermal expansion, free to stretch and bend',
            coefficient: { label: 'α', kind: 'expansion' },
            curvature: { label: 'Curvature', kind: 'curvatureExpansion' },
            amount: -cooling,
            length,
            change: `Change of ${long}, ${colder} colder`,
          }),
          ...listOf(shapeWhenCooled(thermal, result, cooling, units)),
          furtherNotes(thermal.notes, result.notes),
        ]),
    ...(moisture === undefined
      ? []
      : [
          expansionTable(moisture, stiffness.thickness, {
            id: `${id}--swelling`,
            caption: 'Swelling, free to stretch and bend: β and curvature per mass of water over mass of ply',
            coefficient: { label: 'β', kind: 'number' },
            curvature: { label: 'Curvature', kind: 'curvature' },
            amount: moistureTaken,
            length,
            change: `Change of ${long}, 1 % of water`,
          }),
          furtherNotes(moisture.notes, result.notes),
        ]),
  ];
}

function shapeWhenCooled(
  { curvature, notes, sources }: FreeExpansion,
  { stiffness }: LaminateResult,
  cooling: number,
  units: UnitSystem,
): string[] {
  const [x, y, xy] = curvature;
  const cooled: Vector3 = [-x * cooling, -y * cooling, -xy * cooling];
  const [first = '', ...rest] = shapeWords(
    curedShape({ curvature: cooled, notes, sources }, stiffness.thickness),
    units,
  );
  return [`${formatQuantity(cooling, 'temperatureChange', { units })} colder, ${first}`, ...rest];
}
