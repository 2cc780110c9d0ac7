import type { LoadResult } from '../../../design/index.js';
import type { PlyResponse } from '../../../laminate/index.js';
import type { Block, Cell } from '../../blocks.js';
import { amount, table, withoutNoise } from '../build.js';
import { facesOf, halfThickness, largest } from './words.js';

/** With more layers than this a reader is shown extremes by kind of layer; every number stays in the JSON document. */
const mostLayers = 20;

const plyAxes = ['σ1', 'σ2', 'τ12'];

/** "45° tape". */
const layer = ({ angle, name }: PlyResponse): string => `${angle}° ${name}`;

/** Whether stress is the same all through each layer: nothing bends. */
function isUniform(plies: readonly PlyResponse[], size: number): boolean {
  return plies.every(({ top, bottom }) =>
    top.stress12.every((value, i) => withoutNoise(value - (bottom.stress12[i] ?? 0), size) === 0),
  );
}

function everyFace(result: LoadResult, id: string): Block {
  const { plies } = result.response;
  const points = plies.flatMap(facesOf);
  const size = largest(points.flatMap(({ stress12 }) => [...stress12]));
  const strained = largest(points.flatMap(({ strain12 }) => [...strain12]));
  const height = halfThickness(result);
  const uniform = isUniform(plies, size);
  const rows = plies.flatMap((ply, i): Cell[][] =>
    (uniform ? [ply.middle] : facesOf(ply)).map((point) => [
      String(i + 1),
      layer(ply),
      amount(withoutNoise(point.z, height), 'length'),
      ...point.stress12.map((value) => amount(withoutNoise(value, size), 'stress')),
      ...point.strain12.map((value) => amount(withoutNoise(value, strained), 'strain')),
    ]),
  );
  return table(
    `${id}-stresses`,
    `Stress and strain in the axes of each layer, ${uniform ? 'the same all through it' : 'at its lower and upper face'}`,
    [
      { label: 'No.' },
      { label: 'Layer' },
      { label: 'z', kind: 'length' },
      ...plyAxes.map((label) => ({ label, kind: 'stress' as const })),
      ...['ε1', 'ε2', 'γ12'].map((label) => ({ label, kind: 'strain' as const })),
    ],
    rows,
  );
}

/** Mid-height of each layer: times its thickness and summed, these stresses are N. */
function laminateAxes(result: LoadResult, id: string): Block {
  const { plies } = result.response;
  const size = largest(plies.flatMap(({ middle }) => [...middle.stress]));
  const rows = plies.map((ply, i): Cell[] => [
    String(i + 1),
    layer(ply),
    amount(withoutNoise(ply.middle.z, halfThickness(result)), 'length'),
    ...ply.middle.stress.map((value) => amount(withoutNoise(value, size), 'stress')),
  ]);
  return table(
    `${id}-laminate-axes`,
    'Stress in the axes of the laminate at mid-height of each layer; times thickness and summed it is N',
    [
      { label: 'No.' },
      { label: 'Layer' },
      { label: 'z', kind: 'length' },
      ...['σx', 'σy', 'τxy'].map((label) => ({ label, kind: 'stress' as const })),
    ],
    rows,
  );
}

interface Group {
  readonly name: string;
  readonly angle: number;
  readonly plies: PlyResponse[];
}

/** Layers of one material and angle, in order of first appearance. */
function groups(plies: readonly PlyResponse[]): Group[] {
  const found = new Map<string, Group>();
  for (const ply of plies) {
    const key = `${ply.name} ${ply.angle}`;
    const group = found.get(key);
    if (group === undefined) found.set(key, { name: ply.name, angle: ply.angle, plies: [ply] });
    else group.plies.push(ply);
  }
  return [...found.values()];
}

function extremes(result: LoadResult, id: string): Block {
  const { plies } = result.response;
  const size = largest(plies.flatMap((ply) => facesOf(ply).flatMap(({ stress12 }) => [...stress12])));
  const rows = groups(plies).map(({ name, angle, plies: same }): Cell[] => {
    const stresses = same.flatMap((ply) => facesOf(ply).map(({ stress12 }) => stress12));
    const ends = ([0, 1, 2] as const).flatMap((i) => {
      const values = stresses.map((stress) => stress[i]);
      return [Math.min(...values), Math.max(...values)];
    });
    return [
      name,
      amount(angle, 'angle'),
      String(same.length),
      ...ends.map((value) => amount(withoutNoise(value, size), 'stress')),
    ];
  });
  return table(
    `${id}-stresses`,
    `Stress in the axes of the layers, least and greatest by material and angle; all ${plies.length} layers one by one are in the JSON document`,
    [
      { label: 'Material' },
      { label: 'Angle', kind: 'angle' },
      { label: 'Layers' },
      ...plyAxes.flatMap((label) => [
        { label: `${label} from`, kind: 'stress' as const },
        { label: 'to', kind: 'stress' as const },
      ]),
    ],
    rows,
  );
}

/** Stresses in numbers: every face of a laminate that a reader can take in, the extremes of a thicker one. */
export function stressTables(result: LoadResult, id: string): Block[] {
  if (result.response.plies.length > mostLayers) return [extremes(result, id)];
  return [everyFace(result, id), laminateAxes(result, id)];
}
