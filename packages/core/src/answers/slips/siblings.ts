import { keyOf } from '../../working/index.js';
import type { Quantity } from '../quantities.js';
import type { Sheet, Slip, Slipped } from './slip.js';

const digits = 3;

/** Numbers of other quantities, by key. */
const of = (sheet: Sheet, keys: readonly string[]): Slipped[] =>
  keys.flatMap((key): Slipped[] => {
    const other = sheet.right(key);
    return other === undefined ? [] : [{ value: other.value, detail: key }];
  });

const pairs = (list: readonly (readonly [string, string])[]): Readonly<Record<string, string>> =>
  Object.fromEntries(
    list.flatMap(([one, other]) => [
      [one, other],
      [other, one],
    ]),
  );

const axes = pairs([
  ['sigma1', 'sigma_x'],
  ['sigma2', 'sigma_y'],
  ['tau12', 'tau_xy'],
  ['eps1', 'eps_x'],
  ['eps2', 'eps_y'],
  ['gamma12', 'gamma_xy'],
]);

const bending = pairs(
  ['Ex', 'Ey', 'Gxy', 'nuxy', 'nuyx', 'etaxyx', 'etaxyy'].map((name) => [name, `${name}b`] as const),
);

const ratios = pairs([
  ['nuxy', 'nuyx'],
  ['nuxyb', 'nuyxb'],
  ['nu12', 'nu21'],
]);

const named =
  (table: Readonly<Record<string, string>>) =>
  ({ part, symbol }: Quantity): string[] => {
    const other = table[symbol];
    return other === undefined ? [] : [keyOf(part, other)];
  };

const faces = ['top', 'middle', 'bottom'];

/** The same at another height of the ply. */
const otherFaces = ({ part, symbol }: Quantity): string[] => {
  const face = part[part.length - 1] ?? '';
  return faces.includes(face)
    ? faces.filter((name) => name !== face).map((name) => keyOf([...part.slice(0, -1), name], symbol))
    : [];
};

/** The right number of something else. */
export const siblingSlips: readonly Slip[] = [
  {
    name: 'faceOrAxes',
    digits,
    numbers: (quantity, sheet) => of(sheet, [...named(axes)(quantity), ...otherFaces(quantity)]),
  },
  {
    name: 'bendingForInPlane',
    digits,
    numbers: (quantity, sheet) => of(sheet, named(bending)(quantity)),
  },
  { name: 'poisson', digits, numbers: (quantity, sheet) => of(sheet, named(ratios)(quantity)) },
];
