import type { CouponResult, Results } from '../../../design/index.js';
import type { CouponPrediction, Estimated } from '../../../fracture/index.js';
import type { KindName } from '../../../quantity/index.js';
import type { Block, Cell, Column } from '../../blocks.js';
import { amount, table } from '../build.js';
import { armWords, digits, limitWords, majorityOf, shareOf, splitCell } from './words.js';

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

/** Where the split stops, with its range. */
const splitCells = ({ coupon, splitLength: split }: CouponPrediction): Cell[] =>
  split === undefined ? ['–', '–', '–'] : [split.median, split.low, split.high].map((one) => splitCell(one, coupon));

/** What limits most of the samples, with the margin of the middle values where they say the same. */
function limitCells({ prediction }: CouponResult): Cell[] {
  const { verdict } = prediction;
  const most = majorityOf(prediction);
  const margin = most === verdict.first ? verdict.margin : undefined;
  return [limitWords[most], shareOf(prediction, most), margin === undefined ? '–' : amount(margin, 'number', digits)];
}

/** The coupons side by side: what they bear, and what gives way; absent without any. */
export function couponsTable({ coupons }: Pick<Results, 'coupons'>): Block[] {
  if (coupons.length === 0) return [];
  const tough = coupons.some(({ prediction }) => prediction.toughness !== undefined);
  const wedged = coupons.some(({ prediction }) => prediction.splitLength !== undefined);
  const anyGain = coupons.some(({ gain }) => gain !== undefined);
  const rows = coupons.map((one): Cell[] => {
    const { model, prediction, gain } = one;
    const { peakForce, toughness } = prediction;
    return [
      model.name,
      model.stitching ?? 'none',
      armWords(model.arms),
      ...limitCells(one),
      ...spread(peakForce, 'force'),
      ...(tough ? [...spread(toughness?.specimen, 'toughness'), steadyCell(one)] : []),
      ...(wedged ? splitCells(prediction) : []),
      ...(anyGain ? [gain === undefined ? '–' : amount(gain, 'number', digits)] : []),
    ];
  });
  const gainMeaning = `; gain: ${[
    ...(tough ? ['toughness over that of the same coupon without stitches'] : []),
    ...(wedged ? ['split of the same edge without stitches over its own'] : []),
  ].join(', or ')}, – where the design has none alike in type, arms, bond, crack and sizes`;
  const held = wedged ? '; peak force of a wedged edge: the force that holds its mouth' : '';
  return [
    table(
      'coupons',
      `Coupons at a glance, as foretold: median, and from where to where nine in ten samples lie; gives way: what limits the largest share of the samples, and that share; margin: load at which the next thing would give way, over that of the first, by the middle values, – where nothing else is in reach or they say that something else limits${held}${anyGain ? gainMeaning : ''}`,
      [
        { label: 'Coupon' },
        { label: 'Stitch plan' },
        { label: 'Arms' },
        { label: 'Gives way' },
        { label: 'Share' },
        { label: 'Margin' },
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
