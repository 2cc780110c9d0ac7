import type { Working } from '../working/index.js';
import { meetings } from './crossing.js';
import { penetrationDensity } from './density.js';
import { type Holes, holeOverBundle } from './holes.js';
import { nearestNeighbour, nearestOfRows, rowPairs, staggeredDistance } from './nearest-neighbour.js';
import { needleDiameter, needleRatio, needleUnit } from './needle.js';
import { type RowsMet, rowsMetAcross, rowsMetAlong } from './rows-met.js';
import type { SewingTimeInput } from './sewing-time.js';
import { threadDiameter } from './thread.js';
import type { Pattern, Thread } from './types.js';

/** Takes down needle, hole and the width left along a row. */
export function showHoles(
  { pattern, needleThread, needleNumber, holeWidth }: HolesOf,
  { width: d_h, netWidth: x_n, alongRow: p_h }: Holes,
  bundle: number,
  working: Working,
): void {
  if (needleNumber !== undefined) {
    const d_N = needleDiameter(needleNumber);
    working.step('needleDiameter', { n_N: needleNumber, u_N: needleUnit, d_N });
    const d_n = threadDiameter(needleThread);
    working.step('needleOverThread', { d_N, d_n, f_N: needleRatio(needleNumber, needleThread) });
    if (holeWidth === undefined) working.step('holeAsNeedle', { d_N, d_h });
  } else if (holeWidth === undefined) {
    working.step('holeOfBundle', { f_h: holeOverBundle, d_B: bundle, d_h });
  }
  if (pattern.kind === 'zigzag' && p_h !== pattern.pitch) working.step('holesOfZigzagSide', { p: pattern.pitch, p_h });
  working.step('netWidth', { d_h, p_h, x_n });
}

interface HolesOf {
  readonly pattern: Pattern;
  readonly needleThread: Thread;
  readonly needleNumber?: number;
  readonly holeWidth?: number;
}

/** Takes down the least distance between holes, and what a straight front meets. */
export function showSpacing(pattern: Pattern, working: Working): void {
  showNearest(pattern, working);
  const N = penetrationDensity(pattern);
  const met = (name: string, front: RowsMet | undefined): void => {
    if (front === undefined) return;
    working.part(name).step('holesPerFront', { N, s_f: front.spacing, n_f: front.perFrontLength });
  };
  met('across', rowsMetAcross(pattern));
  met('along', rowsMetAlong(pattern));
}

function showNearest(pattern: Pattern, working: Working): void {
  const { distance: d_nn, sameRow: p_l, otherRow } = nearestNeighbour(pattern);
  if (pattern.kind === 'rows') {
    if (otherRow === undefined) working.step('nearestInOneRow', { p_l, d_nn });
    else {
      const at = (i: number): number => pattern.rows[i]?.offset ?? 0;
      const pairs = rowPairs(pattern).map(({ rows: [i, j], apart, shift, distance }) => {
        return { i_1: i + 1, i_2: j + 1, o_i: at(i), o_j: at(j), o_d: apart, x_d: shift, d_ij: distance };
      });
      working.step('nearestOfTwoRows', {}, pairs);
      const list = pairs.map(({ i_1, i_2, d_ij }) => ({ i_1, i_2, d_ij }));
      working.step('nearestOfPairs', { d_r: otherRow }, list);
      working.step('nearestAlongEdge', { p_l, d_r: nearestOfRows(pattern), d_nn });
    }
    return;
  }
  const { pitch: p, rowSpacing: s } = pattern;
  if (pattern.kind === 'parallel') working.step('nearestInParallel', { p, s, d_nn });
  if (pattern.kind === 'staggered') {
    const d_r = staggeredDistance(pattern);
    working.step('nearestInStaggered', { p, s, f_s: pattern.shift ?? 0.5, d_r, d_nn });
  }
  if (pattern.kind === 'zigzag') {
    working.step('nearestInZigzag', { p, s, v: pattern.swing, k_z: Math.floor(pattern.swing / s), d_nn });
  }
  if (pattern.kind === 'crossing') {
    const { pitch: p_S, rowSpacing: s_S } = pattern.second;
    working.step('nearestInCrossing', { p, s, p_S, s_S, d_x: meetings(pattern).closest, d_nn });
  }
}

/** Takes down the time of sewing. */
export function showSewingTime(input: SewingTimeInput, time: number, working: Working): void {
  const { stitches, rows, rate, setup = 0, handling = 0 } = input;
  working.step('sewingTime', { n_st: stitches, n_rows: rows, f_st: rate, t_r: setup, t_h: handling, t_s: time });
}
