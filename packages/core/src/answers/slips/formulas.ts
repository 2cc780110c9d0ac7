import type { Change } from '../propagate.js';
import type { Quantity } from '../quantities.js';
import { isHeight } from './readings.js';
import type { FormulaWay, Sheet, Slip, Slipped } from './slip.js';

const digits = 3;

const six = ['11', '12', '16', '22', '26', '66'];
const each = (names: readonly string[], expression: (name: string) => string): Record<string, string> =>
  Object.fromEntries(names.map((name) => [name, expression(name)]));
const symbols = (matrix: string, places = six): string[] => places.map((ij) => matrix + ij);

/** Q turned with the rotation of stress on both sides, as if the third strain were the tensor's: 2 Q66 where 4 Q66 belongs. */
const turnedAsStress = (sixteen: string, twentySix: string): Record<string, string> => ({
  Qbar11: 'Q11 cos(theta)^4 + 2*(Q12 + Q66) sin(theta)^2 cos(theta)^2 + Q22 sin(theta)^4',
  Qbar12: '(Q11 + Q22 - 2 Q66) sin(theta)^2 cos(theta)^2 + Q12*(sin(theta)^4 + cos(theta)^4)',
  Qbar16: sixteen,
  Qbar22: 'Q11 sin(theta)^4 + 2*(Q12 + Q66) sin(theta)^2 cos(theta)^2 + Q22 cos(theta)^4',
  Qbar26: twentySix,
  Qbar66: '2*(Q11 + Q22 - 2 Q12) sin(theta)^2 cos(theta)^2 + Q66*(cos(theta)^2 - sin(theta)^2)^2',
});
const sixteen = '(Q11 - Q12 - Q66) sin(theta) cos(theta)^3 + (Q12 - Q22 + Q66) sin(theta)^3 cos(theta)';
const twentySix = '(Q11 - Q12 - Q66) sin(theta)^3 cos(theta) + (Q12 - Q22 + Q66) sin(theta) cos(theta)^3';

/** Thermal shear and shear of swelling without their factor 2. */
const tensorExpansion: Change = {
  formulas: {
    turnedExpansion: { alpha_xy: '(alpha1 - alpha2) sin(theta) cos(theta)' },
    turnedSwelling: { beta_xy: '(beta1 - beta2) sin(theta) cos(theta)' },
  },
};

/** The strain turned to the axes of the ply with the matrix of stress, or by the right formula from the tensor's shear strain. */
const tensorStrain: readonly Change[] = [
  {
    formulas: {
      strainInPlyAxes: {
        eps1: 'eps_x cos(theta)^2 + eps_y sin(theta)^2 + 2 gamma_xy sin(theta) cos(theta)',
        eps2: 'eps_x sin(theta)^2 + eps_y cos(theta)^2 - 2 gamma_xy sin(theta) cos(theta)',
        gamma12: '(eps_y - eps_x) sin(theta) cos(theta) + gamma_xy*(cos(theta)^2 - sin(theta)^2)',
      },
    },
  },
  {
    formulas: {
      strainInPlyAxes: {
        eps1: 'eps_x cos(theta)^2 + eps_y sin(theta)^2 + gamma_xy sin(theta) cos(theta) / 2',
        eps2: 'eps_x sin(theta)^2 + eps_y cos(theta)^2 - gamma_xy sin(theta) cos(theta) / 2',
        gamma12: '2*(eps_y - eps_x) sin(theta) cos(theta) + gamma_xy*(cos(theta)^2 - sin(theta)^2) / 2',
      },
    },
  },
  // The tensor's shear strain in the axes of the ply, times G12.
  {
    formulas: { stressInPlyAxes: { tau12: 'Q66 gamma12 / 2' }, stressOfMechanicalStrain: { tau12: 'Q66 gamma12 / 2' } },
  },
];

/** The strain in the axes of the ply, and the stress back in those of the laminate, each by the angle with the other sign. */
const strainBack = {
  strainInPlyAxes: {
    eps1: 'eps_x cos(theta)^2 + eps_y sin(theta)^2 - gamma_xy sin(theta) cos(theta)',
    eps2: 'eps_x sin(theta)^2 + eps_y cos(theta)^2 + gamma_xy sin(theta) cos(theta)',
    gamma12: '2*(eps_x - eps_y) sin(theta) cos(theta) + gamma_xy*(cos(theta)^2 - sin(theta)^2)',
  },
};
const stressBack = {
  stressInLaminateAxes: {
    sigma_x: 'sigma1 cos(theta)^2 + sigma2 sin(theta)^2 + 2 tau12 sin(theta) cos(theta)',
    sigma_y: 'sigma1 sin(theta)^2 + sigma2 cos(theta)^2 - 2 tau12 sin(theta) cos(theta)',
    tau_xy: '(sigma2 - sigma1) sin(theta) cos(theta) + tau12*(cos(theta)^2 - sin(theta)^2)',
  },
};
const expansionBack = {
  turnedExpansion: { alpha_xy: '2*(alpha2 - alpha1) sin(theta) cos(theta)' },
  turnedSwelling: { beta_xy: '2*(beta2 - beta1) sin(theta) cos(theta)' },
};
const stiffnessBack = {
  turnedStiffness: {
    Qbar16: '-U2 sin(2 theta) / 2 - U3 sin(4 theta)',
    Qbar26: 'U3 sin(4 theta) - U2 sin(2 theta) / 2',
  },
};

const ways = (changes: readonly Change[]): ((of: Quantity, sheet: Sheet) => Slipped[]) => {
  const known = changes.map((change): FormulaWay => ({ change }));
  return (of, sheet) =>
    known.flatMap((way): Slipped[] => {
      const value = sheet.under(way)(of);
      return value === undefined ? [] : [{ value }];
    });
};

const fromToolFace = ways([{ inputs: { z_k: 'z_k + h / 2', z: 'z + h / 2' } }]);

/** Slips that no model has: a formula, an input or a sum taken otherwise, and what follows from it. */
export const formulaSlips: readonly Slip[] = [
  {
    name: 'tensorShear',
    digits,
    numbers: ways([
      ...tensorStrain,
      tensorExpansion,
      { formulas: { turnedStiffness: turnedAsStress(sixteen, twentySix) } },
      { formulas: { turnedStiffness: turnedAsStress(`2*(${sixteen})`, `2*(${twentySix})`) } },
    ]),
  },
  { name: 'halfStack', digits, numbers: ways([{ counts: (row, rows) => row < Math.ceil(rows / 2) }]) },
  { name: 'fromToolFace', digits, numbers: fromToolFace },
  { name: 'fromToolFace', digits: 1, numbers: (of, sheet) => (isHeight(of) ? fromToolFace(of, sheet) : []) },
  {
    name: 'turnedBack',
    family: 'sign',
    digits,
    numbers: ways(
      [strainBack, stressBack, { ...strainBack, ...stressBack }, stiffnessBack, expansionBack].map((formulas) => ({
        formulas,
      })),
    ),
  },
  {
    name: 'heightSubtracted',
    family: 'order',
    digits,
    numbers: ways([
      {
        formulas: {
          strainAtHeight: {
            eps_x: 'eps0_x - z kappa_x',
            eps_y: 'eps0_y - z kappa_y',
            gamma_xy: 'gamma0_xy - z kappa_xy',
          },
        },
      },
    ]),
  },
  { name: 'poisson', digits, numbers: ways([{ formulas: { reducedStiffness: { nu21: 'nu12 E1 / E2' } } }]) },
  {
    name: 'ownInertia',
    digits,
    numbers: ways([{ formulas: { stackSums: each(symbols('D'), (D) => `${D.replace('D', 'Qbar')} t_k z_k^2`) } }]),
  },
  {
    name: 'couplingIgnored',
    digits,
    numbers: ways([{ formulas: { stackSums: each(symbols('B'), () => '0') } }]),
  },
  {
    name: 'singleInverse',
    digits,
    numbers: ways([
      {
        formulas: {
          inverse: each(
            [...symbols('a', ['11', '22', '66']), ...symbols('d', ['11', '22', '66'])],
            (symbol) => `1 / ${symbol.toUpperCase()}`,
          ),
        },
      },
    ]),
  },
  {
    name: 'heatForgotten',
    digits,
    numbers: ways([
      {
        formulas: {
          stressOfMechanicalStrain: { sigma1: 'Q11 eps1 + Q12 eps2', sigma2: 'Q12 eps1 + Q22 eps2' },
        },
      },
    ]),
  },
];
