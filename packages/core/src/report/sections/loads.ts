import type { LoadResult } from '../../design/index.js';
import type { Criterion } from '../../laminate/index.js';
import { uniqueNotes } from '../../provenance/index.js';
import { formatQuantity, type UnitSystem } from '../../quantity/index.js';
import type { Block, Cell } from '../blocks.js';
import { amount, heading, listOf, slug, table, withoutNoise } from './build.js';

const three = (values: readonly number[]): number => Math.max(...values.map(Math.abs));

function responseTable({ response }: LoadResult, id: string): Block {
  const axes = ['x', 'y', 'xy'];
  const { N, M, strain, curvature } = response;
  const rows = axes.map((axis, i): Cell[] => [
    axis,
    amount(withoutNoise(N[i] ?? 0, three(N)), 'forcePerLength'),
    amount(withoutNoise(M[i] ?? 0, three(M)), 'momentPerLength'),
    amount(withoutNoise(strain[i] ?? 0, three(strain)), 'strain'),
    amount(withoutNoise(curvature[i] ?? 0, three(curvature)), 'curvature'),
  ]);
  return table(
    `${id}-response`,
    'Loads, mid-plane strain and curvature',
    [
      { label: '' },
      { label: 'N', kind: 'forcePerLength' },
      { label: 'M', kind: 'momentPerLength' },
      { label: 'Strain', kind: 'strain' },
      { label: 'Curvature', kind: 'curvature' },
    ],
    rows,
  );
}

function stressTable({ response }: LoadResult, id: string): Block {
  const points = response.plies.flatMap((ply) => [ply.top, ply.bottom]);
  const size = three(points.flatMap((point) => point.stress12));
  const strained = three(points.flatMap((point) => point.strain12));
  const height = three(points.map((point) => point.z));
  const rows = response.plies.flatMap((ply, i): Cell[][] =>
    [ply.bottom, ply.top]
      .sort((a, b) => a.z - b.z)
      .map((point) => [
        String(i + 1),
        ply.name,
        amount(ply.angle, 'angle'),
        amount(withoutNoise(point.z, height), 'length'),
        ...point.stress12.map((value) => amount(withoutNoise(value, size), 'stress')),
        ...point.strain12.map((value) => amount(withoutNoise(value, strained), 'strain')),
      ]),
  );
  return table(
    `${id}-stresses`,
    'Stress and strain in the axes of each layer, at its lower and upper face',
    [
      { label: 'No.' },
      { label: 'Material' },
      { label: 'Angle', kind: 'angle' },
      { label: 'z', kind: 'length' },
      { label: 'σ1', kind: 'stress' },
      { label: 'σ2', kind: 'stress' },
      { label: 'τ12', kind: 'stress' },
      { label: 'ε1', kind: 'strain' },
      { label: 'ε2', kind: 'strain' },
      { label: 'γ12', kind: 'strain' },
    ],
    rows,
  );
}

const criterionNames: Readonly<Record<Criterion, string>> = {
  maxStress: 'maximum stress',
  maxStrain: 'maximum strain',
  tsaiHill: 'Tsai-Hill',
  tsaiWu: 'Tsai-Wu',
  hashin: 'Hashin',
  puck: 'Puck, action plane',
};

/** First-ply failure by every criterion; the ratio multiplies the load as given. */
function failureBlocks({ failures }: LoadResult, id: string): Block[] {
  if (failures.length === 0) return listOf(['no strength ratio: a layer of this laminate has no strengths']);
  const ratio = (value: number | undefined): Cell => (value === undefined ? 'no limit' : amount(value, 'number'));
  const residual = failures.some((one) => one.withoutResidual !== undefined);
  const rows = failures.map((one): Cell[] => [
    criterionNames[one.criterion],
    ratio(one.ratio),
    ...(residual ? [ratio(one.withoutResidual === undefined ? one.ratio : one.withoutResidual.ratio)] : []),
    one.ply === undefined ? '–' : `${one.ply} ${one.name ?? ''}`.trim(),
    one.face === undefined ? '–' : one.face === 'top' ? 'toward the tool' : 'toward the bag',
    one.mode,
  ]);
  return [
    table(
      `${id}-failure`,
      'First-ply failure: by how much the load may be multiplied until a layer breaks',
      [
        { label: 'Criterion' },
        { label: 'Strength ratio' },
        ...(residual ? [{ label: 'without residual stress' }] : []),
        { label: 'Layer' },
        { label: 'Face' },
        { label: 'Mode' },
      ],
      rows,
    ),
  ];
}

/** What the report says about one load case. */
export function loadSection(result: LoadResult, units: UnitSystem): Block[] {
  const { model, response } = result;
  const id = `load-${slug(model.name)}`;
  const change = model.temperatureChange;
  return [
    heading(2, `Load ${model.name} on laminate ${model.laminate}`, id),
    ...listOf([
      ...(model.note === undefined ? [] : [model.note]),
      ...(change === undefined || change === 0
        ? []
        : [`temperature change from the stress-free state: ${formatQuantity(change, 'temperatureChange', { units })}`]),
    ]),
    responseTable(result, id),
    stressTable(result, id),
    ...failureBlocks(result, id),
    { kind: 'notes', notes: uniqueNotes([...response.notes, ...result.failures.flatMap((one) => one.notes)]) },
  ];
}
