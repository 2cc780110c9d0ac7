import type { Verdict } from '../types.js';
import type { Anchor } from './anchors.js';
import { type FastValue, fastPeak, fastValue } from './fast-model.js';
import { onsetCeiling } from './fast-sliding.js';
import type { FastSample } from './sample-coupon.js';

/** The fast model corrected by simulations. */
export interface AnchoredValue {
  /** As the fast model has it. */
  readonly fast: FastValue;
  /** J/m² */
  readonly toughness: number;
  /** N */
  readonly peakForce: number;
  readonly first: Verdict;
  /** Reading while the arms hold, and that at which they break, J/m². */
  readonly stitch: number;
  readonly arm: number;
}

/** Two anchors and how far between them, 0 to 1. */
interface Place {
  readonly a: Anchor;
  readonly b: Anchor;
  readonly t: number;
}

/**
 * Corrects the fast model: ratios of simulation to fast model between anchors along straight lines in logarithms, constant beyond; where the simulated readings
 * of anchors fall, their mean counts. What limits is the arm where it shows less than the stitches, or where it breaks before the bond grows; else the thread where the zone gets full, else the bond.
 * @param anchors at least one
 */
export function anchoredModel(anchors: readonly Anchor[]): (sample: FastSample) => AnchoredValue {
  const sorted = monotone([...anchors].sort((a, b) => a.reading - b.reading));
  const filled = fillOfFull(anchors);
  return ({ coupon, failure }) => {
    const fast = fastValue(coupon);
    const { reading, ceiling } = fast;
    const place = placeOf(sorted, reading);
    const force = between(place, place.a.force, place.b.force);
    const stitch = reading * between(place, place.a.stitch, place.b.stitch);
    const among = (Number.isFinite(ceiling) ? ceiling : reading) * between(place, place.a.arm, place.b.arm);
    const onset = coupon.kind === 'enf' ? onsetCeiling(coupon, ceiling) : among;
    const arm = onset < coupon.bond ? onset : among;
    const toughness = Math.min(arm, stitch);
    const full = fast.fill === undefined ? (place.t < 0.5 ? place.a : place.b).full : fast.fill >= filled;
    const other = failure !== undefined && full ? failure : 'bond';
    return {
      fast,
      toughness,
      peakForce: fastPeak(coupon, toughness) * force,
      first: arm < stitch ? 'arm' : other,
      stitch,
      arm,
    };
  };
}

/** How full the fast model has a zone whose first row gives way: 1, unless the simulations of the anchors say otherwise. */
function fillOfFull(anchors: readonly Anchor[]): number {
  const fills = (full: boolean) => anchors.flatMap((anchor) => (anchor.full === full ? (anchor.fill ?? []) : []));
  const most = Math.max(0, ...fills(false));
  const least = Math.min(Number.MAX_VALUE, ...fills(true));
  return most < least ? Math.min(Math.max(1, most * (1 + 1e-9)), least) : Math.sqrt(most * least);
}

/** Fall of the simulated readings from one anchor to the next above that the fast model does not follow. */
const fall = 0.9;

/** Whether the fast model follows the simulations: their readings rise with its own, and outside sliding rows give way in all or in none. */
export function isFollowed(anchors: readonly Anchor[]): boolean {
  const sorted = [...anchors].sort((a, b) => a.reading - b.reading);
  const rises = sorted.every((one, i) => {
    const before = sorted[i - 1];
    return before === undefined || one.reading * one.stitch > fall * before.reading * before.stitch;
  });
  return rises && (sorted[0]?.fill !== undefined || sorted.every(({ full }) => full === sorted[0]?.full));
}

function placeOf(sorted: readonly Anchor[], reading: number): Place {
  const next = sorted.findIndex((anchor) => anchor.reading > reading);
  const b = (next < 0 ? sorted.at(-1) : sorted[next]) as Anchor;
  const a = next > 0 ? (sorted[next - 1] as Anchor) : b;
  if (a === b) return { a, b, t: 0 };
  return { a, b, t: Math.log(reading / a.reading) / Math.log(b.reading / a.reading) };
}

function between({ t }: Place, low: number, high: number): number {
  if (low === high || !Number.isFinite(low + high)) return Math.min(low, high);
  return low * (high / low) ** t;
}

/** Pools neighbours whose simulated readings fall: their geometric mean for each. */
function monotone(anchors: readonly Anchor[]): readonly Anchor[] {
  const groups: Anchor[][] = [];
  const level = (group: readonly Anchor[]) =>
    group.reduce((sum, { reading, stitch }) => sum + Math.log(reading * stitch), 0) / group.length;
  for (const anchor of anchors) {
    groups.push([anchor]);
    for (let last = groups.at(-1), before = groups.at(-2); last && before && level(before) > level(last); ) {
      groups.splice(-2, 2, [...before, ...last]);
      last = groups.at(-1);
      before = groups.at(-2);
    }
  }
  return groups.flatMap((group) =>
    group.map((anchor) => ({ ...anchor, stitch: Math.exp(level(group)) / anchor.reading })),
  );
}
