import { bedLength } from '../bed.js';
import type { Arm } from '../types.js';
import { bedStretch, type Ends, freeStretch } from './bed-element.js';
import { type Chain, type Laid, placesOf, tipAmong } from './chain.js';
import { bedStiffness, rootLength } from './opening-pair.js';

const band = 3;
const stride = band + 1;

/** Decay lengths of the bed ahead of the tip after which the chain may end: e^-30 of an opening is left. */
const quiet = 30;

/**
 * A pair of arms as one beam of openings: free up to the tip, on its bed from there to the end, opened at 0.
 *
 * Two unknowns a point: opening and slope. Rows ahead of the tip act beside the bed.
 * @param pair see `openingPair`
 * @param rows places, m, above 0 and below the length
 */
export function openingChain(pair: Arm, width: number, length: number, rows: readonly number[]): Chain {
  const beam = { D: pair.bendingStiffness, S: pair.shearStiffness };
  const k = bedStiffness(pair);
  const places = placesOf([0, length], rows, length);
  const { at } = places;
  const points = at.length + 1;
  const gaps = at.slice(1).map((place, i) => place - (at[i] ?? 0));
  const bonded = gaps.map((gap) => bedStretch(beam, k, gap));
  const open = gaps.map((gap) => freeStretch(beam, gap));
  const K = new Float64Array((2 * points + band) * stride);
  const load = new Float64Array(2 * points + band);
  load[0] = 1;
  const row = new Int32Array(rows.length);
  const root = rootLength(pair);
  const still = quiet * bedLength(pair);
  const laid: Laid = { unknowns: 0, tip: 0, direct: 0 };
  const { ofRow } = places;

  const lay = (tip: number): Laid => {
    const { before, on } = tipAmong(places, tip, Math.max(3e-4 * root, 3e-5 * tip));
    const extra = on ? 0 : 1;
    let last = before;
    while (last < gaps.length && (at[last] as number) < tip + still) last++;
    laid.unknowns = 2 * (last + 1 + extra);
    laid.tip = 2 * before;
    K.fill(0, 0, (laid.unknowns + band) * stride);
    for (let i = 0; i < last; i++) {
      if (!on && i === before - 1) {
        const near = at[i] as number;
        const far = at[before] as number;
        add(K, i, freeStretch(beam, tip - near), width);
        add(K, i + 1, bedStretch(beam, k, far - tip), width);
      } else if (i < before) add(K, i, open[i] as Ends, width);
      else add(K, i + extra, bonded[i] as Ends, width);
    }
    for (let j = 0; j < row.length; j++) {
      const place = ofRow[j] as number;
      // A row beyond the end of the chain gets the unknown after the last, which stays zero.
      row[j] = place > last ? laid.unknowns : 2 * (place < before ? place : place + extra);
    }
    return laid;
  };
  return { band, K, load, drive: load, row, rubs: [], lay };
}

/** Adds the stretch from a point to the next. With halves of sum and difference of its ends the two motions do not couple. */
function add(K: Float64Array, point: number, { symmetric: s, opposed: a }: Ends, width: number): void {
  const half = width / 2;
  const first = 2 * point * stride;
  const second = first + stride;
  const third = second + stride;
  const plus = (at: number, value: number) => {
    K[at] = (K[at] as number) + value * half;
  };
  plus(first, s[0] + a[0]);
  plus(first + 1, -s[1] - a[1]);
  plus(first + 2, s[0] - a[0]);
  plus(first + 3, s[1] - a[1]);
  plus(second, s[2] + a[2]);
  plus(second + 1, a[1] - s[1]);
  plus(second + 2, a[2] - s[2]);
  plus(third, s[0] + a[0]);
  plus(third + 1, s[1] + a[1]);
  plus(third + stride, s[2] + a[2]);
}
