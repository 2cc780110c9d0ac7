import { laminate, parseOrientationCode, plateVibration, stiffness } from '../../laminate/index.js';
import { ply } from '../../material/index.js';
import { type crossPlyPlateDeflection, moduliOf, type orthotropicPlateDeflection } from '../deflection-kinds.js';
import { isotropicPly } from '../inputs.js';
import {
  type crossPlyPlate,
  panel,
  type plateBucklingByAspect,
  type plateFrequencies,
  plateModes,
  plyOfRatios,
} from '../plate-kinds.js';
import { isotropicEntry, ratioEntry } from './materials.js';
import { at, type DesignParts, digits, type Entry, type Held, inUnit, type NoDesign, nameOf } from './parts.js';

const scaleIsOurs =
  'The size: moduli are multiples of 1 GPa, plies are 1 mm thick, sides are multiples of the thickness.';
const modulus = 1e9;
const thickness = 1e-3;
const pressure = 1e3;

const millimetres = (metres: number): string => inUnit(metres, 'mm');

const evenOnly: NoDesign = {
  why: 'a panel of a design file bends under even pressure, not under half a sine wave of it',
  instead:
    '`selvage examples plate-deflection-uniform --design` for even pressure; `plateDeflection` of the library takes both',
};

export const plateDeflectionDesign = (
  inputs: Parameters<typeof crossPlyPlateDeflection>[0],
): DesignParts | NoDesign => {
  const { ply: given, stack, aspect, slendernesses, load } = inputs;
  if (load !== 'uniform') return evenOnly;
  const h = parseOrientationCode(stack).length * thickness;
  const plate = (slenderness: number): Entry => ({
    material: 'ply',
    stack,
    panel: {
      length: millimetres(slenderness * h),
      width: millimetres(aspect * slenderness * h),
      pressure: inUnit(pressure, 'kPa'),
    },
  });
  const scaled = (slenderness: number): Held =>
    at(
      `laminates.slender${nameOf(slenderness)}.panel.deflection`,
      (100 * given.E2 * modulus * h ** 3) / (pressure * (slenderness * h) ** 4),
    );
  return {
    ours: [scaleIsOurs],
    materials: { ply: ratioEntry(given, millimetres(thickness)) },
    laminates: Object.fromEntries(slendernesses.map((a) => [`slender${nameOf(a)}`, plate(a)])),
    held: Object.fromEntries(slendernesses.map((a) => [`w${a}`, scaled(a)])),
  };
};

export const orthotropicPlateDesign = (inputs: Parameters<typeof orthotropicPlateDeflection>[0]): DesignParts => {
  const { aspect, slenderness } = inputs;
  return {
    ours: [
      scaleIsOurs,
      'The constants of the ply: they follow from the stiffness C of the source, C11 being 1 GPa, with no stress through the thickness.',
    ],
    materials: { ply: ratioEntry(moduliOf(inputs.stiffness), millimetres(thickness)) },
    laminates: {
      plate: {
        material: 'ply',
        stack: '[0]',
        panel: {
          length: millimetres(slenderness * thickness),
          width: millimetres(aspect * slenderness * thickness),
          pressure: inUnit(pressure, 'kPa'),
        },
      },
    },
    held: { w: at('laminates.plate.panel.deflection', modulus / (thickness * pressure)) },
  };
};

export const plateBucklingDesign = ({ aspects }: Parameters<typeof plateBucklingByAspect>[0]): DesignParts => {
  const { E, nu, thickness: t, b } = panel;
  const D = stiffness(laminate([isotropicPly(E, nu, t)])).D[0]?.[0] ?? Number.NaN;
  const name = (aspect: number): string => `aspect${nameOf(aspect)}`;
  const plate = (aspect: number): Entry => ({
    material: 'sheet',
    stack: '[0]',
    panel: { length: millimetres(aspect * b), width: millimetres(b), compression: ['1 N/mm', '0 N/mm'] },
  });
  return {
    ours: ['Material and size: the buckling coefficient is that of isotropic plates of any material and size.'],
    materials: { sheet: isotropicEntry(E, nu, millimetres(t)) },
    laminates: Object.fromEntries(aspects.map((aspect) => [name(aspect), plate(aspect)])),
    held: Object.fromEntries(
      aspects.map((aspect) => [
        `k${aspect}`,
        at(`laminates.${name(aspect)}.panel.buckling.thin.Nx`, -(b * b) / (Math.PI ** 2 * D)),
      ]),
    ),
  };
};

/** So thin a plate that the inertia of normals that turn, which the source leaves out, is not felt. */
const film = { thickness: 1e-6, side: 1 } as const;

export const plateFrequenciesDesign = (inputs: Parameters<typeof plateFrequencies>[0]): DesignParts => {
  const { density, ...constants } = plyOfRatios(inputs);
  const { thickness: t, side } = film;
  const stack = laminate([ply({ ...constants, density, thickness: t })]);
  const D22 = stiffness(stack).D[1]?.[1] ?? Number.NaN;
  const { modes } = plateVibration(stack, { a: side, b: side }, { modes: plateModes });
  const factor = (2 * Math.PI * side ** 2 * Math.sqrt((density * t) / D22)) / Math.PI ** 2;
  const { E1, E2, G12, nu12 } = constants;
  return {
    ours: [
      'Constants of the ply: only the two ratios of the source count, D11/D22 and (D12 + 2 D66)/D22.',
      'The size: so thin that the inertia of normals that turn, which the source leaves out, is not felt.',
    ],
    materials: {
      ply: {
        kind: 'ply',
        E1: inUnit(E1, 'GPa'),
        E2: inUnit(E2, 'GPa'),
        G12: inUnit(G12, 'GPa'),
        nu12,
        thickness: millimetres(t),
        density: `${density} kg/m^3`,
        basis: 'derived',
      },
    },
    laminates: {
      plate: {
        material: 'ply',
        stack: '[0]',
        panel: { length: millimetres(side), width: millimetres(side), modes: plateModes },
      },
    },
    held: Object.fromEntries(
      modes.map(({ m, n }, i) => [`k${m}${n}`, at(`laminates.plate.panel.modes.${i}.frequencyThin`, factor)]),
    ),
  };
};

export const crossPlyPlateDesign = (inputs: Parameters<typeof crossPlyPlate>[0]): DesignParts => {
  const { stiffnessRatio: E1, G12, G13, G23, nu12, bucklingSlenderness, vibrationSlenderness } = inputs;
  const density = 1000;
  const h = 4 * thickness;
  const plate = (slenderness: number, more: Entry): Entry => ({
    material: 'ply',
    stack: '[0/90]s',
    panel: { length: millimetres(slenderness * h), width: millimetres(slenderness * h), ...more },
  });
  const N = (bucklingSlenderness * h) ** 2 / (modulus * h ** 3);
  const omega = 2 * Math.PI * vibrationSlenderness ** 2 * h * Math.sqrt(density / modulus);
  return {
    ours: [
      scaleIsOurs,
      `The shear stiffness through the thickness: a design computes it; the source takes ${digits(inputs.shearFactor)} of the sum of G t, hence its values with shear are not here.`,
    ],
    materials: {
      ply: {
        ...ratioEntry({ E1, E2: 1, G12, G13, G23, nu12 }, millimetres(thickness)),
        density: `${density} kg/m^3`,
      },
    },
    laminates: {
      pressed: plate(bucklingSlenderness, { compression: ['1 N/mm', '0 N/mm'] }),
      vibrating: plate(vibrationSlenderness, {}),
    },
    held: {
      NThin: at('laminates.pressed.panel.buckling.thin.Nx', -N),
      omegaThin: at('laminates.vibrating.panel.modes.0.frequencyThin', omega),
    },
  };
};
