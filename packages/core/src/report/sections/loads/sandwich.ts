import type { LoadResult } from '../../../design/index.js';
import type { CoreShear, Sandwich } from '../../../laminate/index.js';
import type { Block, Cell } from '../../blocks.js';
import { amount, amountOr, heading, listOf, table, withoutNoise } from '../build.js';
import { coreLimit, passedWords, wrinklingLimit } from './limits.js';
import { largest } from './words.js';

const axes = ['x', 'y'] as const;
const faces = ['tool', 'bag'] as const;

const stresses = (sandwich: Sandwich): number[] =>
  faces.flatMap((face) => axes.map((axis) => sandwich[face][axis].faceStress ?? 0));

/** Wrinkling of each face under its own stress; absent when no face is stressed. */
function wrinklingTable(sandwich: Sandwich, id: string): Block[] {
  const size = largest(stresses(sandwich));
  if (size === 0) return [];
  const rows = faces.flatMap((face) =>
    axes.map((axis): Cell[] => {
      const { faceStress = 0, stress, ratio } = sandwich[face][axis];
      const acting = withoutNoise(faceStress, size);
      return [
        `${face}, ${axis}`,
        amount(acting, 'stress'),
        amount(stress, 'stress'),
        acting < 0 ? amountOr(ratio, 'number', '–') : acting > 0 ? 'in tension' : 'no stress',
      ];
    }),
  );
  return [
    table(
      `${id}-wrinkling`,
      'Wrinkling: mean stress of a face, the compression at which it wrinkles (for design), and their ratio',
      [
        { label: 'Face' },
        { label: 'Stress', kind: 'stress' },
        { label: 'Wrinkles at', kind: 'stress' },
        { label: 'Ratio' },
      ],
      rows,
    ),
  ];
}

function coreFacts({ stress, nominal, ratio }: CoreShear, strength: number | undefined): Block {
  return {
    kind: 'facts',
    items: [
      {
        label: 'Shear stress of the core',
        value: amount(stress, 'stress'),
        remark: 'largest, by equilibrium, along x and y together',
      },
      { label: 'by hand book, V/d', value: amount(nominal, 'stress') },
      { label: 'Shear strength of the core', value: amountOr(strength, 'stress', 'not known: the core gives no S') },
      { label: 'Strength over stress', value: amountOr(ratio, 'number', 'not judged without the strength') },
    ],
  };
}

/** Wrinkling and core shear under a load case on a sandwich; absent on any other laminate and when neither acts. */
export function loadSandwich(result: LoadResult, id: string): Block[] {
  const { sandwich } = result;
  if (sandwich === undefined) return [];
  const { core, coreShear } = sandwich;
  const passed = [wrinklingLimit(result), coreLimit(result)].filter((one) => one !== undefined && one.ratio < 1);
  const blocks = [
    ...listOf(passed.flatMap((one) => (one === undefined ? [] : [passedWords(one)]))),
    ...wrinklingTable(sandwich, id),
    ...(coreShear === undefined || coreShear.stress === 0 ? [] : [coreFacts(coreShear, core.shearStrength)]),
  ];
  return blocks.length === 0 ? [] : [heading(3, 'Sandwich under this load', `${id}-sandwich`), ...blocks];
}
