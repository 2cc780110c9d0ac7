import { kinds, parseUnit } from '../../quantity/index.js';
import type { Quantity } from '../quantities.js';
import type { Reading, Slip, Slipped } from './slip.js';

/** Two digits are enough where the right digits stand in the answer. */
const digits = 2;

/** Shear of the plane by its symbol: `tau12`, `gamma0_xy`, `Qbar16`, `N_Txy`. */
const isShear = ({ symbol }: Quantity): boolean => /^(?:gamma|tau|etaxy)|_T?xy$|(?:16|26|61|62)$/.test(symbol);

/** Strains that are twice the tensor's. */
const isEngineeringShear = ({ symbol }: Quantity): boolean => /^gamma|^(?:alpha|beta|kappa)_xy$/.test(symbol);

/** Places in a matrix that a tensor's shear strain doubles or halves. */
const isShearColumn = ({ symbol }: Quantity): boolean => /^(?:Qbar|A|B|D|a|b|d)(?:16|26|61|62|66)$/.test(symbol);

/** Changes its sign with the direction in which z is counted. */
const isOddInZ = ({ symbol, kind }: Quantity): boolean =>
  kind === 'curvature' || kind === 'couplingStiffness' || kind === 'couplingCompliance' || /^M_\w+$/.test(symbol);

/** Heights are round numbers: one digit is enough where no other can be meant. */
export const isHeight = ({ symbol }: Quantity): boolean => symbol === 'z' || symbol === 'z_k';

/** The number is right in another unit of its kind. */
const otherUnits = ({ value }: Quantity, { kind, unit }: Reading): Slipped[] => {
  const { metric, us, alsoAccepted, si } = kinds[kind];
  return [...new Set([metric, ...alsoAccepted, si, us])].flatMap((name): Slipped[] => {
    const other = parseUnit(name);
    if (other === undefined) return [];
    const size = kind === 'angle' && other.dimension !== '' ? other.factor * (180 / Math.PI) : other.factor;
    return [{ value: (value * unit) / size, detail: name }];
  });
};

const powers = [3, -3, 6, -6, 9, -9, 12, -12, 1, -1, 2, -2];

/** Slips that leave the digits of the right number, or half or twice it. */
export const readingSlips: readonly Slip[] = [
  { name: 'unit', family: 'ten', digits, numbers: (of, _, reading) => otherUnits(of, reading) },
  {
    name: 'powerOfTen',
    family: 'ten',
    digits,
    numbers: ({ value }) => powers.map((n) => ({ value: value * 10 ** n, detail: String(n) })),
  },
  {
    name: 'shearSign',
    family: 'sign',
    digits,
    numbers: (of) => (isShear(of) ? [{ value: -of.value }] : []),
  },
  {
    name: 'tensorShear',
    digits,
    numbers: (of) =>
      isEngineeringShear(of) || isShearColumn(of) ? [{ value: of.value / 2 }, { value: of.value * 2 }] : [],
  },
  { name: 'otherSide', family: 'order', digits, numbers: (of) => (isOddInZ(of) ? [{ value: -of.value }] : []) },
  {
    name: 'otherSide',
    family: 'order',
    digits: 1,
    numbers: (of) => (isHeight(of) ? [{ value: -of.value }] : []),
  },
];

/** The size is right and the sign is not, for no reason known here. */
export const plainSign: Slip = {
  name: 'sign',
  family: 'sign',
  digits,
  numbers: ({ value }) => [{ value: -value }],
};
