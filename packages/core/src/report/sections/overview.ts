import { couponNotes, loadNotes, type Results } from '../../design/index.js';
import type { Note } from '../../provenance/index.js';
import { formatQuantity, type UnitSystem } from '../../quantity/index.js';
import type { Block, Cell } from '../blocks.js';
import { amount, amountOr, heading, listOf, table } from './build.js';
import { checksTable, laminateFailures } from './checks-glance.js';
import { couponsTable } from './coupons/glance.js';
import { loadFailures, loadsTable } from './loads/glance.js';
import { limitWords, verdictWords } from './target-words.js';

function laminatesTable({ laminates }: Results): Block {
  const rows = laminates.map((one): Cell[] => [
    one.model.name,
    amount(one.stiffness.thickness, 'length'),
    amountOr(one.arealMass.total, 'arealMass', 'no density'),
    amount(one.constants.inPlane.Ex, 'modulus'),
    amount(one.constants.inPlane.Ey, 'modulus'),
    amount(one.constants.inPlane.Gxy, 'modulus'),
    amount(one.constants.flexural.Ex, 'modulus'),
  ]);
  return table(
    'laminates',
    'Laminates at a glance',
    [
      { label: 'Laminate' },
      { label: 'Thickness', kind: 'length' },
      { label: 'Areal mass', kind: 'arealMass' },
      { label: 'Ex', kind: 'modulus' },
      { label: 'Ey', kind: 'modulus' },
      { label: 'Gxy', kind: 'modulus' },
      { label: 'Ex bending', kind: 'modulus' },
    ],
    rows,
  );
}

function stitchingTable({ model }: Results): Block[] {
  if (model.stitching.length === 0) return [];
  const rows = model.stitching.map(({ name, summary }): Cell[] => [
    name,
    amount(summary.penetrationDensity, 'perArea'),
    amount(summary.arealFraction, 'fraction', 3),
    amount(summary.threadLengthPerArea, 'lengthPerArea'),
    summary.stitches === undefined ? '–' : String(summary.stitches),
    summary.consumption.totals === undefined ? '–' : amount(summary.consumption.totals.needed.total, 'longLength'),
    amountOr(summary.sewingTime, 'time', '–'),
  ]);
  return [
    table(
      'stitching',
      'Stitch plans at a glance',
      [
        { label: 'Plan' },
        { label: 'Penetrations', kind: 'perArea' },
        { label: 'Fibre through', kind: 'fraction' },
        { label: 'Thread', kind: 'lengthPerArea' },
        { label: 'Stitches' },
        { label: 'Thread to have', kind: 'longLength' },
        { label: 'Sewing', kind: 'time' },
      ],
      rows,
    ),
  ];
}

/** The targets with their verdicts. */
function targetsTable({ targets }: Results, units: UnitSystem): Block[] {
  if (targets.length === 0) return [];
  const medians = targets.flatMap(({ quantity, kind, median }) =>
    median === undefined
      ? []
      : [`${quantity}: middle values; median ${formatQuantity(median, kind, { units, digits: 3 })}`],
  );
  const rows = targets.map((target): Cell[] => [
    target.quantity,
    amount(target.value, target.kind),
    limitWords(target, units),
    target.relativeMargin === undefined
      ? amount(target.margin, target.kind)
      : amount(target.relativeMargin, 'fraction', 3),
    verdictWords(target),
  ]);
  return [
    table(
      'targets',
      `Targets; the margin is the distance to the nearer limit, as a share of it${medians.length === 0 ? '' : '; what is foretold of coupons is judged by its middle values'}`,
      [{ label: 'Quantity' }, { label: 'Value' }, { label: 'Limit' }, { label: 'Margin' }, { label: 'Verdict' }],
      rows,
    ),
    ...listOf(medians),
  ];
}

/** What does not hold as given, one sentence each. */
const failing = ({ laminates, loads }: Results): string[] => [
  ...laminates.flatMap((one) => laminateFailures(one).map((what) => `FAILS: laminate ${one.model.name}, ${what}`)),
  ...loads.flatMap((one) => loadFailures(one).map((what) => `FAILS: load ${one.model.name}, ${what}`)),
];

/** Every warning with whom it concerns; one that concerns several is said once. */
function overviewWarnings({ laminates, stitching, loads, coupons }: Results): Note[] {
  const all: (readonly [who: string, note: Note, on?: string])[] = [
    ...laminates.flatMap((one) =>
      [one.notes, one.freeEdge?.notes, one.panel?.notes, one.blister?.notes].flatMap((notes = []) =>
        notes.map((note) => [`laminate ${one.model.name}`, note] as const),
      ),
    ),
    // What rows do to tests, and that the price in the plane is a bound, stands with the plan.
    ...stitching.flatMap(({ model, holding }) =>
      [...model.summary.notes, ...holding.notes].map((note) => [`stitch plan ${model.name}`, note] as const),
    ),
    ...loads.flatMap((one) =>
      loadNotes(one).map((note) => [`load ${one.model.name}`, note, `laminate ${one.model.laminate}`] as const),
    ),
    ...coupons.flatMap((one) => couponNotes(one).map((note) => [`coupon ${one.model.name}`, note] as const)),
  ];
  const byText = new Map<string, { readonly note: Note; readonly whose: Set<string> }>();
  for (const [who, note, on] of all) {
    if (note.level !== 'warning') continue;
    const found = byText.get(note.text) ?? { note, whose: new Set() };
    if (on === undefined || !found.whose.has(on)) found.whose.add(who);
    byText.set(note.text, found);
  }
  return [...byText.values()].map(({ note, whose }) => ({ ...note, text: `(${[...whose].join(', ')}) ${note.text}` }));
}

/** What a reader wants to know first. */
export function overviewSection(results: Results, units: UnitSystem): Block[] {
  const warnings = overviewWarnings(results);
  return [
    heading(2, 'At a glance', 'at-a-glance'),
    ...listOf(results.model.notes),
    ...listOf(failing(results)),
    ...targetsTable(results, units),
    laminatesTable(results),
    ...stitchingTable(results),
    ...checksTable(results),
    ...loadsTable(results),
    ...couponsTable(results),
    ...(warnings.length === 0 ? [] : [{ kind: 'notes' as const, notes: warnings }]),
  ];
}
