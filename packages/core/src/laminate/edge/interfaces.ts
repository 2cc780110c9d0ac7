import { rotateStrain } from '../axes.js';
import { ROW } from '../kernel-layout.js';
import { tabulateQbar } from '../qbar.js';
import { near } from '../stack-layer.js';
import type { Laminate } from '../types.js';

/** For each ply, what tells it from its neighbour at a free edge: stiffness and expansion in laminate axes. */
function signatures({ plies }: Laminate): readonly (readonly number[])[] {
  const { qbarTable, row } = tabulateQbar(plies);
  const stiffest = Math.max(...qbarTable);
  const hottest = Math.max(...plies.flatMap((p) => [p.expansion?.alpha1 ?? 0, p.expansion?.alpha2 ?? 0].map(Math.abs)));
  return plies.map(({ expansion, angle }, k) => {
    const at = (row[k] ?? 0) * ROW;
    const alpha = rotateStrain([expansion?.alpha1 ?? 0, expansion?.alpha2 ?? 0, 0], -angle);
    return [
      ...Array.from(qbarTable.slice(at, at + ROW), (value) => value / stiffest),
      ...alpha.map((value) => (hottest === 0 ? 0 : value / hottest)),
    ];
  });
}

/** Whether ply k and the next one, counted from 0, are one thicker ply as far as the edge is concerned. */
export function alikeNeighbours(laminate: Laminate): (k: number) => boolean {
  const all = signatures(laminate);
  return (k) => (all[k] ?? []).every((value, i) => near(value, all[k + 1]?.[i] ?? Number.NaN, 1));
}

/** Whether a stack is its own mirror image in stiffness, expansion and thickness. */
export function isMirrored(laminate: Laminate): boolean {
  const all = signatures(laminate);
  const { plies, thickness } = laminate;
  return all.every((one, k) => {
    const j = plies.length - 1 - k;
    const same = one.every((value, i) => near(value, all[j]?.[i] ?? Number.NaN, 1));
    return same && near(plies[k]?.thickness ?? 0, plies[j]?.thickness ?? 0, thickness);
  });
}
