import { type InPlaneConstants, reducedStiffness } from '../material/index.js';
import { sinCosDegrees } from '../numeric/index.js';

/**
 * Doubles per row of a table of ply stress: the matrix from strain in laminate axes to stress in ply axes (8), the stress in ply axes that
 * hinders a heating of 1 K (2, its shear is zero), and the same in laminate axes (3). Pa and Pa/K.
 */
export const STRESS_ROW = 13;

/** A material as far as the stress of its plies goes. */
export interface StressMaterial extends InPlaneConstants {
  readonly expansion?: { readonly alpha1: number; readonly alpha2: number };
}

/**
 * Writes the rows of one material, one for each angle, of a table of ply stress: σ12 = Q T ε, T the rotation of strain into ply axes.
 *
 * σ1 = (Q11 c² + Q12 s²) εx + (Q11 s² + Q12 c²) εy + (Q11 - Q12) cs γxy, σ2 likewise, τ12 = 2 Q66 cs (εy - εx) + Q66 (c² - s²) γxy.
 *
 * @param material moduli in Pa; without expansion the thermal part is zero
 * @param angles degrees from x to the fibre
 * @source Jones 1999, ch. 2.6
 */
export function writeStressRows(
  material: StressMaterial,
  angles: readonly number[],
  table: Float64Array,
  from: number,
): void {
  const [Q11, Q12, Q22, Q66] = reducedStiffness(material);
  const { alpha1 = 0, alpha2 = 0 } = material.expansion ?? {};
  const heat1 = Q11 * alpha1 + Q12 * alpha2;
  const heat2 = Q12 * alpha1 + Q22 * alpha2;
  for (let i = 0; i < angles.length; i++) {
    const at = from + i * STRESS_ROW;
    const { sin: s, cos: c } = sinCosDegrees(angles[i]!);
    const cc = c * c;
    const ss = s * s;
    const cs = c * s;
    table[at] = Q11 * cc + Q12 * ss;
    table[at + 1] = Q11 * ss + Q12 * cc;
    table[at + 2] = (Q11 - Q12) * cs;
    table[at + 3] = Q12 * cc + Q22 * ss;
    table[at + 4] = Q12 * ss + Q22 * cc;
    table[at + 5] = (Q12 - Q22) * cs;
    table[at + 6] = 2 * Q66 * cs;
    table[at + 7] = Q66 * (c - s) * (c + s);
    table[at + 8] = heat1;
    table[at + 9] = heat2;
    table[at + 10] = cc * heat1 + ss * heat2;
    table[at + 11] = ss * heat1 + cc * heat2;
    table[at + 12] = cs * (heat1 - heat2);
  }
}

/** σ1 in ply axes of a strain x, y, xy, Pa. */
export const sigma1 = (table: Float64Array, at: number, x: number, y: number, xy: number): number =>
  table[at]! * x + table[at + 1]! * y + table[at + 2]! * xy;

/** σ2, see {@link sigma1}. */
export const sigma2 = (table: Float64Array, at: number, x: number, y: number, xy: number): number =>
  table[at + 3]! * x + table[at + 4]! * y + table[at + 5]! * xy;

/** τ12, see {@link sigma1}. */
export const tau12 = (table: Float64Array, at: number, x: number, y: number, xy: number): number =>
  table[at + 6]! * (y - x) + table[at + 7]! * xy;
