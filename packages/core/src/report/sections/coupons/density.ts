import type { CouponResult } from '../../../design/index.js';
import type { CouponPrediction, DensityPoint, Verdict } from '../../../fracture/index.js';
import { displayNumber, displayUnit, formatQuantity, type UnitSystem } from '../../../quantity/index.js';
import type { Interval } from '../../../stitch/index.js';
import type { Block } from '../../blocks.js';
import { type ChartBand, type ChartMark, type ChartSeries, chartFigure } from '../../figures/index.js';
import { limitWords, shareOf } from './words.js';

const at = (point: DensityPoint): number => point.penetrationDensity;

/** Where what limits changes between two densities: at the point of no return for the arms, else halfway. */
function border(a: DensityPoint, b: DensityPoint, noReturn: number | undefined): number {
  const arms = (a.first === 'arm') !== (b.first === 'arm');
  return arms && noReturn !== undefined && noReturn > at(a) && noReturn < at(b) ? noReturn : (at(a) + at(b)) / 2;
}

/** Stretches of density in which one thing limits. */
export function limitStretches(points: readonly DensityPoint[], noReturn?: number): ChartBand[] {
  const stretches: { first: Verdict; from: number; to: number }[] = [];
  points.forEach((point, i) => {
    const before = points[i - 1];
    const last = stretches.at(-1);
    if (last === undefined || before === undefined)
      stretches.push({ first: point.first, from: at(point), to: at(point) });
    else if (last.first === point.first) last.to = at(point);
    else {
      last.to = border(before, point, noReturn);
      stretches.push({ first: point.first, from: last.to, to: at(point) });
    }
  });
  return stretches.map(({ first, from, to }) => ({ label: limitWords[first], from, to }));
}

/** The median at a density, on a straight line between its neighbours. */
function medianAt(points: readonly DensityPoint[], density: number): number | undefined {
  const after = points.findIndex((point) => at(point) >= density);
  const [a, b] = [points[Math.max(0, after - 1)], points[after]];
  if (a === undefined || b === undefined || (after === 0 && at(b) !== density)) return undefined;
  const share = at(b) === at(a) ? 0 : (density - at(a)) / (at(b) - at(a));
  return a.specimen.median + share * (b.specimen.median - a.specimen.median);
}

function curve(label: string, points: readonly { readonly x: number; readonly of: Interval }[]): ChartSeries[] {
  if (points.length < 2) return [];
  return [
    {
      label,
      points: points.map(({ x, of }) => ({ x, y: of.median })),
      range: points.map(({ x, of }) => ({ x, low: of.low, high: of.high })),
    },
  ];
}

function marksOf(prediction: CouponPrediction, points: readonly DensityPoint[]): ChartMark[] {
  const { pointOfNoReturn, penetrationDensity } = prediction;
  const mark = (label: string, x: number | undefined): ChartMark[] => {
    const y = x === undefined ? undefined : medianAt(points, x);
    return x === undefined || y === undefined ? [] : [{ label, x, y }];
  };
  return [...mark('this coupon', penetrationDensity), ...mark('point of no return', pointOfNoReturn)];
}

/** Toughness against the number of penetrations per area of the same stitch; absent without stitches. */
export function densityFigure({ model, prediction }: CouponResult, id: string, units: UnitSystem): Block[] {
  const points = [...prediction.densities].sort((a, b) => at(a) - at(b));
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || points.length < 2) return [];
  const ceiling = prediction.toughness?.ceiling;
  return [
    chartFigure({
      id: `${id}-density`,
      title: `Toughness with more or fewer of the same stitches, coupon ${model.name}; shaded: nine in ten`,
      x: { label: 'penetrations', kind: 'perArea' },
      y: { label: 'toughness', kind: 'toughness' },
      series: [
        ...curve(
          'what a tester reads, median',
          points.map((point) => ({ x: at(point), of: point.specimen })),
        ),
        ...curve(
          'steady, median',
          points.flatMap((point) => (point.steady === undefined ? [] : [{ x: at(point), of: point.steady }])),
        ),
        ...(ceiling === undefined
          ? []
          : [
              {
                label: 'arms reach breaking strain at the tip',
                points: [at(first), at(last)].map((x) => ({ x, y: ceiling })),
              },
            ]),
      ],
      marks: marksOf(prediction, points),
      columns: limitStretches(points, prediction.pointOfNoReturn),
      units,
      summary: 'The letters tell what most likely gives way first.',
    }),
  ];
}

/** The point of no return in a sentence; nothing without stitches or where the arms are not judged. */
export function noReturnWords({ model, prediction }: CouponResult, units: UnitSystem): string[] {
  const { pointOfNoReturn, penetrationDensity, verdict, wedge } = prediction;
  const { stitching, specimen } = model.coupon;
  if (stitching === undefined || wedge !== undefined) return [];
  if (specimen.arms.every(({ failureStrain }) => failureStrain === undefined))
    return ['No point of no return: the arms have no known strength, so that their breaking is not judged.'];
  const breaking = `at its own density the arms break in ${shareOf(prediction, 'arm')} of the samples`;
  if (pointOfNoReturn === undefined) {
    const middle =
      verdict.first === 'arm'
        ? 'the arms break with far fewer of these stitches too'
        : 'no density of these stitches that can be sewn breaks the arms';
    return [`No point of no return was found: with the middle values ${middle}; ${breaking}.`];
  }
  const area = displayUnit('perArea', units).replace('1/', '');
  const own = penetrationDensity ?? 0;
  const where =
    own > pointOfNoReturn
      ? 'This coupon is beyond it'
      : `This coupon has ${formatQuantity(own / pointOfNoReturn, 'fraction', { units, digits: 2 })} of it`;
  return [
    `Point of no return: beyond about ${displayNumber(pointOfNoReturn, 'perArea', { units, digits: 2 })} penetrations per ${area} (middle values) more stitches break the arms before the thread; the toughness that a tester reads no longer rises. ${where}; ${breaking}.`,
  ];
}
