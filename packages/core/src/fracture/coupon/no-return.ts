import { SelvageError } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import { bundleArea, nearestNeighbour } from '../../stitch/index.js';
import type { AnchoredValue } from './anchored-model.js';
import type { PulledCoupon } from './anchors.js';
import { denser } from './coupon-densities.js';
import { couponLaw, couponRows } from './coupon-rows.js';
import type { Middle } from './foretell.js';
import { pullCoupon } from './pull-coupon.js';
import type { FastSample } from './sample-coupon.js';
import { withDensity } from './scale-coupon.js';

const tooClose: Note = {
  level: 'assumption',
  text: 'No point of no return: as many stitches as would break the arms cannot be sewn, their holes closer than twice the diameter of the thread in them (common practice, no source).',
  source: 'common-practice',
};

/** Penetrations per area beyond which more stitches only break the arms, to the two digits that the search gives, or why there is none. */
export function pointOfNoReturn(
  { coupon, sample }: Middle,
  density: number,
  model: (sample: FastSample) => AnchoredValue,
): { readonly pointOfNoReturn?: number; readonly notes: readonly Note[] } {
  const factor = noReturn(coupon, sample, model);
  if (factor === undefined) return { notes: [] };
  if (!canBeSewn(coupon, factor)) return { notes: [tooClose] };
  return { pointOfNoReturn: Number((factor * density).toPrecision(2)), notes: [] };
}

/** Densities over that of the design between which the point of no return is looked for. */
const search = { low: 1 / 32, high: 32 };
/** How far on either side of the point the simulation must agree. */
const sure = 1.1;
/** Simulations after which the search is given up. */
const most = 5;

/**
 * Penetrations per area beyond which the arms break first, over those of the design: where the fast model's reading comes to what the arms show,
 * then moved until the simulation breaks arms a tenth above it and none a tenth below.
 *
 * @param coupon at the middle of what is known, as the sample
 * @returns undefined where the arms break at any density, at none, or where it is not to be told apart
 */
function noReturn(
  coupon: PulledCoupon,
  sample: FastSample,
  model: (sample: FastSample) => AnchoredValue,
): number | undefined {
  const excess = (factor: number): number => {
    const { stitch, arm } = model(denser(sample, factor));
    return Math.log(stitch / arm);
  };
  if (!(excess(search.low) < 0 && excess(search.high) > 0)) return undefined;
  let [low, high]: [number, number] = [search.low, search.high];
  for (let round = 0; round < 40; round++) {
    const middle = Math.sqrt(low * high);
    if (excess(middle) < 0) low = middle;
    else high = middle;
  }
  const guess = Math.sqrt(low * high);
  return settled(guess, (factor) => armsBreak(coupon, factor));
}

/** Moves a guess until arms break a tenth above it and not a tenth below; the simulation is asked at both. */
function settled(guess: number, breaks: (factor: number) => boolean): number | undefined {
  let [low, high] = [guess / sure, guess * sure];
  let stride = sure * sure;
  let asked = 2;
  if (breaks(low)) {
    do {
      if (asked++ > most) return undefined;
      high = low;
      low /= stride;
      stride *= stride;
    } while (breaks(low));
  } else {
    while (!breaks(high)) {
      if (asked++ > most) return undefined;
      low = high;
      high *= stride;
      stride *= stride;
    }
  }
  while (high / low > sure * sure * 1.001) {
    const middle = Math.sqrt(low * high);
    if (breaks(middle)) high = middle;
    else low = middle;
  }
  return Math.sqrt(low * high);
}

function armsBreak(coupon: PulledCoupon, factor: number): boolean {
  const denserCoupon = withDensity(coupon, factor) as PulledCoupon;
  const { specimen, stitching } = denserCoupon;
  try {
    const rows = couponRows(denserCoupon, stitching && couponLaw(specimen.kind, stitching));
    return pullCoupon(specimen, rows).events.some(({ kind }) => kind === 'arm');
  } catch (error) {
    if (error instanceof SelvageError) return false;
    throw error;
  }
}

/** Holes closer than so many diameters of the thread in them cannot be sewn. */
const closest = 2;

/** Whether the holes of a coupon with so many times as many stitches lie far enough apart to be sewn: at least twice the diameter of the legs in one. Common practice, no source. */
function canBeSewn(coupon: PulledCoupon, factor: number): boolean {
  const { stitching } = withDensity(coupon, factor);
  if (stitching === undefined) return false;
  const { type, needleThread, underThread = needleThread } = stitching.penetration;
  const diameter = Math.max(
    ...[type.legsAbove, type.legsBelow].map(({ needle, under }) => {
      const area = needle * bundleArea(needleThread) + under * bundleArea(underThread);
      return Math.sqrt((4 * area) / Math.PI);
    }),
  );
  return nearestNeighbour(stitching.pattern).distance >= closest * diameter;
}
