import type { Block, Cell } from '../../src/report/index.js';
import { bendsOf } from './coupons.js';
import { gates, isKept } from './gates.js';
import { comparisons, dataSets, entry, inPlaneCases, rowOf } from './inputs.js';
import type { StitchValidation } from './results.js';
import type { Statement } from './statements.js';
import { digits, inMm, lawNames, range, useNames } from './words.js';

const column = (label: string) => ({ label });
const use = (dataSet: string): string => useNames[entry(dataSets, dataSet).use];

/** Lengths of zones and the two limiting models. */
export function lengthBlocks({ zones, forms }: StitchValidation): Block[] {
  return [
    { kind: 'heading', level: 2, text: 'Length of the bridged zone', id: 'zones' },
    {
      kind: 'table',
      id: 'stitches-zones',
      caption: 'Bridged zones: printed, by 1.4 to 3.4 bridging lengths, and in the simulated specimens',
      columns: [
        'Data set',
        'Use',
        'Printed, of what',
        'Printed',
        'Law',
        'By bridging length',
        'Simulated',
        'Printed over simulated',
      ].map(column),
      rows: bendsOf.flatMap((bends) =>
        zones[bends].map(({ comparison, row, published, byLength, simulated, shortfall }): Cell[] => [
          comparison.dataSet,
          use(comparison.dataSet),
          row.quantity ?? '',
          inMm(published.low, published.high),
          lawNames[bends],
          inMm(byLength.low, byLength.high),
          inMm(simulated.low, simulated.high),
          digits(shortfall),
        ]),
      ),
    },
    { kind: 'heading', level: 2, text: 'The two limiting models', id: 'forms' },
    {
      kind: 'paragraph',
      text: 'In print the model without pull-out ("continuous") gives about half of what is measured, the one in which all stitches pull out after they break ("modified") agrees. Here each limit stands over the law of the library, in which both sites compete: for one case, and least to greatest over all cases with threads that open.',
    },
    {
      kind: 'table',
      id: 'stitches-forms',
      caption: 'Work of one penetration by either limit',
      columns: ['Data set', 'Use', 'Printed, of what', 'Printed', 'Law', 'Limit over law', 'Over all cases'].map(
        column,
      ),
      rows: bendsOf.flatMap((bends) =>
        forms[bends].map(({ comparison, row, published, predicted, range: all }): Cell[] => [
          comparison.dataSet,
          use(comparison.dataSet),
          row.quantity ?? '',
          digits(published),
          lawNames[bends],
          digits(predicted),
          range(all.low, all.high),
        ]),
      ),
    },
  ];
}

/** A percentage without decimals, never "-0". */
const whole = (value: number): string => String(Math.round(value) + 0);

/** Changes in the plane beside the estimates. */
export function inPlaneBlocks({ inPlane }: StitchValidation): Block[] {
  return [
    { kind: 'heading', level: 2, text: 'In the plane', id: 'in-plane' },
    {
      kind: 'paragraph',
      text: 'The library gives estimates here, each with the range of its parameters. They are no bounds, as the column of misses shows, and gains are not covered at all: every estimate is a loss or none. A printed value is looked for in the range; of a printed range, how far ours reaches beyond it. Tension counts cut fibres alone: -4 or -5 % is what they come to with the widest hole and three in ten of the fibres under the needle cut, and no limit to what can be lost; printed losses are far larger. The modulus counts waviness alone: -2 % is that of the widest disturbed strip and the shortest pocket. What else takes strength and stiffness in the print (pockets where cracks begin, voids, fibre content, surface loops) is in neither.',
    },
    {
      kind: 'table',
      id: 'stitches-in-plane',
      caption: 'Changes in percent',
      columns: [
        'Data set',
        'Use',
        'Loading',
        'Printed, of what',
        'Printed',
        'How obtained',
        'Estimated',
        'Missed by',
        'Cases',
      ].map(column),
      rows: inPlane.map(({ comparison, row, published, estimated, missedBy }): Cell[] => [
        comparison.dataSet,
        use(comparison.dataSet),
        row.loading ?? '',
        row.quantity ?? '',
        range(published.low, published.high, 3),
        row.access,
        `${whole(estimated.low)} to ${whole(estimated.high)}`,
        missedBy === 0 ? '-' : digits(missedBy),
        (comparison.cases ?? []).map((id) => entry(inPlaneCases, id).label).join('; '),
      ]),
    },
  ];
}

/** Printed numbers for which there is no model. */
export function unpredictedBlocks(): Block[] {
  const rows = comparisons.filter(({ compare }) => compare === 'none');
  return [
    { kind: 'heading', level: 2, text: 'Numbers without a prediction', id: 'unpredicted' },
    {
      kind: 'table',
      id: 'stitches-unpredicted',
      caption: 'Printed numbers that the library does not predict',
      columns: ['Data set', 'Use', 'Loading', 'Printed, of what', 'Printed', 'How obtained', 'Why not'].map(column),
      rows: rows.map((comparison): Cell[] => {
        const row = rowOf(comparison);
        const { value, low, high, unit } = row;
        const number = value === undefined ? range(low ?? 0, high ?? 0) : digits(value, 4);
        return [
          comparison.dataSet,
          use(comparison.dataSet),
          row.loading ?? '',
          row.quantity ?? '',
          unit === undefined || unit === '' ? number : `${number} ${unit}`,
          row.access,
          comparison.why ?? '',
        ];
      }),
    },
  ];
}

/** What both laws say of a statement: once where they say the same. */
function found({ findings, why }: Statement): string {
  if (findings === undefined) return `not checked: ${why ?? ''}`;
  const { rigid, yielding } = findings;
  if (rigid.found === yielding.found) return rigid.found;
  return `${lawNames.rigid}: ${rigid.found}; ${lawNames.yielding}: ${yielding.found}`;
}

function verdict({ findings }: Statement): string {
  if (findings === undefined) return '-';
  const { rigid, yielding } = findings;
  if (rigid.holds === yielding.holds) return rigid.holds ? 'yes' : 'NO';
  return rigid.holds ? 'rigid bends only' : 'bends that give way only';
}

/** Statements in print beside what the mechanics says. */
export function statementBlocks({ statements }: StitchValidation): Block[] {
  return [
    { kind: 'heading', level: 2, text: 'Statements', id: 'statements' },
    {
      kind: 'table',
      id: 'stitches-statements',
      caption: 'Statements in print and what the model says of them',
      columns: ['Data set', 'Use', 'Statement', 'How obtained', 'Found', 'Holds'].map(column),
      rows: statements.map((one): Cell[] => [
        one.dataSet,
        use(one.dataSet),
        one.claim,
        rowOf(one).access,
        found(one),
        verdict(one),
      ]),
    },
  ];
}

/** What the printed rows that may gate demand, and whether it is kept. */
export function gateBlocks(found: StitchValidation): Block[] {
  return [
    { kind: 'heading', level: 2, text: 'Gates', id: 'gates' },
    {
      kind: 'paragraph',
      text: 'A gate is independent where its band owes nothing to the printed number that it is asked of. Two kinds say less than they seem to. Bands on zones, and on the growth over which toughness rises, lean on the shortfall of 1 to 4, which is itself made from these printed zones: such a gate keeps the program from drifting and tests nothing; it is not counted as kept. Wide bands are passed by much that is wrong; they are counted by themselves. Only rows that were read may gate. Rigid bends are what the library takes unless told otherwise. A gate is asked of it alone where the other law was found not to keep it; its value stands there all the same.',
    },
    {
      kind: 'table',
      id: 'stitches-gates',
      caption: 'Gates that the tests of the library keep',
      columns: [
        'Data set',
        'What',
        'Band',
        'Why this band',
        'Rigid bends',
        'Bends that give way',
        'Asked of',
        'Independent',
        'Kept',
      ].map(column),
      rows: gates(found).map((gate): Cell[] => [
        gate.dataSet,
        gate.what,
        gate.band,
        gate.because,
        gate.value.rigid,
        gate.value.yielding,
        gate.laws.length === bendsOf.length ? 'both' : gate.laws.map((bends) => lawNames[bends]).join(', '),
        gate.weight === 'independent' ? 'yes' : gate.weight === 'wide' ? 'yes, but wide' : 'no',
        isKept(gate) ? 'yes' : 'NO',
      ]),
    },
  ];
}
