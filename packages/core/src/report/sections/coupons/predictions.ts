import type { CouponResult } from '../../../design/index.js';
import type { Estimated } from '../../../fracture/index.js';
import type { KindName } from '../../../quantity/index.js';
import type { Block, Cell } from '../../blocks.js';
import { amount, table } from '../build.js';
import { noSteady } from './glance.js';
import { digits, splitCell } from './words.js';

const noSteadyWords = {
  short: 'none: the stitched length may be too short for the bridged zone',
  noted: 'none: see the notes',
} as const;

/** What is foretold: median, the range of nine in ten, and the value at the middle values. */
export function predictionsTable(one: CouponResult, id: string): Block {
  const { peakForce, toughness, splitLength } = one.prediction;
  const inOrder = ({ median, low, high, nominal }: Estimated): number[] => [median, low, high, nominal];
  const row = (label: string, value: Estimated, kind: KindName): Cell[] => [
    label,
    ...inOrder(value).map((number) => amount(number, kind, digits)),
  ];
  const wedged = one.prediction.wedge !== undefined;
  const steady = toughness?.steady;
  const why = noSteady(one);
  const rows: Cell[][] = [
    ...(splitLength === undefined
      ? []
      : [['Split stops at', ...inOrder(splitLength).map((value) => splitCell(value, one.model.coupon))]]),
    row(wedged ? 'Force that holds the mouth' : 'Peak force', peakForce, 'force'),
    ...(toughness === undefined ? [] : [row('Toughness that a tester reads', toughness.specimen, 'toughness')]),
    ...(steady !== undefined
      ? [row('Steady toughness, zone in full', steady, 'toughness')]
      : toughness === undefined || why === undefined
        ? []
        : [['Steady toughness, zone in full', noSteadyWords[why], '–', '–', '–']]),
  ];
  return table(
    `${id}-predictions`,
    `Foretold; nine in ten samples of the uncertain values lie between from and to; middle values: with every parameter as given or in the middle of its range${wedged ? '; the force of a wedge is the one that holds the mouth open' : ''}`,
    [{ label: 'Quantity' }, { label: 'Median' }, { label: 'from' }, { label: 'to' }, { label: 'Middle values' }],
    rows,
  );
}
