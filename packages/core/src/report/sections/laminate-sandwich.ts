import type { LaminateResult } from '../../design/index.js';
import {
  handBookTolerance,
  type Sandwich,
  thinFaceWeakCoreLimit,
  wrinklingCoefficientInDesign,
  wrinklingCoefficientInTheory,
} from '../../laminate/index.js';
import type { Block, Cell } from '../blocks.js';
import { amount, amountOr, heading, listOf, table, withoutNoise } from './build.js';

const axes = ['x', 'y'] as const;
const faces = ['tool', 'bag'] as const;

function facts({ core, d }: Sandwich): Block {
  return {
    kind: 'facts',
    items: [
      { label: 'Core', value: amount(core.thickness, 'length') },
      { label: 'Distance of the faces', value: amount(d, 'length'), remark: 'between their mid-planes' },
      {
        label: 'Core modulus Ec',
        value: amount(core.E, 'stress'),
        remark: core.modulusAssumed ? 'taken from its plane: E3 of the core is not given' : 'through the thickness',
      },
      { label: 'Core shear modulus Gc', value: amount(core.Gx, 'stress') },
      {
        label: 'Core shear strength',
        value: amountOr(core.shearStrength, 'stress', 'not known: the core gives no S'),
      },
    ],
  };
}

function wrinklingTable(sandwich: Sandwich, id: string): Block {
  const rows = faces.flatMap((face) =>
    axes.map((axis): Cell[] => {
      const { faceModulus, stress, inTheory, depth } = sandwich[face][axis];
      return [
        `${face}, ${axis}`,
        amount(faceModulus, 'modulus'),
        amount(stress, 'stress'),
        amount(inTheory, 'stress'),
        amount(depth, 'length'),
      ];
    }),
  );
  const coefficient = (value: number): string => String(Number(value.toPrecision(3)));
  return table(
    `${id}-wrinkling`,
    `Compression at which a face wrinkles, c (Ef Ec Gc)^(1/3): for design c = ${coefficient(wrinklingCoefficientInDesign)}, for perfectly flat faces ${coefficient(wrinklingCoefficientInTheory)}; depth to which the core moves`,
    [
      { label: 'Face' },
      { label: 'Ef, bending', kind: 'modulus' },
      { label: 'For design', kind: 'stress' },
      { label: 'In theory', kind: 'stress' },
      { label: 'Depth', kind: 'length' },
    ],
    rows,
  );
}

function handBookTable(sandwich: Sandwich, { stiffness: { d } }: LaminateResult, id: string): Block {
  const rows = axes.map((axis, i): Cell[] => [
    axis,
    amount(sandwich[axis].allen.D, 'bendingStiffness'),
    amount(1 / (d[i]?.[i] ?? 0), 'bendingStiffness'),
    amount(sandwich[axis].allen.S, 'forcePerLength'),
    amount(sandwich[axis].H, 'forcePerLength'),
  ]);
  return table(
    `${id}-hand-book`,
    'Bending and shear stiffness by hand book, beside those of the laminate',
    [
      { label: 'Along' },
      { label: 'D, hand book', kind: 'bendingStiffness' },
      { label: '1/d, laminate', kind: 'bendingStiffness' },
      { label: 'Gc d²/c', kind: 'forcePerLength' },
      { label: 'H, laminate', kind: 'forcePerLength' },
    ],
    rows,
  );
}

/** Whether thin faces and a weak core may be taken for granted, and what to use when they may not. */
function verdicts({ core, tool, bag, x, y }: Sandwich): string[] {
  const shown = (value: number): string => String(Number(value.toPrecision(3)));
  const thin = x.criteria.thinFaces > thinFaceWeakCoreLimit;
  const weak = axes.filter((axis) => ({ x, y })[axis].criteria.weakCore > thinFaceWeakCoreLimit);
  const where = weak.length === 2 ? 'yes' : weak.length === 0 ? 'no' : `along ${weak[0]} only`;
  const near = [x, y].every(({ difference }) => Math.abs(difference) <= handBookTolerance);
  const off = (difference: number): string => `${shown(withoutNoise(100 * difference, 100))} %`;
  const reach = Math.max(...[tool, bag].flatMap((face) => [face.x.depth, face.y.depth])) / core.thickness;
  return [
    `Deep core: ${reach <= 0.5 ? 'yes' : 'no'}; wrinkles would reach ${shown(100 * reach)} % of its thickness into it, wanted at most 50 %, so that the waves of the faces do not meet.`,
    `Thin faces: ${thin ? 'yes' : 'no'}; 3 (d/t)² is ${shown(x.criteria.thinFaces)}, wanted above ${thinFaceWeakCoreLimit}.`,
    `Weak core: ${where}; 6 Ef t d²/(Ec c³) is ${shown(x.criteria.weakCore)} along x and ${shown(y.criteria.weakCore)} along y, wanted above ${thinFaceWeakCoreLimit}.`,
    `Hand-book D: ${near ? 'yes' : 'no'}; it is ${off(x.difference)} along x and ${off(y.difference)} along y off 1/d of the laminate, wanted within ${shown(100 * handBookTolerance)} %.`,
    thin && weak.length === 2 && near
      ? 'Formulas for thin faces and a weak core may be trusted here: each assumption costs about 1 % or less.'
      : 'Do not trust formulas for thin faces and a weak core here. The D, d and H of the laminate assume neither.',
  ];
}

/** What a laminate with a core bears as a sandwich; absent without a core. */
export function laminateSandwich(result: LaminateResult, id: string): Block[] {
  const { sandwich } = result;
  if (sandwich === undefined) return [];
  const head = heading(3, 'Sandwich', `${id}-sandwich`);
  if (!sandwich.isSandwich) return [head, ...listOf([`not checked as a sandwich: ${sandwich.reason}`])];
  return [
    head,
    facts(sandwich),
    wrinklingTable(sandwich, id),
    handBookTable(sandwich, result, id),
    ...listOf(verdicts(sandwich)),
  ];
}
