import type { Note } from '../../provenance/index.js';
import type { AnchoredValue } from './anchored-model.js';
import { canBeSewn, noReturn } from './coupon-densities.js';
import type { Middle } from './foretell.js';
import type { FastSample } from './sample-coupon.js';

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
