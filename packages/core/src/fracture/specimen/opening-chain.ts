import { bedLength } from '../bed.js';
import type { Arm } from '../types.js';
import { bedStretch, type Ends, freeStretch } from './bed-element.js';
import { type Chain, type Laid, placesOf, tipAmong } from './chain.js';
import { bedStiffness, rootLength } from './opening-pair.js';

const band = 3;
const stride = band + 1;

/** Decay lengths of the bed ahead of the tip beyond which nothing is felt: e^-12 of an opening is left. */
const quiet = 12;

/**
 * A pair of arms as one beam of openings: free up to the tip, on its bed from there to the end, opened at 0.
 *
 * Two unknowns a point: opening and slope. Rows ahead of the tip act beside the bed. Points go from the far end to the load line, so that what is ahead
 * of the tip stays as it is while the crack grows; rows that hold nothing any more have no point.
 * @param pair see `openingPair`
 * @param rows places in order, m, above 0 and below the length
 */
export function openingChain(pair: Arm, width: number, length: number, rows: readonly number[]): Chain {
  const beam = { D: pair.bendingStiffness, S: pair.shearStiffness };
  const k = bedStiffness(pair);
  const places = placesOf([0, length], rows, length);
  const { at, ofRow } = places;
  const end = at.length - 1;
  const gaps = at.slice(1).map((place, i) => place - (at[i] ?? 0));
  const bonded = gaps.map((gap) => bedStretch(beam, k, gap));
  const open = gaps.map((gap) => freeStretch(beam, gap));
  const most = 2 * (at.length + 1);
  const K = new Float64Array((most + band) * stride);
  const load = new Float64Array(most + band);
  const row = Int32Array.from(ofRow, (place) => 2 * (end - place));
  const root = rootLength(pair);
  const still = quiet * bedLength(pair);
  const laid: Laid = {
    unknowns: 0,
    settled: 0,
    loaded: 0,
    felt: 0,
    first: 0,
    beyond: 0,
    tip: 0,
    next: 0,
    direct: 0,
  };
  let nextPlace = 0;
  let crack = Number.NaN;

  const lay = (tip: number, spent: number): Laid => {
    if (tip === crack && spent === laid.first) return laid;
    const { before, on } = tipAmong(places, tip, Math.max(3e-4 * root, 3e-5 * tip));
    const ahead = end - before;
    let point = Math.min(ahead, laid.settled / 2);
    K.fill(0, 2 * point * stride, (laid.unknowns + band) * stride);
    if (point > 0) addNear(K, point, bonded[end - point] as Ends, width);
    const add = (ends: Ends): void => {
      addFar(K, point, ends, width);
      point += 1;
      addNear(K, point, ends, width);
    };
    while (point < ahead) add(bonded[end - point - 1] as Ends);
    if (!on) add(bedStretch(beam, k, (at[before] as number) - tip));
    const tipPoint = point;
    // Points behind the tip: at all places of rows that may hold, and at the load line.
    const held = Math.min(Math.max(ofRow[spent] ?? end, 1), before);
    let place = on ? (at[before] as number) : tip;
    for (let i = before - 1; i >= held; i--) {
      add(on || i < before - 1 ? (open[i] as Ends) : freeStretch(beam, place - (at[i] as number)));
      place = at[i] as number;
    }
    add(freeStretch(beam, place));

    load[laid.loaded] = 0;
    laid.loaded = 2 * point;
    load[laid.loaded] = 1;
    laid.unknowns = laid.loaded + 2;
    laid.tip = 2 * tipPoint;
    laid.next = laid.loaded - 2;
    nextPlace = place;
    let last = before;
    while (last < end && (at[last] as number) < tip + still) last++;
    laid.felt = 2 * (end - last);
    const reached = Math.max(before, end - laid.settled / 2);
    laid.settled = 2 * ahead;
    laid.first = spent;
    let j = spent;
    for (; j < row.length && (ofRow[j] as number) <= reached; j++) {
      const own = ofRow[j] as number;
      row[j] = own === 0 ? laid.loaded : 2 * (own < before ? tipPoint + before - own : end - own);
    }
    while (j > spent && (ofRow[j - 1] as number) > last) j--;
    while (j < row.length && (ofRow[j] as number) <= last) j++;
    laid.beyond = j;
    crack = tip;
    return laid;
  };

  /** Between load line and next point the moment grows in proportion, δ = Δ + s x + P x³/(6 D b), shear with it in s. */
  const fill = (opening: Float64Array, P: number, displacement: number, next: number): void => {
    const bend = P / (6 * beam.D * width);
    const slope = (next - displacement) / nextPlace - bend * nextPlace * nextPlace;
    for (let j = 0; j < laid.first; j++) {
      const x = rows[j] as number;
      opening[j] = displacement + x * (slope + bend * x * x);
    }
  };
  return { band, K, load, drive: load, row, rubs: [], lay, fill };
}

/** What a stretch adds to its point farther from the load line. With halves of sum and difference of its ends the two motions do not couple. */
function addFar(K: Float64Array, point: number, { symmetric: s, opposed: a }: Ends, width: number): void {
  const half = width / 2;
  const lift = 2 * point * stride;
  const slope = lift + stride;
  K[lift] = (K[lift] as number) + half * (s[0] + a[0]);
  K[lift + 1] = (K[lift + 1] as number) + half * (s[1] + a[1]);
  K[lift + 2] = half * (s[0] - a[0]);
  K[lift + 3] = half * (a[1] - s[1]);
  K[slope] = (K[slope] as number) + half * (s[2] + a[2]);
  K[slope + 1] = half * (s[1] - a[1]);
  K[slope + 2] = half * (a[2] - s[2]);
}

/** What it adds to the nearer one. */
function addNear(K: Float64Array, point: number, { symmetric: s, opposed: a }: Ends, width: number): void {
  const half = width / 2;
  const lift = 2 * point * stride;
  K[lift] = (K[lift] as number) + half * (s[0] + a[0]);
  K[lift + 1] = (K[lift + 1] as number) - half * (s[1] + a[1]);
  K[lift + stride] = (K[lift + stride] as number) + half * (s[2] + a[2]);
}
