import type { StitchGrowth, StitchHolding, StitchingResult, StitchLaw } from '../../../design/index.js';
import { formatNumber, formatQuantity, type KindName, type UnitSystem } from '../../../quantity/index.js';
import type { BridgingFailure, Interval } from '../../../stitch/index.js';
import type { Block, Cell } from '../../blocks.js';
import { amount, amountOr, heading, listOf, table } from '../build.js';
import { furtherNotes } from '../further-notes.js';
import { shareWords } from '../shares.js';
import { bridgingFigure } from './bridging-figure.js';

/** What gives way, as a sentence. */
const waysWords: Readonly<Record<BridgingFailure, string>> = {
  threadAtCrack: 'the thread breaks in the plane of the crack',
  threadAtAnchor: 'the thread breaks at its lock or at its bend over a face and is drawn out',
  threadPullOut: 'the thread is drawn out without breaking',
};

function placeWords({ crack }: StitchHolding, units: UnitSystem): string[] {
  if (crack === undefined) return [];
  const { depth, below, inside } = crack;
  const where =
    inside === undefined
      ? `between layers ${below} and ${below + 1}`
      : `which lies inside layer ${inside}: a crack would run along one of its faces`;
  return [
    `crack at mid-plane, ${formatQuantity(depth, 'length', { units })} below either face, ${where} (layers counted from the tool side)`,
  ];
}

/** "opening: the thread breaks ... (85 % of samples)". */
function wayWords(name: string, { law, interval }: StitchLaw): string {
  if (interval === undefined || law.measured) return `${name}, as measured: ${waysWords[law.failure]}`;
  const ways = (Object.entries(interval.failures) as [BridgingFailure, number][])
    .filter(([, share]) => share > 0)
    .sort(([, a], [, b]) => b - a);
  const [only] = ways;
  if (ways.length === 1 && only !== undefined) return `${name}: ${waysWords[only[0]]} in all samples`;
  const shares = shareWords(ways.map(([, share]) => share));
  const parts = ways.map(([way], i) => `${waysWords[way]} in ${shares[i]}`);
  return `${name}, of the samples: ${parts.join('; ')}`;
}

const edgeBandWords =
  'rows near an edge are judged one by one: a crack from the edge meets one row after the other and never a full bridged zone, so that no steady toughness is given for them; simulate them with a coupon of type wedge';

/** Share of a range within which a value is about its median. */
const nearMiddle = 0.1;

function placeInRange(value: number, { median, low, high }: Interval): string {
  if (value < low) return 'below the low end of its range';
  if (value > high) return 'above the high end of its range';
  if (Math.abs(value - median) <= nearMiddle * (high - low)) return 'about the middle of its range';
  return `in the ${value < median ? 'lower' : 'upper'} half of its range`;
}

/** Where the single values of a computed law lie in their ranges; nothing where all are about the middle. @param rigid bends and locks are taken not to give */
export function placesInRanges({ law, interval }: StitchLaw, rigid: boolean): string[] {
  if (interval === undefined || law.measured === true) return [];
  const places = [
    ['peak force', placeInRange(law.peak.force, interval.peak)],
    ['opening at the peak', placeInRange(law.peak.opening, interval.opening)],
    ['work', placeInRange(law.work, interval.work)],
  ] as const;
  if (places.every(([, place]) => place.startsWith('about'))) return [];
  const give =
    rigid && law.peak.opening < interval.opening.median
      ? ': they take none of the give of bends and locks that nobody has measured'
      : '';
  return [`the single values of opening: ${places.map(([name, place]) => `${name} ${place}`).join(', ')}${give}`];
}

/** What gives way, and what the reader must know of the values. */
function statements({ model, holding }: Pick<StitchingResult, 'model' | 'holding'>, units: UnitSystem): string[] {
  const { opening, sliding, missing, edgeBand, across, along, toughnessAdded } = holding;
  const { parameters, bends } = model.bridging;
  const rigid = parameters.beddingIn === undefined && bends !== 'yielding';
  const ceilings = [across, along].flatMap((one) => (one?.ceiling === undefined ? [] : [one.ceiling]));
  const ceiling = Math.min(...ceilings);
  const show = (value: number): string => formatQuantity(value, 'toughness', { units });
  return [
    ...placeWords(holding, units),
    ...(opening === undefined ? [] : [wayWords('opening', opening)]),
    ...(sliding === undefined ? [] : [wayWords('sliding', sliding)]),
    ...(opening === undefined ? [] : placesInRanges(opening, rigid)),
    ...(edgeBand ? [edgeBandWords] : []),
    ...(ceilings.length > 0 && toughnessAdded !== undefined && toughnessAdded.value > ceiling
      ? [
          `THE HALVES OF THE LAMINATE BREAK FIRST: they reach their breaking strain at the crack tip at ${show(ceiling)}, less than the ${show(toughnessAdded.value)} that the stitches would add`,
        ]
      : []),
    ...(missing.length === 0
      ? []
      : [`${opening === undefined ? 'not computed: it' : 'computed in part: the rest'} needs ${missing.join(', ')}`]),
  ];
}

/** Value, median and range of one quantity of a law. */
function row(label: string, kind: KindName, value: number, interval: Interval | undefined): Cell[] {
  const shown = (number: number | undefined): Cell => (number === undefined ? '–' : amount(number, kind, 3));
  return [label, amount(value, kind, 3), shown(interval?.low), shown(interval?.median), shown(interval?.high)];
}

function lawRows(name: string, { law, interval }: StitchLaw): Cell[][] {
  return [
    row(`${name}: peak force`, 'force', law.peak.force, interval?.peak),
    row(`${name}: peak at`, 'length', law.peak.opening, interval?.opening),
    row(`${name}: work`, 'energy', law.work, interval?.work),
  ];
}

/** The laws that a holding has, each by its name for readers. */
function namedLaws({ opening, computedOpening, sliding }: StitchHolding): [name: string, law: StitchLaw][] {
  const measured = opening?.law.measured === true;
  const all: [string, StitchLaw | undefined][] = [
    [measured ? 'opening, measured' : 'opening', opening],
    ['opening, computed', computedOpening],
    ['sliding', sliding],
  ];
  return all.flatMap(([name, law]) => (law === undefined ? [] : [[name, law]]));
}

function lawTable(holding: StitchHolding, id: string): Block {
  return table(
    `${id}-law`,
    'One stitch against a crack at mid-plane: nine in ten samples of what was not measured lie between low and high',
    [{ label: 'One stitch' }, { label: 'Single value' }, { label: 'Low' }, { label: 'Median' }, { label: 'High' }],
    namedLaws(holding).flatMap(([name, law]) => lawRows(name, law)),
  );
}

function addedFacts({ toughnessAdded }: StitchHolding, units: UnitSystem): Block[] {
  if (toughnessAdded === undefined) return [];
  const { value, interval } = toughnessAdded;
  const show = (number: number): string => formatQuantity(number, 'toughness', { units, digits: 3 });
  const range = interval === undefined ? '' : `; nine in ten samples: ${show(interval.low)} to ${show(interval.high)}`;
  return [
    {
      kind: 'facts',
      items: [
        {
          label: 'Toughness the stitches add',
          value: amount(value, 'toughness'),
          remark: `in opening, once the bridged zone is full: work of one stitch times stitches per area${range}`,
        },
      ],
    },
  ];
}

function growthRow(name: string, { bridgingLength, zone, rowDistance, discreteness, ceiling }: StitchGrowth): Cell[] {
  return [
    name,
    amount(bridgingLength, 'length', 3),
    amount(zone.low, 'length', 2),
    amount(zone.high, 'length', 2),
    amount(zone.needed, 'length', 2),
    amountOr(rowDistance, 'length', 'one row'),
    discreteness === undefined ? '–' : formatNumber(discreteness.ratio, 2),
    ceiling === undefined ? 'no strengths' : amount(ceiling, 'toughness', 3),
  ];
}

function growthTable({ across, along }: StitchHolding, id: string): Block[] {
  if (across === undefined) return [];
  return [
    table(
      `${id}-zone`,
      'How long a bridged zone is, with the halves of the laminate as arms: as computed, and the growth among stitches that a full one may need; the distance of the rows over the bridging length tells how coarse they are; last the toughness at which the arms reach their breaking strain at the crack tip',
      [
        { label: 'Growth' },
        { label: 'Bridging length', kind: 'length' },
        { label: 'Zone from', kind: 'length' },
        { label: 'to', kind: 'length' },
        { label: 'Needed', kind: 'length' },
        { label: 'Rows apart', kind: 'length' },
        { label: 'Over bridging length' },
        { label: 'Arms break', kind: 'toughness' },
      ],
      [growthRow('across the rows', across), ...(along === undefined ? [] : [growthRow('along the rows', along)])],
    ),
  ];
}

/** What one stitch holds; where a value is wanting, which. */
export function stitchHoldingBlocks({ model, holding }: StitchingResult, planId: string, units: UnitSystem): Block[] {
  const id = `${planId}-bridging`;
  const laws = namedLaws(holding);
  return [
    heading(3, 'What one stitch holds', id),
    ...listOf(statements({ model, holding }, units)),
    ...(laws.length === 0 ? [] : [lawTable(holding, id), bridgingFigure(model, laws, id, units)]),
    ...addedFacts(holding, units),
    ...growthTable(holding, id),
    furtherNotes([...holding.notes, ...holding.growthNotes], model.summary.notes),
  ];
}
