import type { Coupon, CouponPrediction, CouponSpecimen, Verdict } from '../../../fracture/index.js';
import {
  displayNumber,
  formatNumber,
  formatQuantity,
  type KindName,
  type UnitSystem,
} from '../../../quantity/index.js';
import type { Interval } from '../../../stitch/index.js';
import type { Cell } from '../../blocks.js';
import { amount } from '../build.js';
import { shareWords } from '../shares.js';

/** What gives way, for a table. */
export const limitWords: Readonly<Record<Verdict, string>> = {
  bond: 'bond',
  threadAtCrack: 'thread at crack',
  threadAtAnchor: 'thread at lock',
  threadPullOut: 'thread pulls out',
  arm: 'arm (plies)',
};

/** What happens, for a sentence: "The arms break at 84 N". */
export const happens: Readonly<Record<Verdict, string>> = {
  bond: 'the bond gives way',
  threadAtCrack: 'the thread breaks at the crack',
  threadAtAnchor: 'the thread breaks at its lock or bend',
  threadPullOut: 'the thread pulls out',
  arm: 'the arms break',
};

/** Who it is, for a sentence: "the thread at its lock or bend would be next". */
export const limitNames: Readonly<Record<Verdict, string>> = {
  bond: 'the bond',
  threadAtCrack: 'the thread at the crack',
  threadAtAnchor: 'the thread at its lock or bend',
  threadPullOut: "the thread's hold in the laminate",
  arm: 'the arms',
};

export const specimenWords: Readonly<Record<CouponSpecimen['kind'], string>> = {
  dcb: 'double cantilever beam: the arms are pulled open',
  enf: 'end-notched flexure: the arms slide on each other',
  peel: 'T-peel: thin arms are peeled apart',
  wedge: 'edge that something wedges open',
};

export const specimenNames: Readonly<Record<CouponSpecimen['kind'], string>> = {
  dcb: 'double cantilever beam',
  enf: 'end-notched flexure',
  peel: 'T-peel',
  wedge: 'wedged edge',
};

/** Where lengths count from. */
export const originWords: Readonly<Record<CouponSpecimen['kind'], string>> = {
  dcb: 'the load line',
  enf: 'the left support',
  peel: 'the grips',
  wedge: 'the edge',
};

/** Digits of what is foretold: its range does not warrant more. */
export const digits = 3;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "62 to 97 N" */
export function rangeWords({ low, high }: Interval, kind: KindName, units: UnitSystem): string {
  const [from, to] = [low, high].map((value) => displayNumber(value, kind, { units, digits }));
  const upper = formatQuantity(high, kind, { units, digits });
  return from === to ? upper : `${from} to ${upper}`;
}

export const times = (value: number): string => formatNumber(value, digits);

/** The verdicts that some sample has, the most frequent first. */
const sharesInOrder = ({ shares }: Pick<CouponPrediction, 'shares'>): (readonly [Verdict, number])[] =>
  (Object.entries(shares) as [Verdict, number][]).filter(([, share]) => share > 0).sort(([, a], [, b]) => b - a);

/** What limits most of the samples. */
export function majorityOf({ shares, verdict }: Pick<CouponPrediction, 'shares' | 'verdict'>): Verdict {
  const [most] = sharesInOrder({ shares });
  return most === undefined || shares[verdict.first] >= most[1] ? verdict.first : most[0];
}

/** Each verdict that some sample has with its share in words, the most frequent first. */
export function sharesInWords(prediction: Pick<CouponPrediction, 'shares'>): (readonly [Verdict, string])[] {
  const all = sharesInOrder(prediction);
  const words = shareWords(all.map(([, share]) => share));
  return all.map(([what], i) => [what, words[i] ?? '']);
}

/** The share of the samples in words in which one thing limits. */
export const shareOf = (prediction: Pick<CouponPrediction, 'shares'>, what: Verdict): string =>
  sharesInWords(prediction).find(([one]) => one === what)?.[1] ?? '0 %';

/** Below the depth by more than this share a split has an end. */
const through = 1e-6;

/** Whether a split of a wedged edge goes through the whole depth of the bond. */
export const runsThrough = (split: number, { specimen }: Pick<Coupon, 'specimen'>): boolean =>
  specimen.kind === 'wedge' && split >= specimen.depth * (1 - through);

/** A length at which a split stops, in words where it does not. */
export const splitCell = (split: number, coupon: Pick<Coupon, 'specimen'>): Cell =>
  runsThrough(split, coupon) ? 'runs through' : amount(split, 'length', digits);

/** Arms in words: the name once when both are of one laminate. */
export const armWords = ([upper, lower]: readonly [string, string]): string =>
  upper === lower ? upper : `${upper} on ${lower}`;

/** Below this share a difference of loads is one of rounding. */
const alike = 0.01;

export const isAlike = (a: number, b: number): boolean => Math.abs(a - b) <= alike * Math.abs(b);

/** The load that breaks the coupon's limit is not always the highest: a peel may break its arms on the way down. */
export const isAtPeak = ({ verdict, peakForce }: CouponPrediction): boolean => isAlike(verdict.load, peakForce.nominal);

/** A list in words: "a, b and c". */
export const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
