import { fail } from '../../problem/index.js';
import { engineeringConstants } from '../engineering-constants.js';
import { laminate as stack } from '../stack.js';
import { stiffness } from '../stiffness.js';
import type { Laminate } from '../types.js';
import { isMirrored } from './interfaces.js';

/** O'Brien's formula at one interface of a symmetric laminate. */
export interface FlatEdgeRelease {
  /** Axial modulus of the whole laminate and, E*, of its parts held flat, weighed by thickness, Pa. */
  readonly modulus: number;
  readonly partedModulus: number;
  /** G per square of axial strain with one surface counted, J/m²: t (E - E*)/2. */
  readonly perSquare: number;
}

/**
 * O'Brien's formula as printed, G = ε² t (E - E*)/2: all parts of the laminate stay flat, one surface is counted, no heat.
 *
 * To compare with published values and to reduce tests the way a published toughness was reduced. Nothing holds the outer parts flat:
 * where they are unsymmetric among themselves `edgeDelamination` lets them bend and finds another release, and it counts both fronts.
 *
 * @param laminate a symmetric one
 * @param below number of plies below the interface, 1 to one less than there are plies; its mirror image parts with it
 * @throws not-admissible for a laminate that is not symmetric, and as `stiffness`; out-of-range where there is no interface
 * @source O'Brien 1982
 */
export function flatEdgeRelease(laminate: Laminate, below: number): FlatEdgeRelease {
  const { plies, thickness } = laminate;
  const count = plies.length;
  if (!(Number.isInteger(below) && below >= 1 && below < count)) {
    fail({
      code: 'out-of-range',
      message: `there are ${below} plies below the interface`,
      allowed: `1 to ${count - 1}`,
    });
  }
  if (!isMirrored(laminate)) {
    fail({ code: 'not-admissible', message: 'the laminate is not symmetric', allowed: 'a symmetric laminate' });
  }
  const bounds = [...new Set([0, Math.min(below, count - below), Math.max(below, count - below), count])];
  const flat = (part: Laminate): number => engineeringConstants(stiffness(part)).inPlaneRestrained.Ex;
  const parted = bounds.slice(1).reduce((sum, end, i) => {
    const part = stack(plies.slice(bounds[i], end));
    return sum + flat(part) * part.thickness;
  }, 0);
  const modulus = flat(laminate);
  return { modulus, partedModulus: parted / thickness, perSquare: (modulus * thickness - parted) / 2 };
}
