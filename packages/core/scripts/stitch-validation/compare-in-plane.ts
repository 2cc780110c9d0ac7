import { type InPlaneKnockdown, inPlaneKnockdown, threadDiameter } from '../../src/stitch/index.js';
import { densityOf, pitchOf, rowDistance } from './coupons.js';
import {
  type Comparison,
  comparisons,
  entry,
  type InPlaneCase,
  inPlaneCases,
  type PrintedRow,
  rowOf,
} from './inputs.js';
import { threadOf, wavyPly } from './materials.js';

/** Two legs, as all machine stitches have. */
const legs = 2;

/** A printed change in the plane beside the estimate, in percent. */
export interface InPlaneRow {
  readonly comparison: Comparison;
  readonly row: PrintedRow;
  readonly published: { readonly low: number; readonly high: number };
  readonly estimated: { readonly low: number; readonly high: number };
  /** Percentage points by which the range of the estimate misses the print, or the farther end of a printed range; 0 inside. */
  readonly missedBy: number;
}

/** The in-plane price of a case. */
export function knockdownOf({ ply, thread, pattern }: InPlaneCase): InPlaneKnockdown {
  return inPlaneKnockdown({
    ply: wavyPly(ply.id),
    spacing: rowDistance({ pattern }),
    pitch: pitchOf({ pattern }),
    penetrationDensity: densityOf({ pattern }),
    bundleDiameter: threadDiameter(threadOf(thread.id), legs),
  });
}

type Ranges = readonly (readonly [low: number, high: number])[];

/** What of the estimates belongs to what is printed; bending breaks at the pulled or the pressed face. */
const belonging: Readonly<Record<string, (all: InPlaneKnockdown) => Ranges>> = {
  tension: ({ tension }) => [[tension.low, tension.high]],
  modulus: ({ modulus }) => [[modulus.low, modulus.high]],
  compression: ({ compression }) => [[compression.lower.low, compression.upper.high]],
  flexure: ({ tension, compression }) => [
    [tension.low, tension.high],
    [compression.lower.low, compression.upper.high],
  ],
  modulusTension: ({ modulus, tension }) => [
    [modulus.low, modulus.high],
    [tension.low, tension.high],
  ],
  modulusTensionCompression: ({ modulus, tension, compression }) => [
    [modulus.low, modulus.high],
    [tension.low, tension.high],
    [compression.lower.low, compression.upper.high],
  ],
};

const percent = (factor: number) => 100 * (factor - 1);

/** The printed changes in the plane beside the estimates; the same by both laws, which the plane does not know. */
export function inPlaneRows(): readonly InPlaneRow[] {
  return comparisons.flatMap((comparison) => {
    const ranges = belonging[comparison.compare];
    if (ranges === undefined) return [];
    const row = rowOf(comparison);
    const all = (comparison.cases ?? []).flatMap((id) => ranges(knockdownOf(entry(inPlaneCases, id))));
    const low = percent(Math.min(...all.map(([least]) => least)));
    const high = percent(Math.max(...all.map(([, most]) => most)));
    const published = { low: row.low ?? row.value ?? Number.NaN, high: row.high ?? row.value ?? Number.NaN };
    // A printed range says where most lies; the estimates of our cases must lie in it. A printed value must lie in the estimate.
    const missedBy =
      row.value === undefined
        ? Math.max(0, published.low - low, high - published.high)
        : Math.max(0, low - row.value, row.value - high);
    return [{ comparison, row, published, estimated: { low, high }, missedBy }];
  });
}
