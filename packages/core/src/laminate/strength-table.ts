import type { InPlaneConstants, Ply } from '../material/index.js';
import type { BatchStrength } from './kernel-layout.js';
import { STRESS_ROW, writeStressRows } from './kernel-ply-stress.js';
import { type Criterion, choice, failureCriteria, type StrengthOptions } from './strength/criterion.js';
import { type StrengthConstants, strengthConstants } from './strength/strength-constants.js';

/** A material of {@link makeStrengthTable}. */
export type StrengthMaterial = InPlaneConstants & Partial<Pick<Ply, 'strengths' | 'expansion'>>;

/**
 * Table of ply stress and strength constants for a batch: one row for every material at every angle, in the order of `makeQbarTable`.
 *
 * @param materials moduli and strengths, Pa; without strengths a material counts as unbreakable; without expansion it does not
 *   answer to heat
 * @param angles degrees from x to the fibre
 * @param criterion one of `failureCriteria`
 * @param options the criterion's choices
 * @returns what {@link BatchStrength} needs beside the loads
 * @throws as `strengthConstants`; not-a-choice for an unknown criterion
 */
export function makeStrengthTable(
  materials: readonly StrengthMaterial[],
  angles: readonly number[],
  criterion: Criterion,
  options: StrengthOptions = {},
): Pick<BatchStrength, 'criterion' | 'table' | 'constants'> {
  choice('criterion', criterion, failureCriteria);
  const table = new Float64Array(materials.length * angles.length * STRESS_ROW);
  const constants: (StrengthConstants | undefined)[] = [];
  for (const material of materials) {
    const { strengths } = material;
    const own = strengths === undefined ? undefined : strengthConstants({ ...material, strengths }, criterion, options);
    writeStressRows(material, angles, table, constants.length * STRESS_ROW);
    for (let i = 0; i < angles.length; i++) constants.push(own);
  }
  return { criterion, table, constants };
}
