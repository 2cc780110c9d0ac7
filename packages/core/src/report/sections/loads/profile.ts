import type { LoadResult } from '../../../design/index.js';
import type { Response, Vector3 } from '../../../laminate/index.js';
import { formatQuantity, type UnitSystem } from '../../../quantity/index.js';
import type { Block } from '../../blocks.js';
import { chartFigure } from '../../figures/index.js';
import { withoutNoise } from '../build.js';
import { layerBands } from './bands.js';
import { facesOf, halfThickness, largest } from './words.js';

const components = ['σ1', 'σ2', 'τ12'] as const;

const words = ({ plies }: Response, i: 0 | 1 | 2, units: UnitSystem): string => {
  const points = plies.flatMap((ply, k) => facesOf(ply).map(({ stress12 }) => ({ ply: k + 1, value: stress12[i] })));
  const most = points.reduce((a, b) => (Math.abs(b.value) > Math.abs(a.value) ? b : a));
  return `${components[i]} is largest in layer ${most.ply}, ${formatQuantity(most.value, 'stress', { units })}.`;
};

/** Stress in the axes of each layer over the thickness, with its jumps where layers meet; absent when there is no stress. */
export function stressProfile(
  result: LoadResult,
  response: Response,
  { id, title, units }: { readonly id: string; readonly title: string; readonly units: UnitSystem },
): Block[] {
  const size = largest(response.plies.flatMap((ply) => facesOf(ply).flatMap(({ stress12 }) => [...stress12])));
  if (size === 0) return [];
  const height = halfThickness(result);
  const points = response.plies.flatMap((ply) => [...facesOf(ply)]);
  const along = (i: 0 | 1 | 2) =>
    points.map(({ z, stress12 }: { z: number; stress12: Vector3 }) => ({
      x: withoutNoise(stress12[i], size),
      y: withoutNoise(z, height),
    }));
  const acting = ([0, 1, 2] as const).filter((i) => along(i).some(({ x }) => x !== 0));
  return [
    chartFigure({
      id,
      title,
      x: { label: 'Stress in the axes of the layer', kind: 'stress' },
      y: { label: 'z from the mid-plane', kind: 'length' },
      series: acting.map((i) => ({ label: components[i], points: along(i) })),
      bands: layerBands(result, height),
      units,
      summary: acting.map((i) => words(response, i, units)).join(' '),
    }),
  ];
}
