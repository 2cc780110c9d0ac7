import { toSI } from '../../src/quantity/index.js';
import { bridgingModel, bridgingZone, type GivingWay, givingWay, openingWork } from '../../src/stitch/index.js';
import type { Predictions } from './compare-toughness.js';
import { type Bends, penetrationOf } from './coupons.js';
import { type Case, type Comparison, cases, comparisons, entry, type PrintedRow, rowOf } from './inputs.js';

/** A printed range, or a value, in SI. */
export interface Printed {
  readonly low: number;
  readonly high: number;
}

/** A printed length of bridged zone beside those of the cases by one law, m. */
export interface ZoneRow {
  readonly comparison: Comparison;
  readonly row: PrintedRow;
  readonly published: Printed;
  /** 1.4 to 3.4 bridging lengths, over the cases. */
  readonly byLength: Printed;
  /** Longest bridged stretch of the simulated specimens, over the cases. */
  readonly simulated: Printed;
  /** Middle of the printed over middle of the simulated, middles of logarithms. */
  readonly shortfall: number;
}

const middle = ({ low, high }: Printed) => Math.sqrt(low * high);

function over(values: readonly number[]): Printed {
  return { low: Math.min(...values), high: Math.max(...values) };
}

/** The printed lengths of bridged zones beside those by one law. */
export function zoneRows(predictions: Predictions, bends: Bends): readonly ZoneRow[] {
  return comparisons
    .filter(({ compare }) => compare === 'zone')
    .map((comparison) => {
      const row = rowOf(comparison);
      const si = (value: number | undefined) => toSI(value ?? row.value ?? Number.NaN, row.unit ?? '');
      const published = { low: si(row.low), high: si(row.high) };
      const own = (comparison.cases ?? []).flatMap((id) => entry(predictions, id)[bends].opening ?? []);
      const zones = own.map(({ bridgingLength }) => bridgingZone(bridgingLength, false));
      const simulated = over(own.map(({ zone }) => zone));
      return {
        comparison,
        row,
        published,
        byLength: over(zones.flatMap(({ low, high }) => [low, high])),
        simulated,
        shortfall: middle(published) / middle(simulated),
      };
    });
}

/** A printed ratio of two models beside that of our laws. */
export interface FormRow {
  readonly comparison: Comparison;
  readonly row: PrintedRow;
  readonly published: number;
  /** Work by the limit over work by the law with both sites; and least and greatest over all cases that open by threads. */
  readonly predicted: number;
  readonly range: Printed;
}

/** Work when no stitch pulls out, or when every stitch that breaks pulls out of one side (both are alike), over that with both sites competing. */
function workRatio(one: Case, bends: Bends, share: 0 | 1): number {
  const { model } = bridgingModel(penetrationOf(one, bends));
  const way = givingWay(model);
  const [first, second] = way.pullOut;
  const limit: GivingWay = {
    ...way,
    pullOut: [
      { ...first, share },
      { ...second, share: 0 },
    ],
  };
  return openingWork(model, limit) / openingWork(model, way);
}

/** The printed ratios of the limiting models to measurements, beside the same limits of one law over that law. */
export function formRows(bends: Bends): readonly FormRow[] {
  const opening = Object.values(cases).filter(({ mode, thread }) => mode === 'I' && thread !== undefined);
  return comparisons.flatMap((comparison) => {
    if (comparison.compare !== 'withoutPullOut' && comparison.compare !== 'allPullOut') return [];
    const share = comparison.compare === 'allPullOut' ? 1 : 0;
    const row = rowOf(comparison);
    const one = entry(cases, comparison.cases?.[0] ?? '');
    return [
      {
        comparison,
        row,
        published: row.value ?? Number.NaN,
        predicted: workRatio(one, bends, share),
        range: over(opening.map((each) => workRatio(each, bends, share))),
      },
    ];
  });
}
