import type { CouponResult, Results } from '../../../design/index.js';
import type { Estimated } from '../../../fracture/index.js';
import type { KindName } from '../../../quantity/index.js';
import type { Block, Cell, Column } from '../../blocks.js';
import { amount, table } from '../build.js';
import { armWords, digits, limitWords } from './words.js';

/** The coupon without stitches of the same type and arms; the one of the same size, if there are several. */
function unstitchedLike(one: CouponResult, all: readonly CouponResult[]): CouponResult | undefined {
  const { specimen, stitching } = one.model.coupon;
  if (stitching === undefined) return undefined;
  const like = all.filter(
    ({ model }) =>
      model.coupon.stitching === undefined &&
      model.coupon.specimen.kind === specimen.kind &&
      armWords(model.arms) === armWords(one.model.arms),
  );
  return like.find(({ model }) => model.coupon.specimen.crackLength === specimen.crackLength) ?? like[0];
}

/** Toughness over that of the unstitched coupon; of a wedged edge the split of the unstitched one over its own. */
function gainOf(one: CouponResult, all: readonly CouponResult[]): number | undefined {
  const plain = unstitchedLike(one, all)?.prediction;
  const { toughness, splitLength } = one.prediction;
  if (toughness !== undefined && plain?.toughness !== undefined)
    return toughness.specimen.median / plain.toughness.specimen.median;
  if (splitLength !== undefined && splitLength.median > 0 && plain?.splitLength !== undefined)
    return plain.splitLength.median / splitLength.median;
  return undefined;
}

/** Why there is no steady value: the stitched length is too short for the zone, or something that a note tells; undefined where none is looked for. */
export function noSteady({ model, prediction }: CouponResult): 'short' | 'noted' | undefined {
  const { stitching } = model.coupon;
  if (prediction.wedge !== undefined || stitching === undefined) return undefined;
  const { zone } = prediction;
  return zone !== undefined && zone.needed > stitching.to - stitching.from ? 'short' : 'noted';
}

const noSteadyWords = { short: 'none: too short', noted: 'none: see notes' } as const;

function steadyCell(one: CouponResult): Cell {
  const why = noSteady(one);
  const steady = one.prediction.toughness?.steady?.median;
  return steady === undefined ? (why === undefined ? '–' : noSteadyWords[why]) : amount(steady, 'toughness', digits);
}

/** A median with the ends of its range. */
const spread = (value: Estimated | undefined, kind: KindName): Cell[] =>
  [value?.median, value?.low, value?.high].map((one) => (one === undefined ? '–' : amount(one, kind, digits)));

const spreadColumns = (label: string, name: string, kind: KindName): Column[] =>
  [label, `${name} from`, `${name} to`].map((words) => ({ label: words, kind }));

const share = ({ prediction: { shares, verdict } }: CouponResult): Cell => amount(shares[verdict.first], 'fraction', 2);

/** The coupons side by side: what they bear, and what gives way; absent without any. */
export function couponsTable({ coupons }: Pick<Results, 'coupons'>): Block[] {
  if (coupons.length === 0) return [];
  const tough = coupons.some(({ prediction }) => prediction.toughness !== undefined);
  const wedged = coupons.some(({ prediction }) => prediction.splitLength !== undefined);
  const gains = coupons.map((one) => gainOf(one, coupons));
  const anyGain = gains.some((gain) => gain !== undefined);
  const rows = coupons.map((one, i): Cell[] => {
    const { model, prediction } = one;
    const { peakForce, toughness, splitLength, verdict } = prediction;
    const gain = gains[i];
    return [
      model.name,
      model.stitching ?? 'none',
      armWords(model.arms),
      limitWords[verdict.first],
      verdict.margin === undefined ? '–' : amount(verdict.margin, 'number', digits),
      share(one),
      ...spread(peakForce, 'force'),
      ...(tough ? [...spread(toughness?.specimen, 'toughness'), steadyCell(one)] : []),
      ...(wedged ? [...spread(splitLength, 'length')] : []),
      ...(anyGain ? [gain === undefined ? '–' : amount(gain, 'number', digits)] : []),
    ];
  });
  const gainMeaning = `; gain: ${[
    ...(tough ? ['toughness over that of the unstitched coupon of the same type and arms'] : []),
    ...(wedged ? ['split of the unstitched edge over its own'] : []),
  ].join(', or ')}`;
  return [
    table(
      'coupons',
      `Coupons at a glance, as foretold: median, and from where to where nine in ten samples lie; margin: load at which the next thing would give way, over that of the first, – where nothing else is in reach; share: samples in which the first is what limits${anyGain ? gainMeaning : ''}`,
      [
        { label: 'Coupon' },
        { label: 'Stitch plan' },
        { label: 'Arms' },
        { label: 'Gives way' },
        { label: 'Margin' },
        { label: 'Share' },
        ...spreadColumns('Peak force', 'force', 'force'),
        ...(tough
          ? [
              ...spreadColumns('Toughness', 'toughness', 'toughness'),
              { label: 'Steady toughness', kind: 'toughness' as const },
            ]
          : []),
        ...(wedged ? spreadColumns('Split stops at', 'split', 'length') : []),
        ...(anyGain ? [{ label: 'Gain' }] : []),
      ],
      rows,
    ),
  ];
}
