import { laminate, plateDeflection } from '../laminate/index.js';
import { ply } from '../material/index.js';
import { type ModulusRatios, unitStack } from './ratio-inputs.js';
import type { ComputedValues } from './types.js';

interface PlateDeflectionInputs {
  readonly ply: ModulusRatios;
  readonly stack: string;
  /** b/a. */
  readonly aspect: number;
  /** a/h. */
  readonly slendernesses: readonly number[];
  /** Pressure p: half a sine wave each way, or even. */
  readonly load: 'sine' | 'uniform';
}

/**
 * Deflection at the centre of a simply supported cross-ply plate by first-order theory, for each slenderness: `w` is
 * 100 E2 h^3 w/(p a^4), `wStar` pi^4 Q w h^3/(12 p a^4) with Q = 4 G12 + (E1 + E2 (1 + 2 nu23))/(1 - nu12 nu21).
 */
export function crossPlyPlateDeflection(inputs: PlateDeflectionInputs & { nu23?: number }): ComputedValues {
  const { ply: material, aspect, slendernesses, load: shape, nu23 = 0 } = inputs;
  const { E1, E2, G12, nu12 } = material;
  const stack = unitStack(material, inputs.stack);
  const Q = 4 * G12 + (E1 + E2 * (1 + 2 * nu23)) / (1 - (nu12 ** 2 * E2) / E1);
  return Object.fromEntries(
    slendernesses.flatMap((a) => {
      const scaled = plateDeflection(stack, { a, b: aspect * a }, { pressure: 1, shape }).withShear / a ** 4;
      return [
        [`w${a}`, 100 * E2 * scaled],
        [`wStar${a}`, (Math.PI ** 4 * Q * scaled) / 12],
      ];
    }),
  );
}

interface OrthotropicPlate {
  /** Three-dimensional stiffness over C11. */
  readonly C12: number;
  readonly C13: number;
  readonly C22: number;
  readonly C23: number;
  readonly C33: number;
  readonly C44: number;
  readonly C55: number;
  readonly C66: number;
}

/** Constants of the ply over C11; stress through the thickness is nothing in a plate. */
export function moduliOf(given: OrthotropicPlate): ModulusRatios {
  const { C12, C13, C22, C23, C33, C44: G23, C55: G13, C66: G12 } = given;
  const [Q11, Q12, Q22] = [1 - C13 ** 2 / C33, C12 - (C13 * C23) / C33, C22 - C23 ** 2 / C33];
  return { E1: Q11 - Q12 ** 2 / Q22, E2: Q22 - Q12 ** 2 / Q11, nu12: Q12 / Q22, G12, G13, G23 };
}

/** Deflection w C11/(h p) at the centre of a single orthotropic layer under even pressure, by first-order theory. */
export function orthotropicPlateDeflection(inputs: {
  stiffness: OrthotropicPlate;
  aspect: number;
  slenderness: number;
}): ComputedValues {
  const stack = laminate([ply({ ...moduliOf(inputs.stiffness), thickness: 1 })]);
  const a = inputs.slenderness;
  const { withShear } = plateDeflection(stack, { a, b: inputs.aspect * a }, { pressure: 1, shape: 'uniform' });
  return { w: withShear };
}
