import { invertSpd3 } from '../numeric/index.js';
import { fail } from '../problem/index.js';
import type { Note, SourceKey } from '../provenance/index.js';
import type { Working } from '../working/index.js';
import { rotateCompliance } from './axes.js';
import { writeConstants } from './kernel.js';
import { packed } from './matrix3.js';
import { componentsAt } from './named.js';
import type { EngineeringConstants, Matrix3, Stiffness } from './types.js';

/** Engineering constants of a laminate under four conditions of holding; the last two equal the first two when B is zero. */
export interface LaminateConstants {
  /** Loaded in its plane and free to bend: from a of the whole inverse. What a flat strip shows in a tensile test. */
  readonly inPlane: EngineeringConstants;
  /** Bent and free to stretch: from d of the whole inverse. What a strip shows in a bending test. */
  readonly flexural: EngineeringConstants;
  /** Loaded in its plane with curvature held at zero: from A⁻¹. What it shows as a face bonded to something stiff. */
  readonly inPlaneRestrained: EngineeringConstants;
  /** Bent with the mid-plane held from stretching: from D⁻¹. */
  readonly flexuralRestrained: EngineeringConstants;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/**
 * Engineering constants of a laminate in its plane and in bending, free and restrained.
 *
 * In plane: Ex = 1/(t a11), Gxy = 1/(t a66), nuxy = -a12/a11, etaxyx = a16/a11. In bending the same from d with 12/t³ for
 * 1/t: the modulus of a homogeneous plate that bends as much.
 *
 * @param working takes the steps of the first two down, when given
 * @returns moduli in Pa; etaxyx is the shear strain γxy per strain εx under stress along x alone
 * @source Jones 1999, ch. 2 and 4; the naming of the four conditions is ours
 */
export function engineeringConstants(stiffness: Stiffness, working?: Working): LaminateConstants {
  const inPlane = 1 / stiffness.thickness;
  const flexural = 12 / stiffness.thickness ** 3;
  const stretched = constants(packed(stiffness.a), inPlane);
  const bent = constants(packed(stiffness.d), flexural);
  const h = stiffness.thickness;
  working?.step('constantsInPlane', { h, ...componentsAt('a', packed(stiffness.a)), ...stretched });
  working?.step('constantsInBending', { h, ...componentsAt('d', packed(stiffness.d)), ...inBending(bent) });
  return {
    inPlane: stretched,
    flexural: bent,
    inPlaneRestrained: constants(inverse(stiffness.A), inPlane),
    flexuralRestrained: constants(inverse(stiffness.D), flexural),
    notes: stiffness.notes,
    sources: stiffness.sources,
  };
}

/** The constants in bending by the names that the formulas have for them. */
const inBending = (constants: EngineeringConstants): Record<string, number> =>
  Object.fromEntries(Object.entries(constants).map(([name, value]) => [`${name}b`, value]));

/**
 * In-plane engineering constants along a direction of the laminate, free to bend: one point of a polar plot.
 *
 * The compliance a is turned with the axes: a' = T a Tᵀ. `Ex` is then the modulus along the direction, `Ey` that across.
 *
 * @param angle degrees from the laminate's x to the direction, positive toward y
 * @returns moduli in Pa
 * @throws not-a-number when the angle is not finite
 * @source Jones 1999, ch. 2
 */
export function offAxisConstants(stiffness: Stiffness, angle: number): EngineeringConstants {
  if (!Number.isFinite(angle)) {
    fail({ code: 'not-a-number', message: `the direction is ${angle}`, allowed: 'a finite number of degrees' });
  }
  return constants(packed(rotateCompliance(stiffness.a, angle)), 1 / stiffness.thickness);
}

function inverse(m: Matrix3): Float64Array {
  const out = new Float64Array(6);
  if (!invertSpd3(packed(m), 0, out, 0)) {
    fail({
      code: 'not-admissible',
      message: 'a stiffness is not positive definite',
      allowed: 'a stiffness as `stiffness` gives it',
    });
  }
  return out;
}

function constants(compliance: Float64Array, scale: number): EngineeringConstants {
  const out = new Float64Array(7);
  writeConstants(compliance, 0, scale, out, 0);
  if (!out.every(Number.isFinite)) {
    fail({
      code: 'not-computable',
      message: 'the engineering constants are not finite numbers',
      allowed: 'moduli whose inverse a number of 64 bits can hold',
    });
  }
  const k = (i: number): number => out[i] ?? 0;
  return { Ex: k(0), Ey: k(1), Gxy: k(2), nuxy: k(3), nuyx: k(4), etaxyx: k(5), etaxyy: k(6) };
}
