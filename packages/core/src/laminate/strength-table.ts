import type { InPlaneConstants, Ply } from '../material/index.js';
import { choice } from '../problem/index.js';
import { checkFinite } from './check-finite.js';
import type { StrengthTable } from './kernel-layout.js';
import { STRESS_ROW, writeStressRows } from './kernel-ply-stress.js';
import { type Criterion, failureCriteria, type StrengthOptions } from './strength/criterion.js';
import { layOf } from './strength/lay.js';
import { type StrengthConstants, strengthConstants } from './strength/strength-constants.js';

/** A material of {@link makeStrengthTable}. */
export type StrengthMaterial = InPlaneConstants & Partial<Pick<Ply, 'strengths' | 'expansion'>>;

/**
 * Table of ply stress and strength constants for a batch: one row for every material at every angle, in the order of `makeQbarTable`.
 *
 * Each ply is judged in the axes it is laid in. That is the ratio of `failure` for unidirectional plies and cloth; a mat (isotropic in its
 * plane) `failure` judges in the weakest of all directions, and it may have a lower ratio there. By Puck, cloth and mat count as unbreakable.
 *
 * @param materials moduli and strengths, Pa; without strengths a material counts as unbreakable; all need expansion for heat to act
 * @param angles degrees from x to the fibre
 * @param criterion one of `failureCriteria`
 * @param options the criterion's choices
 * @returns the `table` of a `BatchStrength`
 * @throws as `strengthConstants`; not-a-choice for an unknown criterion; not-a-number for moduli, expansions or angles that are not finite
 */
export function makeStrengthTable(
  materials: readonly StrengthMaterial[],
  angles: readonly number[],
  criterion: Criterion,
  options: StrengthOptions = {},
): StrengthTable {
  choice('criterion', criterion, failureCriteria);
  checkFinite('angles', angles);
  const stress = new Float64Array(materials.length * angles.length * STRESS_ROW);
  const constants: (StrengthConstants | undefined)[] = [];
  for (const material of materials) {
    const { E1, E2, G12, nu12, expansion, strengths } = material;
    checkFinite('materials', [E1, E2, G12, nu12, expansion?.alpha1 ?? 0, expansion?.alpha2 ?? 0]);
    const left = strengths === undefined || (criterion === 'puck' && layOf(material) !== 'unidirectional');
    const own = left ? undefined : strengthConstants({ ...material, strengths }, criterion, options);
    writeStressRows(material, angles, stress, constants.length * STRESS_ROW);
    for (let i = 0; i < angles.length; i++) constants.push(own);
  }
  return { criterion, stress, constants, expands: materials.every(({ expansion }) => expansion !== undefined) };
}
