import type { CouponResult } from '../../../design/index.js';
import type { Estimated } from '../../../fracture/index.js';
import type { UnitSystem } from '../../../quantity/index.js';
import type { Block } from '../../blocks.js';
import { type ChartSeries, chartFigure } from '../../figures/index.js';
import { thinned } from './thinned.js';

/** A value with its range as a line across the whole growth. */
const level = (label: string, y: number, to: number, range?: Estimated): ChartSeries => ({
  label,
  points: [0, to].map((x) => ({ x, y })),
  ...(range === undefined ? {} : { range: [0, to].map((x) => ({ x, low: range.low, high: range.high })) }),
});

/** Toughness against growth; absent for a wedged edge and for a crack that does not grow. */
export function resistanceFigure({ model, prediction }: CouponResult, id: string, units: UnitSystem): Block[] {
  const { result, toughness } = prediction;
  const points = result?.resistance ?? [];
  const to = points.at(-1)?.growth ?? 0;
  if (toughness === undefined || points.length < 2 || !(to > 0)) return [];
  const { steady, specimen, ceiling } = toughness;
  return [
    chartFigure({
      id: `${id}-resistance`,
      title: `Toughness against growth of the crack, coupon ${model.name}; shaded: nine in ten`,
      x: { label: 'growth of the crack', kind: 'length' },
      y: { label: 'toughness', kind: 'toughness' },
      series: [
        { label: 'from the load', points: thinned(points.map(({ growth, byLoad }) => ({ x: growth, y: byLoad }))) },
        {
          label: 'from the energy that the growth took',
          points: thinned(points.map(({ growth, byArea }) => ({ x: growth, y: byArea }))),
        },
        steady === undefined
          ? level('what a tester reads, median', specimen.median, to, specimen)
          : level('steady, median', steady.median, to, steady),
        ...(ceiling === undefined ? [] : [level('arms reach breaking strain at the tip', ceiling, to)]),
      ],
      units,
      summary: 'Both curves are those of the middle values of the parameters.',
    }),
  ];
}
