import { type Laminate, laminate } from '../laminate/index.js';
import { corePly, type Ply, ply } from '../material/index.js';
import { SelvageError } from '../problem/index.js';
import { type KindName, parseQuantity } from '../quantity/index.js';

/** A quantity of an example: a unit in a string, or a plain number. */
export type Given = string | number;
export type GivenVector = readonly [Given, Given, Given];

/** Ply constants as an example gives them. */
export interface PlyInputs {
  readonly E1: Given;
  readonly E2: Given;
  readonly G12: Given;
  readonly nu12: number;
  readonly alpha1?: Given;
  readonly alpha2?: Given;
  readonly beta1?: number;
  readonly beta2?: number;
}

/** A stack of equal plies as an example gives it, first ply at z = -h/2. */
export interface StackInputs {
  readonly ply: PlyInputs;
  /** Degrees. */
  readonly angles: readonly number[];
  readonly plyThickness: Given;
}

/** The SI number of an input. @throws the problem of `parseQuantity` when it is no such quantity */
export function si(input: Given, kind: KindName): number {
  const read = parseQuantity(input, kind);
  if (!read.ok) throw new SelvageError([read.problem]);
  return read.value;
}

export const siVector = ([x, y, xy]: GivenVector, kind: KindName): [number, number, number] => [
  si(x, kind),
  si(y, kind),
  si(xy, kind),
];

/** A ply of an example at an angle (degrees), thickness in m. */
export function plyAt(given: PlyInputs, angle: number, thickness: number): Ply {
  const { alpha1, alpha2, beta1, beta2 } = given;
  return ply({
    E1: si(given.E1, 'modulus'),
    E2: si(given.E2, 'modulus'),
    G12: si(given.G12, 'modulus'),
    nu12: given.nu12,
    angle,
    thickness,
    ...(alpha1 === undefined || alpha2 === undefined
      ? {}
      : { expansion: { alpha1: si(alpha1, 'expansion'), alpha2: si(alpha2, 'expansion') } }),
    ...(beta1 === undefined || beta2 === undefined ? {} : { moistureExpansion: { beta1, beta2 } }),
  });
}

/** One ply of 1 m as a laminate: its forces per length are stresses, its A is a Qbar and its a an Sbar. */
export const unitPly = (given: PlyInputs, angle = 0): Laminate => laminate([plyAt(given, angle, 1)]);

/** The laminate of an example. */
export function stackOf({ ply: given, angles, plyThickness }: StackInputs): Laminate {
  const thickness = si(plyThickness, 'length');
  return laminate(angles.map((angle) => plyAt(given, angle, thickness)));
}

/** An isotropic layer: E in Pa, thickness in m, alpha in 1/K; mass and shear through the thickness do not enter. */
export const isotropicPly = (E: number, nu: number, thickness: number, alpha = 0): Ply =>
  corePly({ E, nu, thickness, G: E, density: 1, expansion: { alpha1: alpha, alpha2: alpha } });
