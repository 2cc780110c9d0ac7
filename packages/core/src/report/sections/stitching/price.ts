import type { LoadedFibres, StitchingResult, StitchPrice } from '../../../design/index.js';
import { formatNumber, formatQuantity, type UnitSystem } from '../../../quantity/index.js';
import type { Estimate, PublishedChange } from '../../../stitch/index.js';
import type { Block, Cell } from '../../blocks.js';
import { amount, heading, listOf, table, withoutNoise } from '../build.js';
import { furtherNotes } from '../further-notes.js';

/** "-45 to +20 %": changes in percent. */
function percentRange(low: number, high: number): string {
  const signed = (factor: number): string => {
    const percent = withoutNoise(100 * (factor - 1), 100);
    return `${percent > 0 ? '+' : ''}${formatNumber(percent, 2)}`;
  };
  const [from, to] = [signed(low), signed(high)];
  return from === to ? `${to} %` : `${from} to ${to} %`;
}

/** All that is in print together. */
const spread = (published: readonly PublishedChange[]): string =>
  percentRange(Math.min(...published.map(({ low }) => low)), Math.max(...published.map(({ high }) => high)));

/** What is in print of changes whose words match, with the sources. */
function inPrint(published: readonly PublishedChange[], words: readonly RegExp[]): string {
  const found = published.filter(({ loading, quantity }) => words.every((word) => word.test(`${loading} ${quantity}`)));
  if (found.length === 0) return '–';
  const keys = [...new Set(found.map(({ source }) => source))];
  return `${spread(found)} (${keys.join(', ')})`;
}

const change = (factor: number): Cell => amount(withoutNoise(factor - 1, 1), 'fraction', 2);

const boundRow = (label: string, { value, low, high }: Estimate, print: string): Cell[] => [
  label,
  change(value),
  change(low),
  change(high),
  print,
];

function directionRows(where: string, { found }: LoadedFibres): Cell[][] {
  const print = (...words: RegExp[]): string => inPrint(found.published, words);
  return [
    boundRow(`Modulus ${where}`, found.modulus, print(/modul/)),
    boundRow(
      `Compression strength ${where}, whole section as weak as beside a hole`,
      found.compression.lower,
      print(/compression/, /strength/),
    ),
    boundRow(`the same, mean over the width`, found.compression.upper, ''),
    boundRow(`Tension strength ${where}, cut fibres alone`, found.tension, print(/tensi/, /strength/)),
  ];
}

function commonRows({ perforation, crowding, published }: NonNullable<StitchPrice['common']>): Cell[][] {
  const { lower, upper } = crowding;
  const room = { value: upper.value, low: lower, high: upper.high };
  return [
    boundRow(
      'Bending across a row (tear-off line), holes as gaps',
      perforation.lower,
      inPrint(published, [/flexure/, /strength/]),
    ),
    boundRow('the same, cut fibres alone', perforation.upper, ''),
    boundRow('Thickness under a soft tool', room, '–'),
    boundRow('Fibre content between holes, closed tool', room, '–'),
    ['Interlaminar shear strength', 'not estimated', '–', '–', inPrint(published, [/interlaminar/])],
  ];
}

function priceTable({ along, across, common }: StitchPrice, id: string): Block[] {
  if (common === undefined) return [];
  return [
    table(
      `${id}-bounds`,
      'Change against the laminate without stitches: by the single values, least and most over the ranges of what was not measured, and what is in print',
      [{ label: 'What' }, { label: 'Change' }, { label: 'From' }, { label: 'To' }, { label: 'In print' }],
      [
        ...(along === undefined ? [] : directionRows('along the rows', along)),
        ...(across === undefined ? [] : directionRows('across the rows', across)),
        ...commonRows(common),
      ],
    ),
  ];
}

function fibreWords(where: string, loaded: LoadedFibres | undefined, units: UnitSystem): string[] {
  if (loaded === undefined) return [];
  const { layer, material, angle, spacing } = loaded;
  const distance = formatQuantity(spacing, 'length', { units });
  return [
    `loaded ${where} the rows, the stiffest fibres are those of layer ${layer} (${material}, fibres at ${formatQuantity(angle, 'angle')}): holes ${distance} apart across them`,
  ];
}

function statements(price: StitchPrice, units: UnitSystem): string[] {
  const { along, across, common, fibreVolumeFraction: Vf, missing } = price;
  const content = (factor: number): string => formatQuantity((Vf ?? 0) * factor, 'fraction', { units, digits: 3 });
  return [
    ...(common === undefined
      ? []
      : [
          `bounds to plan with, no predictions: studies in print disagree even in sign, from ${spread(common.published)}`,
        ]),
    ...fibreWords('along', along, units),
    ...fibreWords('across', across, units),
    ...(common === undefined || Vf === undefined
      ? []
      : [
          `in a closed tool the thread and its resin pockets crowd the fibres between the holes from ${content(1)} to ${content(common.crowding.lower)} by the thread alone, to ${content(common.crowding.upper.value)} with pockets`,
        ]),
    ...(missing.length === 0
      ? []
      : [`${common === undefined ? 'not estimated: it' : 'estimated in part: the rest'} needs ${missing.join(', ')}`]),
  ];
}

/** What stitching costs in the plane; where a value is wanting, which. */
export function stitchPriceBlocks(
  { model, holding, price }: StitchingResult,
  planId: string,
  units: UnitSystem,
): Block[] {
  const id = `${planId}-price`;
  return [
    heading(3, 'What stitching costs in the plane', id),
    ...listOf(statements(price, units)),
    ...priceTable(price, id),
    furtherNotes(price.notes, [...model.summary.notes, ...holding.growthNotes]),
  ];
}
