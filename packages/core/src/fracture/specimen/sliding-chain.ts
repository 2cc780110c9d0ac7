import { type Bending, leftSupport, momentAt } from './bending.js';
import { type Chain, type Laid, placesOf, tipAmong } from './chain.js';
import type { SlidingPair } from './sliding-pair.js';

const band = 1;
const stride = band + 1;

/** What a sliding chain is made of. */
export interface SlidingChainInput {
  readonly pair: SlidingPair;
  readonly width: number;
  /** From the left support to the end of the bond, m. */
  readonly length: number;
  readonly bending: Bending;
  readonly rows: readonly number[];
  /** Coefficient of friction of the crack faces. */
  readonly friction: number;
  /** Share of the bending stiffness that the arm under the loads has. */
  readonly upperShare: number;
}

/**
 * A pair of arms bent by known moments, as a bar of slidings s: N = B (s' + H M/D), N' = k s on the bed and 0 behind the tip.
 *
 * One unknown a point. Bending and shear are statics, so that only the sliding is unknown; each stretch is solved exactly for its linear moment.
 * Deflection per load: ∫ m²/D_bonded + ∫ V²/S + the end forces of the sliding.
 */
export function slidingChain(input: SlidingChainInput): Chain {
  const { pair, width, length, bending, friction, upperShare } = input;
  const { D, B, H } = pair;
  const loadPlaces = bending.loads.map(({ place }) => place);
  const places = placesOf([0, ...loadPlaces, bending.span, length], input.rows, length);
  const { at } = places;
  const points = at.length + 1;
  const K = new Float64Array((points + band) * stride);
  const drive = new Float64Array(points + band);
  const load = new Float64Array(points + band);
  const row = new Int32Array(input.rows.length);
  const rubs = [0, ...loadPlaces].map(() => ({ unknown: 0, perLoad: 0 }));
  const atSupport = friction * leftSupport(bending) * upperShare;
  const shareOfLoads = bending.loads.map(({ share }) => friction * share * (1 - upperShare));
  const placeOfLoads = placesOf(at, loadPlaces, length).ofRow;
  const near = 1e-6 / pair.decay;
  const moments = at.map((place) => momentAt(bending, place));
  const whole = at.slice(1).reduce((sum, place, i) => {
    const [from, m0, m1] = [at[i] as number, moments[i] as number, moments[i + 1] as number];
    const l = place - from;
    return (
      sum + (l * (m0 * m0 + m0 * m1 + m1 * m1)) / (3 * width * pair.bonded) + (m1 - m0) ** 2 / (l * width * pair.S)
    );
  }, 0);
  const laid: Laid = {
    unknowns: 0,
    settled: 0,
    loaded: 0,
    felt: 0,
    first: 0,
    beyond: row.length,
    tip: 0,
    next: 0,
    direct: 0,
  };
  const { ofRow } = places;

  /** Adds the stretch between two points: its stiffness, what moments do to its ends, and what it bends by itself. */
  const add = (point: number, l: number, m0: number, m1: number, bonded: boolean): void => {
    const x = bonded ? pair.decay * l : 0;
    const scale = (B * width) / l;
    // Counted so that bending makes the sliding positive.
    const e0 = (-H * m0) / (D * width);
    const e1 = (-H * m1) / (D * width);
    // x coth x and x / sinh x; t is tanh(x/2)/(x/2).
    const own = bonded ? x / Math.tanh(x) : 1;
    const other = bonded ? x / Math.sinh(x) : 1;
    const t = bonded ? Math.tanh(x / 2) / (x / 2) : 1;
    const first = point * stride;
    K[first] = (K[first] as number) + scale * own;
    K[first + 1] = -scale * other;
    K[first + stride] = (K[first + stride] as number) + scale * own;
    const spread = ((e1 - e0) / 2) * t;
    drive[point] = (drive[point] as number) - scale * l * (e0 + spread);
    drive[point + 1] = (drive[point + 1] as number) + scale * l * (e1 - spread);
    // (1 - t)/x² loses digits on a short stretch, where it tends to 1/12.
    const within = x > 0.02 ? (1 - t) / (x * x) : 1 / 12 - (x * x) / 120;
    laid.direct += scale * l * l * (e1 - e0) ** 2 * within;
  };

  const lay = (tip: number): Laid => {
    const { before, on } = tipAmong(places, tip, near);
    const extra = on ? 0 : 1;
    laid.unknowns = at.length + extra;
    laid.tip = before;
    laid.direct = whole;
    K.fill(0, 0, laid.unknowns * stride);
    drive.fill(0, 0, laid.unknowns);
    for (let i = 0; i + 1 < at.length; i++) {
      const [from, to] = [at[i] as number, at[i + 1] as number];
      const [m0, m1] = [moments[i] as number, moments[i + 1] as number];
      if (!on && i === before - 1) {
        const m = momentAt(bending, tip);
        add(i, tip - from, m0, m, false);
        add(i + 1, to - tip, m, m1, true);
      } else if (i < before) add(i, to - from, m0, m1, false);
      else add(i + extra, to - from, m0, m1, true);
    }
    for (let j = 0; j < row.length; j++) {
      const place = ofRow[j] as number;
      row[j] = place < before ? place : place + extra;
    }
    load.set(drive);
    rubs.forEach((rub, i) => {
      const place = i === 0 ? 0 : (placeOfLoads[i - 1] as number);
      rub.unknown = place < before ? place : place + extra;
      rub.perLoad = place >= before ? 0 : i === 0 ? atSupport : (shareOfLoads[i - 1] as number);
      load[rub.unknown] = (load[rub.unknown] as number) - rub.perLoad;
    });
    return laid;
  };
  return { band, K, load, drive, row, rubs, lay, fill: () => undefined };
}
