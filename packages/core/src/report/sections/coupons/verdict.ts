import type { CouponResult } from '../../../design/index.js';
import type { CouponPrediction, Verdict } from '../../../fracture/index.js';
import { formatQuantity, type UnitSystem } from '../../../quantity/index.js';
import { shareWords } from '../shares.js';
import {
  capital,
  digits,
  happens,
  isAlike,
  isAtPeak,
  limitNames,
  majorityOf,
  rangeWords,
  runsThrough,
  shareOf,
  sharesInWords,
  times,
} from './words.js';

const force = (value: number, units: UnitSystem): string => formatQuantity(value, 'force', { units, digits });

function nextWords({ verdict }: CouponPrediction): string {
  const { first, next, margin } = verdict;
  if (next === undefined || margin === undefined) return 'nothing else is in reach';
  if (isAlike(margin, 1)) return `${limitNames[next]} would give way at the same load`;
  if (margin > 1) return `${limitNames[next]} would be next at ${times(margin)} times that load`;
  return `if ${limitNames[first]} could not fail, ${happens[next]} at ${times(margin)} of that load`;
}

/** "the thread at the crack gives way first" */
const givesWayFirst = (what: Verdict): string => `${limitNames[what]} ${what === 'arm' ? 'give' : 'gives'} way first`;

/** "The arms break at 84 N (62 to 97 N); the thread at its lock or bend would be next at 1.3 times that load." */
function limitSentence(prediction: CouponPrediction, units: UnitSystem): string {
  const { verdict, peakForce } = prediction;
  const range = rangeWords(peakForce, 'force', units);
  const peak = `${force(peakForce.median, units)} (${range})`;
  const most = majorityOf(prediction);
  if (most !== verdict.first) return `${minoritySentence(prediction, most)} The highest load of the test is ${peak}.`;
  const what = capital(happens[verdict.first]);
  if (isAtPeak(prediction)) return `${what} at ${peak}; ${nextWords(prediction)}.`;
  return `${what} at ${force(verdict.load, units)}; ${nextWords(prediction)}. The highest load of the test is ${peak}.`;
}

/** "In 94 % of the samples the arms break; with the middle values the thread at the crack gives way first." */
function minoritySentence(prediction: CouponPrediction, most: Verdict): string {
  return `In ${shareOf(prediction, most)} of the samples ${happens[most]}; with the middle values ${givesWayFirst(prediction.verdict.first)}.`;
}

/** "10 to 20 mm"; an upper end that is the depth is none. */
function splitRange({ coupon, splitLength }: CouponPrediction, units: UnitSystem): string {
  if (splitLength === undefined) return '';
  if (!runsThrough(splitLength.high, coupon)) return rangeWords(splitLength, 'length', units);
  return `${formatQuantity(splitLength.low, 'length', { units, digits })} to the whole depth`;
}

const partOf = (share: number): string =>
  share >= 1 ? 'all samples' : `${shareWords([share, 1 - share])[0]} of the samples`;

function splitSentence(prediction: CouponPrediction, units: UnitSystem): string[] {
  const { wedge, splitLength, peakForce, verdict } = prediction;
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
  const { runsThrough: part = 0 } = prediction;
  const plain = wedge.rows.length === 0 ? '' : `; without rows it would split to ${length(wedge.naturalLength)}`;
  const stops = `${length(splitLength.median)} from the edge (${splitRange(prediction, units)})${where}`;
  return [
    runsThrough(splitLength.median, prediction.coupon)
      ? `THE SPLIT RUNS THROUGH THE WHOLE DEPTH${rows}.`
      : `The split stops ${stops}${rows}${plain}.`,
    ...(part > 0 ? [`It runs through the whole depth in ${partOf(part)}.`] : []),
    `The force that holds the mouth open is then ${force(peakForce.median, units)} (${rangeWords(peakForce, 'force', units)}).`,
    ...(verdict.first === 'arm'
      ? ['AN ARM BREAKS when the mouth is held that far open: its surface is strained beyond what it bears.']
      : majorityOf(prediction) === 'arm'
        ? [`IN ${shareOf(prediction, 'arm')} OF THE SAMPLES AN ARM BREAKS when the mouth is held that far open.`]
        : []),
  ];
}

/** In how many of the samples each thing limits; nothing when it is one in all. */
function sampleSentence(prediction: CouponPrediction): string[] {
  const shares = sharesInWords(prediction);
  const [first, ...others] = shares;
  if (first === undefined) return [];
  if (others.length === 0) return [`In all samples of the uncertain values ${happens[first[0]]}.`];
  return [
    `Over the samples of the uncertain values: ${shares.map(([what, share]) => `${happens[what]} in ${share}`).join(', ')}.`,
  ];
}

/** What the reader wants to know of a coupon, in sentences. */
export function verdictSentences({ prediction }: CouponResult, units: UnitSystem): string {
  const wedged = splitSentence(prediction, units);
  return [...(wedged.length > 0 ? wedged : [limitSentence(prediction, units)]), ...sampleSentence(prediction)].join(
    ' ',
  );
}
