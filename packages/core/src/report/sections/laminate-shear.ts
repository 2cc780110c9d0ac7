import type { LaminateResult } from '../../design/index.js';
import type { Block, Cell } from '../blocks.js';
import { amount, heading, listOf, table, withoutNoise } from './build.js';

/** Factors that sandwiches usually have. */
const usual = { least: 0.005, most: 0.03 };

const whyNotFiveSixths = (factor: number): string =>
  `the core alone takes the shear, while Σ G t counts the faces: the factor of a sandwich is never the 5/6 of one homogeneous layer${
    factor <= usual.most ? ` but usually ${usual.least} to ${usual.most}` : ''
  }`;

/** Shear stiffness through the thickness: H, and what is left of the plain sum of the layers. */
export function laminateShear({ transverseShear, sandwich }: LaminateResult, id: string): Block[] {
  const { H, kx, ky, sums } = transverseShear;
  const size = Math.max(H[0][0], H[1][1]);
  const row = (label: string, i: 0 | 1, factor: number): Cell[] => [
    label,
    ...H[i].map((value) => amount(withoutNoise(value, size), 'forcePerLength')),
    amount(sums[i], 'forcePerLength'),
    amount(factor, 'number'),
  ];
  return [
    heading(3, 'Shear through the thickness', `${id}-shear`),
    table(
      `${id}-shear-stiffness`,
      'H, shear stiffness by equal energy: V = H γ; the factor is H over the plain sum of G t',
      [
        { label: '' },
        { label: 'γxz', kind: 'forcePerLength' },
        { label: 'γyz', kind: 'forcePerLength' },
        { label: 'Σ G t', kind: 'forcePerLength' },
        { label: 'Factor', kind: 'number' },
      ],
      [row('Vx', 0, kx), row('Vy', 1, ky)],
    ),
    ...listOf(sandwich?.isSandwich === true ? [whyNotFiveSixths(Math.max(kx, ky))] : []),
  ];
}
