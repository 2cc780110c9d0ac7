import type { CouponResult } from '../../../design/index.js';
import type { Estimated } from '../../../fracture/index.js';
import type { KindName } from '../../../quantity/index.js';
import type { Block, Cell } from '../../blocks.js';
import { amount, table } from '../build.js';
import { noSteady } from './glance.js';
import { digits } from './words.js';

const noSteadyWords = {
  short: 'none: the stitched length may be too short for the bridged zone',
  noted: 'none: see the notes',
} as const;

/** What is foretold: median, the range of nine in ten, and the value with the single parameters. */
export function predictionsTable(one: CouponResult, id: string): Block {
  const { peakForce, toughness, splitLength } = one.prediction;
  const row = (label: string, { median, low, high, nominal }: Estimated, kind: KindName): Cell[] => [
    label,
    ...[median, low, high, nominal].map((value) => amount(value, kind, digits)),
  ];
  const wedged = one.prediction.wedge !== undefined;
  const steady = toughness?.steady;
  const why = noSteady(one);
  const rows: Cell[][] = [
    ...(splitLength === undefined ? [] : [row('Split stops at', splitLength, 'length')]),
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
    'Foretold; nine in ten samples of the uncertain values lie between from and to, the single values are those of the parameters as given or assumed',
    [{ label: 'Quantity' }, { label: 'Median' }, { label: 'from' }, { label: 'to' }, { label: 'Single values' }],
    rows,
  );
}
