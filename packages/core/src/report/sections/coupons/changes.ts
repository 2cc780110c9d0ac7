import type { CouponResult } from '../../../design/index.js';
import type { CouponChange, CouponPrediction } from '../../../fracture/index.js';
import { formatQuantity, type UnitSystem } from '../../../quantity/index.js';
import type { Block, Cell } from '../../blocks.js';
import { amount, heading, listOf, table, withoutNoise } from '../build.js';
import { noReturnWords } from './density.js';
import { digits, limitNames, limitWords, times } from './words.js';

type Name = CouponChange['name'];

/** The input, and the change in words when it becomes less or more. */
const words: Readonly<Record<Name, readonly [input: string, less: string, more: string]>> = {
  pitch: ['pitch', 'a finer pitch', 'a coarser pitch'],
  rowSpacing: ['row spacing', 'rows closer together', 'rows further apart'],
  threadLinearDensity: ['thread size', 'a finer thread', 'a heavier thread'],
  anchorEfficiency: ['strength of lock or bend', 'a weaker lock', 'a better lock'],
  armThickness: ['arm thickness', 'thinner arms', 'thicker arms'],
  bondToughness: ['toughness of the bond', 'a weaker bond', 'a tougher bond'],
};

const changeWords = ({ name, factor }: CouponChange): string => words[name][factor < 1 ? 1 : 2];

function byHowMuch({ name, factor }: CouponChange, units: UnitSystem): string {
  const percent = formatQuantity(Math.abs(factor - 1), 'fraction', { units, digits: 2 });
  return `${words[name][0]} ${percent} ${factor < 1 ? 'less' : 'more'}`;
}

function changesTable({ changes }: CouponPrediction, id: string, units: UnitSystem): Block {
  const rows = changes.map((change): Cell[] => [
    changeWords(change),
    byHowMuch(change, units),
    amount(change.peakForce, 'force', digits),
    amount(change.toughness, 'toughness', digits),
    limitWords[change.first],
    amount(withoutNoise(change.elasticity.peakForce, 1), 'number', 2),
    amount(withoutNoise(change.elasticity.toughness, 1), 'number', 2),
  ]);
  return table(
    `${id}-changes`,
    'What a change would do, one at a time, with the middle values of the parameters; the last two columns: percent for each percent of the input, over the whole change',
    [
      { label: 'Change' },
      { label: 'By how much' },
      { label: 'Peak force', kind: 'force' },
      { label: 'Toughness', kind: 'toughness' },
      { label: 'Gives way' },
      { label: 'Peak force, % per %' },
      { label: 'Toughness, % per %' },
    ],
    rows,
  );
}

/** Gains smaller than this are none. */
const least = 1.02;

const most = (changes: readonly CouponChange[], of: (change: CouponChange) => number): CouponChange | undefined =>
  changes.reduce<CouponChange | undefined>(
    (best, one) => (best === undefined || of(one) > of(best) ? one : best),
    undefined,
  );

/** Which change moves the verdict, and which gains most. */
export function adviceSentences(
  { changes, verdict, peakForce, toughness }: CouponPrediction,
  units: UnitSystem,
): string[] {
  if (changes.length === 0) return [];
  const moving = changes.filter(({ first }) => first !== verdict.first);
  const by = (change: CouponChange): string => `${changeWords(change)} (${byHowMuch(change, units)})`;
  const force = (value: number): string => formatQuantity(value, 'force', { units, digits });
  const tough = (value: number): string => formatQuantity(value, 'toughness', { units, digits });
  const forceGain = ({ peakForce: other }: CouponChange): number => other / peakForce.nominal;
  const toughGain = ({ toughness: other }: CouponChange): number =>
    toughness === undefined ? 0 : other / toughness.specimen.nominal;
  const strongest = most(changes, forceGain);
  const toughest = most(changes, toughGain);
  return [
    moving.length === 0
      ? `None of these changes moves what gives way first: ${limitNames[verdict.first]}.`
      : `What gives way first is moved by ${moving.map((change) => `${by(change)}: then ${limitNames[change.first]}`).join('; ')}.`,
    strongest === undefined || forceGain(strongest) < least
      ? 'None of them raises the peak force noticeably.'
      : `Most peak force is gained by ${by(strongest)}: ${times(forceGain(strongest))} times, to ${force(strongest.peakForce)}.`,
    ...(toughness === undefined
      ? []
      : [
          toughest === undefined || toughGain(toughest) < least
            ? 'None of them raises the toughness noticeably.'
            : `Most toughness is gained by ${by(toughest)}: ${times(toughGain(toughest))} times, to ${tough(toughest.toughness)}.`,
        ]),
  ];
}

/** What could be changed, and what it would bring; absent where nothing was varied. */
export function adviceBlocks(one: CouponResult, id: string, figure: readonly Block[], units: UnitSystem): Block[] {
  const { prediction } = one;
  const sentences = [...adviceSentences(prediction, units), ...noReturnWords(one, units)];
  if (prediction.changes.length === 0 && figure.length === 0) return listOf(sentences);
  return [
    heading(3, 'What a change would do', `${id}-advice`),
    ...listOf(sentences),
    ...(prediction.changes.length === 0 ? [] : [changesTable(prediction, id, units)]),
    ...figure,
  ];
}
