import {
  type InPlaneConstants,
  reducedStiffness,
  type StiffnessInvariants,
  stiffnessInvariants,
} from '../material/index.js';
import { sinCosDegrees } from '../numeric/index.js';
import { fail } from '../problem/index.js';
import type { Working } from '../working/index.js';
import { checkFinite } from './check-finite.js';
import { ROW } from './kernel-layout.js';
import { componentsAt } from './named.js';

/**
 * Table of ply stiffness in laminate axes, one row for every material at every angle.
 *
 * Qbar11, 22 = U1 ± U2 cos 2θ + U3 cos 4θ; Qbar12 = U4 - U3 cos 4θ; Qbar66 = U5 - U3 cos 4θ;
 * Qbar16, 26 = ½ U2 sin 2θ ± U3 sin 4θ.
 *
 * @param materials elastic constants, Pa; admissible (the material functions refuse others)
 * @param angles degrees from x to the fibre, positive toward y
 * @param table written and returned; a new one when none is given
 * @returns materials × angles rows of six doubles (11, 12, 16, 22, 26, 66), Pa; material i at angle j has row
 *   i * angles.length + j
 * @throws out-of-range when the given table is too short; not-a-number for constants or angles that are not finite
 * @source Tsai & Pagano 1968; Jones 1999, ch. 2.7
 */
export function makeQbarTable(
  materials: readonly InPlaneConstants[],
  angles: readonly number[],
  table: Float64Array = new Float64Array(materials.length * angles.length * ROW),
): Float64Array {
  const needed = materials.length * angles.length * ROW;
  if (table.length < needed) {
    fail({
      code: 'out-of-range',
      message: `\`table\` has ${table.length} entries, ${materials.length} materials at ${angles.length} angles need ${needed}`,
      allowed: `${needed} entries or more`,
    });
  }
  checkFinite('angles', angles);
  let at = 0;
  for (const material of materials) {
    checkFinite('materials', [material.E1, material.E2, material.G12, material.nu12]);
    const u = stiffnessInvariants(reducedStiffness(material));
    for (const angle of angles) {
      writeQbar(u, angle, table, at);
      at += ROW;
    }
  }
  return table;
}

type TurnedPly = InPlaneConstants & { readonly angle: number };

/** The table for a list of plies, with each distinct pair of constants and angle computed once, and the row of each ply. */
export function tabulateQbar(
  plies: readonly TurnedPly[],
  working?: Working,
): {
  readonly qbarTable: Float64Array;
  readonly row: Int32Array;
} {
  const rows = new Map<string, number>();
  const distinct: TurnedPly[] = [];
  const row = new Int32Array(plies.length);
  plies.forEach((ply, k) => {
    const key = `${ply.E1} ${ply.E2} ${ply.G12} ${ply.nu12} ${ply.angle}`;
    let found = rows.get(key);
    if (found === undefined) {
      found = distinct.length;
      rows.set(key, found);
      distinct.push(ply);
    }
    row[k] = found;
  });
  const qbarTable = new Float64Array(distinct.length * ROW);
  distinct.forEach((ply, r) => {
    writeQbar(stiffnessInvariants(reducedStiffness(ply)), ply.angle, qbarTable, r * ROW);
  });
  if (working !== undefined) {
    plies.forEach((ply, k) => {
      showPly(ply, qbarTable, (row[k] ?? 0) * ROW, working.part('plies', k + 1));
    });
  }
  return { qbarTable, row };
}

/** Takes down how the row of a ply came about. */
function showPly(ply: TurnedPly, table: Float64Array, at: number, working: Working): void {
  const invariants = stiffnessInvariants(reducedStiffness(ply, working), working);
  working.step('turnedStiffness', { ...invariants, theta: ply.angle, ...componentsAt('Qbar', table, at) });
}

function writeQbar(u: StiffnessInvariants, angle: number, table: Float64Array, at: number): void {
  const { sin: s, cos: c } = sinCosDegrees(2 * angle);
  // Of the double-angle forms this one vanishes exactly where cos 4θ does at ±22.5 and ±67.5 degrees.
  const fourth = u.U3 * (c - s) * (c + s);
  const fourthSine = u.U3 * 2 * s * c;
  const second = u.U2 * c;
  const halfSecond = (u.U2 * s) / 2;
  table[at] = u.U1 + second + fourth;
  table[at + 1] = u.U4 - fourth;
  table[at + 2] = halfSecond + fourthSine;
  table[at + 3] = u.U1 - second + fourth;
  table[at + 4] = halfSecond - fourthSine;
  table[at + 5] = u.U5 - fourth;
}
