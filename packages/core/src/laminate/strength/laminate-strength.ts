import type { Ply } from '../../material/index.js';
import { fail } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import type { Working } from '../../working/index.js';
import type { Laminate } from '../types.js';
import type { Criterion, StrengthOptions } from './criterion.js';
import { type Lay, layOf } from './lay.js';
import { type StrengthConstants, strengthConstants } from './strength-constants.js';

/** The constants and the lay of every ply; constants are undefined for a ply that is left out and named in the notes. */
export interface LaminateStrength {
  readonly constants: readonly (StrengthConstants | undefined)[];
  readonly lays: readonly Lay[];
  /** Whether Puck left plies out. */
  readonly partly: boolean;
  readonly notes: readonly Note[];
}

/**
 * The strength constants of every ply of a laminate; Puck judges its unidirectional plies only.
 * @param working takes down what the criterion makes of the strengths of each ply, when given
 * @throws not-computable when a ply other than a core has no strengths, when no ply has, or when none is one for Puck; as
 *   {@link strengthConstants}
 */
export function laminateStrength(
  { plies }: Laminate,
  criterion: Criterion,
  options: StrengthOptions,
  working?: Working,
): LaminateStrength {
  const lays = plies.map(layOf);
  const bare: string[] = [];
  const notForPuck: Ply[] = [];
  const constants = plies.map((ply, k) => {
    const { strengths } = ply;
    if (strengths !== undefined) {
      if (criterion !== 'puck' || lays[k] === 'unidirectional') {
        return strengthConstants({ ...ply, strengths }, criterion, options, working?.part('plies', k + 1));
      }
      notForPuck.push(ply);
      return undefined;
    }
    if (ply.core === true) {
      bare.push(`${k + 1} (${ply.name})`);
      return undefined;
    }
    return fail({
      code: 'not-computable',
      message: `ply ${k + 1} (${ply.name}) has no strengths, so the failure of the laminate cannot be computed`,
      allowed: 'Xt, Xc, Yt, Yc and S for every ply; a core may be without',
      hint: 'give the material its strengths',
    });
  });
  if (bare.length === plies.length) {
    fail({
      code: 'not-computable',
      message: 'no ply of the laminate has strengths, so its failure cannot be computed',
      allowed: 'at least one ply with Xt, Xc, Yt, Yc and S',
    });
  }
  if (constants.every((one) => one === undefined)) {
    fail({
      code: 'not-computable',
      message: `Puck is made for unidirectional plies, and the laminate has cloth or mat only (${namesOf(notForPuck)})`,
      allowed: 'at least one unidirectional ply with strengths, or another criterion',
    });
  }
  return { constants, lays, partly: notForPuck.length > 0, notes: notesOf(plies, { lays, bare, notForPuck }) };
}

const namesOf = (plies: readonly Ply[]): string => [...new Set(plies.map(({ name }) => name))].join(', ');

function notesOf(
  plies: readonly Ply[],
  found: { readonly lays: readonly Lay[]; readonly bare: readonly string[]; readonly notForPuck: readonly Ply[] },
): Note[] {
  const { lays, bare, notForPuck } = found;
  const judged = (lay: Lay): Ply[] =>
    plies.filter((ply, k) => ply.strengths !== undefined && lays[k] === lay && !notForPuck.includes(ply));
  const [cloth, mat] = [judged('cloth'), judged('mat')];
  const texts = [
    ...(bare.length === 0 ? [] : [`Ply ${bare.join(', ')}: a core without strengths, left out of the failure check.`]),
    ...(notForPuck.length === 0
      ? []
      : [`Puck is made for unidirectional plies: cloth and mat (${namesOf(notForPuck)}) are left out of it.`]),
    ...(cloth.length === 0
      ? []
      : [
          `Cloth (${namesOf(cloth)}) has fibres along 1, its warp, and along 2, its weft: Yt and Yc are strengths of the weft.`,
        ]),
    ...(mat.length === 0
      ? []
      : [
          `Mat (${namesOf(mat)}) has no direction: it is judged in the weakest of all directions of its axes, whatever its angle.`,
        ]),
  ];
  return texts.map((text) => ({ level: 'assumption', text }));
}
