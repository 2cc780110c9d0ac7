import type { CouponResult } from '../../../design/index.js';
import type { CouponPrediction } from '../../../fracture/index.js';
import { formatQuantity, type UnitSystem } from '../../../quantity/index.js';
import { capital, digits, happens, isAlike, isAtPeak, limitNames, rangeWords, sharesInOrder, times } from './words.js';

const force = (value: number, units: UnitSystem): string => formatQuantity(value, 'force', { units, digits });

function nextWords({ verdict }: CouponPrediction): string {
  const { first, next, margin } = verdict;
  if (next === undefined || margin === undefined) return 'nothing else is in reach';
  if (isAlike(margin, 1)) return `${limitNames[next]} would give way at the same load`;
  if (margin > 1) return `${limitNames[next]} would be next at ${times(margin)} times that load`;
  return `if ${limitNames[first]} could not fail, ${happens[next]} at ${times(margin)} of that load`;
}

/** "The arms break at 84 N (62 to 97 N); the thread at its lock or bend would be next at 1.3 times that load." */
function limitSentence(prediction: CouponPrediction, units: UnitSystem): string {
  const { verdict, peakForce } = prediction;
  const range = rangeWords(peakForce, 'force', units);
  const what = capital(happens[verdict.first]);
  const peak = `${force(peakForce.median, units)} (${range})`;
  if (isAtPeak(prediction)) return `${what} at ${peak}; ${nextWords(prediction)}.`;
  return `${what} at ${force(verdict.load, units)}; ${nextWords(prediction)}. The highest load of the test is ${peak}.`;
}

function splitSentence({ wedge, splitLength, peakForce, verdict }: CouponPrediction, units: UnitSystem): string[] {
  if (wedge === undefined || splitLength === undefined) return [];
  const length = (value: number): string => formatQuantity(value, 'length', { units, digits });
  const broken = wedge.rows.filter((row) => row.broken).length;
  const rows =
    wedge.rows.length === 0
      ? ''
      : broken === 0
        ? ', no row breaks'
        : `, ${broken} of ${wedge.rows.length} rows ${broken === 1 ? 'breaks' : 'break'}`;
  const where = wedge.atRow === undefined ? '' : `, at row ${wedge.atRow + 1}`;
  const range = rangeWords(splitLength, 'length', units);
  const plain = wedge.rows.length === 0 ? '' : `; without rows it would split to ${length(wedge.naturalLength)}`;
  return [
    wedge.arrested
      ? `The split stops ${length(splitLength.median)} from the edge (${range})${where}${rows}${plain}.`
      : `THE SPLIT RUNS THROUGH THE WHOLE DEPTH${rows}.`,
    `The force that holds the mouth open is then ${force(peakForce.median, units)} (${rangeWords(peakForce, 'force', units)}).`,
    ...(verdict.first === 'arm'
      ? ['AN ARM BREAKS when the mouth is held that far open: its surface is strained beyond what it bears.']
      : []),
  ];
}

/** In how many of the samples each thing limits; nothing when it is one in all. */
function sampleSentence(prediction: CouponPrediction, units: UnitSystem): string[] {
  const shares = sharesInOrder(prediction);
  const [first, ...others] = shares;
  if (first === undefined) return [];
  const percent = (share: number): string => formatQuantity(share, 'fraction', { units, digits: 2 });
  if (others.length === 0) return [`In all samples of the uncertain values ${happens[first[0]]}.`];
  return [
    `Over the samples of the uncertain values: ${shares.map(([what, share]) => `${happens[what]} in ${percent(share)}`).join(', ')}.`,
  ];
}

/** What the reader wants to know of a coupon, in sentences. */
export function verdictSentences({ prediction }: CouponResult, units: UnitSystem): string {
  const wedged = splitSentence(prediction, units);
  return [
    ...(wedged.length > 0 ? wedged : [limitSentence(prediction, units)]),
    ...sampleSentence(prediction, units),
  ].join(' ');
}
