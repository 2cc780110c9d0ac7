import type { LoadResult } from '../../../design/index.js';
import { formatQuantity, type UnitSystem } from '../../../quantity/index.js';
import type { Block, Cell } from '../../blocks.js';
import { amount, listOf, table, withoutNoise } from '../build.js';
import { halfThickness, largest } from './words.js';

function moistureWords(moisture: number | readonly number[], units: UnitSystem): string {
  const one = (value: number): string => formatQuantity(value, 'fraction', { units });
  const [first = 0, ...rest] = typeof moisture === 'number' ? [moisture] : moisture;
  if (rest.every((value) => value === first))
    return `moisture taken up, mass of water per mass of layer: ${one(first)}`;
  return `moisture taken up by each layer from the tool side: ${[first, ...rest].map(one).join(', ')}`;
}

/** What acts on the laminate besides forces and deformations, and the remark of the design. */
export function loadFacts({ model }: LoadResult, units: UnitSystem): Block[] {
  const { note, temperatureChange = 0, temperatureGradient = 0, moisture = 0 } = model;
  const wet = typeof moisture === 'number' ? moisture !== 0 : moisture.some((value) => value !== 0);
  return listOf([
    ...(note === undefined ? [] : [note]),
    ...(temperatureChange === 0
      ? []
      : [
          `temperature change from the stress-free state: ${formatQuantity(temperatureChange, 'temperatureChange', { units })}`,
        ]),
    ...(temperatureGradient === 0
      ? []
      : [
          `temperature rises toward the bag side by ${formatQuantity(temperatureGradient, 'temperatureGradient', { units })}, zero at the mid-plane`,
        ]),
    ...(wet ? [moistureWords(moisture, units)] : []),
  ]);
}

/** Forces, moments, mid-plane strain and curvature, whichever of them were given. */
export function responseTable(result: LoadResult, id: string): Block {
  const { response, model } = result;
  const { N, M, strain, curvature } = response;
  // Forces compare with moments, and strain with curvature, by the thickness: what is rounding of the one shows as zero in the other.
  const t = 2 * halfThickness(result);
  const force = Math.max(largest(N), largest(M) / t);
  const deformation = Math.max(largest(strain), largest(curvature) * t);
  const rows = ['x', 'y', 'xy'].map((axis, i): Cell[] => [
    axis,
    amount(withoutNoise(N[i] ?? 0, force), 'forcePerLength'),
    amount(withoutNoise(M[i] ?? 0, force * t), 'momentPerLength'),
    amount(withoutNoise(strain[i] ?? 0, deformation), 'strain'),
    amount(withoutNoise(curvature[i] ?? 0, deformation / t), 'curvature'),
  ]);
  const given = [...(model.strain ?? []), ...(model.curvature ?? [])].some((value) => value !== null);
  return table(
    `${id}-response`,
    `Loads, mid-plane strain and curvature${given ? '; N and M are reactions where a deformation is given' : ''}`,
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
