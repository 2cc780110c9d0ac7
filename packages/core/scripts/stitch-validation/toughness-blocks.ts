import type { Block, Cell } from '../../src/report/index.js';
import type { Compared, ToughnessRow } from './compare-toughness.js';
import { type Bends, bendsOf, densityOf } from './coupons.js';
import { type Case, cases, dataSets, entry, inputOf, qualityOf } from './inputs.js';
import type { StitchValidation } from './results.js';
import { digits, inMm, lawNames, overstated, range, siteNames, straightBend, useNames, withRange } from './words.js';

const column = (label: string) => ({ label });

const printedNumber = ({ row }: ToughnessRow): string => {
  const { value, low, high, unit } = row;
  const number = value === undefined ? range(low ?? 0, high ?? 0) : digits(value, 4);
  return unit === undefined || unit === '' ? number : `${number} ${unit}`;
};

const error = ({ error: e }: Compared): string => (e < 0 ? '' : '+') + e.toFixed(2);
const yes = ({ inside }: Compared): string => (inside ? 'yes' : 'no');

function toughnessTable(rows: readonly ToughnessRow[], bends: Bends): Block {
  return {
    kind: 'table',
    id: `stitches-${bends}`,
    caption: `Toughness, ${lawNames[bends]}: median and range of nine in ten`,
    columns: [
      'Data set',
      'Use',
      'Loading',
      'Printed, of what',
      'Printed',
      'How obtained',
      'Steady',
      'Specimen',
      'ln error, steady',
      'ln error, specimen',
      'Printed in range, steady',
      'Printed in range, specimen',
      'Gives way',
    ].map(column),
    rows: rows.map((one): Cell[] => {
      const { comparison, row, steady, specimen, failures } = one;
      return [
        comparison.dataSet,
        useNames[entry(dataSets, comparison.dataSet).use],
        row.loading ?? '',
        row.quantity ?? '',
        printedNumber(one),
        row.access,
        withRange(steady),
        withRange(specimen),
        error(steady),
        error(specimen),
        yes(steady),
        yes(specimen),
        failures.map((site) => siteNames[site]).join('; '),
      ];
    }),
  };
}

const holdsBy = ({ thread, rod, stitch }: Case): string =>
  rod === undefined ? `${thread?.id}, ${stitch?.id}` : `rod of ${rod.diameter} ${rod.unit}`;

/** What was put in for each case, and what each comes to in a specimen. */
function casesTable({ predictions }: StitchValidation): Block {
  return {
    kind: 'table',
    id: 'stitches-cases',
    caption:
      'Cases: inputs, and for both laws (rigid bends first, once where they agree) the bridging length, the row distance over it, the longest bridged stretch of the simulated specimen, its largest displacement over crack length as a row gives way and what the loads overstate there',
    columns: [
      'Case',
      'What it is',
      'Mode',
      'Arm',
      'Bond kJ/m²',
      'Held by',
      'Penetrations per mm²',
      'Bridging length',
      'Row distance over it',
      'Bridged stretch',
      'Displacement over crack length, at most',
      'Loads read, over what they should',
      'Arms break at kJ/m²',
      'How the inputs are known',
    ].map(column),
    rows: Object.entries(cases).map(([id, one]): Cell[] => {
      const both = bendsOf.map((bends) => entry(predictions, id)[bends].opening);
      const found = both.flatMap((opening) => opening ?? []);
      const over = (of: (opening: (typeof found)[number]) => string) => [...new Set(found.map(of))].join('; ') || '-';
      const h = inputOf(one, 'armThickness').value;
      return [
        id,
        one.label,
        one.mode,
        `${one.arm.ply}, ${digits(1e3 * h)} mm`,
        digits(inputOf(one, 'bondToughness').value / 1e3, 3),
        holdsBy(one),
        digits(densityOf(one) / 1e6, 3),
        over(({ bridgingLength }) => inMm(bridgingLength, bridgingLength)),
        over(({ rows }) => digits(rows)),
        over(({ zone }) => inMm(zone, zone)),
        over(({ bend }) => bend.toFixed(2)),
        over(({ bend }) => overstated(bend)),
        over(({ ceiling }) => (ceiling === undefined ? '-' : digits(ceiling / 1e3))),
        qualityOf(one),
      ];
    }),
  };
}

/** Printed toughnesses beside both columns by both laws, and the cases behind them. */
export function toughnessBlocks(found: StitchValidation): Block[] {
  return [
    { kind: 'heading', level: 2, text: 'Toughness', id: 'toughness' },
    {
      kind: 'paragraph',
      text: 'Steady: bond and stitches with a full bridged zone. Specimen: what a tester reads by the loads off a specimen of usual size whose rows break one at a time; in flexure the greatest value, where no row gives way. Arms cannot break in these columns, as if tabs or a fixture held them. Both columns stand for every row; the better one is never chosen. A printed range counts as its geometric mean; where several cases belong to a row, the geometric mean of their medians and their widest range. What gave way in the tests is not in the print at hand, but for the arms; see the statements.',
    },
    ...bendsOf.map((bends) => toughnessTable(found.toughness[bends], bends)),
    casesTable(found),
    {
      kind: 'paragraph',
      text: `Displacement: the arms are linear beams, which hold to a displacement of about ${straightBend} of the crack length (common practice, no source). Beyond, the arms pull the load line in, its lever is shorter than the crack, and the loads read too high, by about 1/(1 - 0.3 (displacement over crack length)^2), the large-displacement factor of ISO 15024 (recalled). It is given at the onset where it is largest; the specimen column, a mean over all onsets, is not corrected by it.`,
    },
  ];
}
