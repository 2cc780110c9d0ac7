import type { LoadResult } from '../../../design/index.js';
import type { ShearStressDistribution } from '../../../laminate/index.js';
import { formatQuantity, type UnitSystem } from '../../../quantity/index.js';
import type { Block, Cell } from '../../blocks.js';
import { chartFigure } from '../../figures/index.js';
import { amount, heading, table, withoutNoise } from '../build.js';
import { layerBands } from './bands.js';
import { halfThickness, largest } from './words.js';

type Component = 'tauXz' | 'tauYz';
const named = [
  ['tauXz', 'τxz', 'peakXz'],
  ['tauYz', 'τyz', 'peakYz'],
] as const;

/** Where two layers meet and the stress there is largest: that is what a bond line must bear. */
function atInterface({ points }: ShearStressDistribution, component: Component) {
  const faces = points.filter((point, i) => points[i + 1] !== undefined && points[i + 1]?.ply !== point.ply);
  return faces.reduce<(typeof faces)[number] | undefined>(
    (most, point) => (most === undefined || Math.abs(point[component]) > Math.abs(most[component]) ? point : most),
    undefined,
  );
}

interface Scale {
  /** Largest stress, Pa, and height of the faces, m: what is small beside them is noise. */
  readonly size: number;
  readonly height: number;
}

function peakTable(
  shear: ShearStressDistribution,
  [Vx, Vy]: readonly [number, number],
  { size, height }: Scale,
  id: string,
): Block {
  const rows = named.map(([component, label, key], i): Cell[] => {
    const { stress, z, ply } = shear[key];
    const bond = atInterface(shear, component);
    const nothing = withoutNoise(stress, size) === 0;
    return [
      label,
      amount(i === 0 ? Vx : Vy, 'forcePerLength'),
      amount(withoutNoise(stress, size), 'stress'),
      ...(nothing ? ['–', '–'] : [amount(withoutNoise(z, height), 'length'), String(ply)]),
      ...(nothing || bond === undefined
        ? ['–', '–']
        : [amount(withoutNoise(bond[component], size), 'stress'), `${bond.ply}, ${bond.ply + 1}`]),
    ];
  });
  return table(
    `${id}-shear-peaks`,
    'Largest shear stress through the thickness, anywhere and at an interface of layers',
    [
      { label: '' },
      { label: 'V', kind: 'forcePerLength' },
      { label: 'Largest', kind: 'stress' },
      { label: 'at z', kind: 'length' },
      { label: 'in layer' },
      { label: 'Interface', kind: 'stress' },
      { label: 'of layers' },
    ],
    rows,
  );
}

/** Shear stress between the layers under the shear forces of a load case; absent without one. */
export function loadShear(result: LoadResult, id: string, units: UnitSystem): Block[] {
  const { model, interlaminarShear } = result;
  if (interlaminarShear === undefined || model.shear === undefined) return [];
  const { peakXz, peakYz, points } = interlaminarShear;
  const size = largest([peakXz.stress, peakYz.stress]);
  if (size === 0) return [];
  const height = halfThickness(result);
  const acting = named.filter(([, , key]) => withoutNoise(interlaminarShear[key].stress, size) !== 0);
  const words = acting.map(([, label, key]) => {
    const { stress, z } = interlaminarShear[key];
    const at = formatQuantity(withoutNoise(z, height), 'length', { units });
    return `${label} is largest, ${formatQuantity(stress, 'stress', { units })}, at z = ${at}.`;
  });
  return [
    heading(3, 'Shear between the layers', `${id}-shear`),
    peakTable(interlaminarShear, model.shear, { size, height }, id),
    chartFigure({
      id: `${id}-shear-profile`,
      title: `Shear stress through the thickness, load ${model.name}`,
      x: { label: 'Shear stress', kind: 'stress' },
      y: { label: 'z from the mid-plane', kind: 'length' },
      series: acting.map(([component, label]) => ({
        label,
        points: points.map((point) => ({
          x: withoutNoise(point[component], size),
          y: withoutNoise(point.z, height),
        })),
      })),
      bands: layerBands(result, height),
      units,
      summary: words.join(' '),
    }),
  ];
}
