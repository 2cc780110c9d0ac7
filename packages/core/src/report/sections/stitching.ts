import type { StitchingModel, StitchingResult } from '../../design/index.js';
import type { UnitSystem } from '../../quantity/index.js';
import { stitchType } from '../../stitch/index.js';
import type { Block, Cell } from '../blocks.js';
import { amount, heading, listOf, slug, table } from './build.js';
import { stitchDrawing } from './stitch-drawing.js';
import { stitchHoldingBlocks } from './stitching/bridging.js';
import { stitchPriceBlocks } from './stitching/price.js';

type Fact = { readonly label: string; readonly value: Cell; readonly remark?: string };

const patternWords: Record<StitchingModel['plan']['pattern']['kind'], string> = {
  parallel: 'parallel rows, holes side by side',
  staggered: 'parallel rows, every other row shifted along',
  zigzag: 'zigzag rows',
  crossing: 'two sets of crossing rows',
  rows: 'rows that follow the edge',
};

/** The lengths that the operator sets; edge rows have theirs in the table of rows. */
function measures(pattern: StitchingModel['plan']['pattern']): Fact[] {
  if (pattern.kind === 'rows')
    return pattern.rows.map((row, i) => ({ label: `Row ${i + 1} from the edge`, value: amount(row.offset, 'length') }));
  return [
    { label: 'Pitch', value: amount(pattern.pitch, 'length') },
    { label: 'Row spacing', value: amount(pattern.rowSpacing, 'length') },
    ...(pattern.kind === 'zigzag' ? [{ label: 'Bight', value: amount(pattern.swing, 'length') }] : []),
    ...(pattern.kind === 'staggered'
      ? [{ label: 'Shift of every other row', value: amount(pattern.shift ?? 0.5, 'fraction'), remark: 'of the pitch' }]
      : []),
    ...(pattern.kind === 'crossing'
      ? [
          { label: 'Pitch of the second set', value: amount(pattern.second.pitch, 'length') },
          { label: 'Row spacing of the second set', value: amount(pattern.second.rowSpacing, 'length') },
          { label: 'Angle between the sets', value: amount(pattern.angle ?? 90, 'angle') },
        ]
      : []),
  ];
}

function setUp({ plan, laminate }: StitchingModel): Fact[] {
  const type = stitchType(plan.type);
  return [
    ...(laminate === undefined ? [] : [{ label: 'Laminate', value: laminate }]),
    {
      label: 'Stitch type',
      value: type.title,
      remark: type.number === undefined ? 'hand stitch' : `ISO 4915 number ${type.number}`,
    },
    { label: 'Pattern', value: patternWords[plan.pattern.kind] },
    ...measures(plan.pattern),
    { label: 'Needle thread', value: `${plan.needleThread.name}`, remark: 'linear density below' },
    { label: 'Linear density of the needle thread', value: amount(plan.needleThread.linearDensity, 'linearDensity') },
    ...(plan.underThread === undefined
      ? []
      : [
          {
            label: 'Linear density of the under thread',
            value: amount(plan.underThread.linearDensity, 'linearDensity'),
            remark: plan.underThread.name,
          },
        ]),
    { label: 'Dry thickness under the needle', value: amount(plan.dryThickness, 'length') },
  ];
}

function across(summary: StitchingModel['summary']): Fact[] {
  const met = (label: string, rows: StitchingModel['summary']['rowsMetAlong'] | undefined): Fact[] =>
    rows === undefined
      ? []
      : [
          {
            label,
            value: amount(rows.spacing, 'length'),
            remark: 'mean distance between successive rows of holes that a straight crack front meets',
          },
        ];
  return [
    ...met('Rows met growing across the rows', summary.rowsMetAcross),
    ...met('Rows met growing along the rows', summary.rowsMetAlong),
  ];
}

function density({ summary: s }: StitchingModel): Fact[] {
  const holesDiffer = Math.abs(s.holeDensity - s.penetrationDensity) > 1e-9 * s.penetrationDensity;
  const sidesDiffer = Math.abs(s.arealFractionAbove - s.arealFractionBelow) > 1e-9 * s.arealFraction;
  return [
    { label: 'Penetrations', value: amount(s.penetrationDensity, 'perArea'), remark: 'passes of the needle per area' },
    ...(holesDiffer ? [{ label: 'Distinct holes', value: amount(s.holeDensity, 'perArea') }] : []),
    { label: 'Strands through a hole', value: String(s.strands) },
    {
      label: 'Fibre through the thickness',
      value: amount(s.arealFraction, 'fraction', 3),
      remark: 'area of thread fibre per area of laminate',
    },
    ...(sidesDiffer
      ? [
          { label: 'above the lock', value: amount(s.arealFractionAbove, 'fraction', 3) },
          { label: 'below the lock', value: amount(s.arealFractionBelow, 'fraction', 3) },
        ]
      : []),
    { label: 'Diameter of one needle strand', value: amount(s.threadDiameter, 'length', 3) },
    { label: 'Diameter of the strands in a hole', value: amount(s.bundleDiameter, 'length', 3) },
    { label: 'Nearest neighbouring hole', value: amount(s.nearestNeighbour, 'length') },
    ...across(s),
  ];
}

function thread({ summary: s }: StitchingModel): Fact[] {
  return [
    { label: 'Thread per stitch', value: amount(s.threadLengthPerStitch, 'length') },
    { label: 'Thread per length of row', value: amount(s.threadLengthPerRowLength, 'lengthPerLength') },
    { label: 'Thread per area', value: amount(s.threadLengthPerArea, 'lengthPerArea') },
    { label: 'Added areal mass', value: amount(s.addedArealMass, 'arealMass'), remark: 'dry thread' },
    {
      label: 'Added thickness',
      value: amount(s.addedThickness, 'length', 3),
      remark: 'thread as an even layer; in a closed tool it raises the fibre fraction instead',
    },
  ];
}

function needle({ summary: s, plan }: StitchingModel): Fact[] {
  return [
    {
      label: 'Usual needle for this thread',
      value: `Nm ${s.usualNeedle.from} to ${s.usualNeedle.to}`,
      remark: 'common practice, no source',
    },
    ...(plan.needleNumber === undefined ? [] : [{ label: 'Needle', value: `Nm ${plan.needleNumber}` }]),
    { label: 'Hole', value: amount(s.holeWidth, 'length', 3) },
    {
      label: 'Width left along a row',
      value: amount(s.netWidth, 'fraction', 3),
      remark: 'if every fibre in the holes were cut: the worst case',
    },
  ];
}

function totals({ summary: s }: StitchingModel, id: string): Block[] {
  const all = s.consumption.totals;
  if (all === undefined) return [];
  const rows = all.rows.map((row, i): Cell[] => [
    row.rows === 1 ? `row ${i + 1}` : `${row.rows} rows`,
    amount(row.length, 'longLength'),
    amount(row.pitch, 'length'),
    String(row.stitches),
    String(row.penetrations),
    amount(row.thread.needle, 'longLength'),
    amount(row.thread.under, 'longLength'),
  ]);
  rows.push([
    'all',
    amount(all.rowLength, 'longLength'),
    '',
    String(all.stitches),
    String(all.penetrations),
    amount(all.sewn.needle, 'longLength'),
    amount(all.sewn.under, 'longLength'),
  ]);
  return [
    table(
      `${id}-rows`,
      'Rows of one part; rows of an edge take a whole number of stitches, and a closing hole at their end is counted as a hole, not as a stitch',
      [
        { label: 'Row' },
        { label: 'Length', kind: 'longLength' },
        { label: 'Pitch', kind: 'length' },
        { label: 'Stitches' },
        { label: 'Holes' },
        { label: 'Needle thread', kind: 'longLength' },
        { label: 'Under thread', kind: 'longLength' },
      ],
      rows,
    ),
    {
      kind: 'facts',
      items: [
        {
          label: 'Thread to have at hand',
          value: amount(all.needed.total, 'longLength'),
          remark: 'with the tails and waste given',
        },
        { label: 'Mass of the sewn thread', value: amount(all.sewnMass.total, 'mass', 3) },
        ...(s.sewingTime === undefined ? [] : [{ label: 'Sewing time', value: amount(s.sewingTime, 'time', 3) }]),
      ],
    },
  ];
}

const whatToRead =
  'To sew, read as far as the needle and the holes: set-up, drawing, density, thread. Whether it is worth sewing stands after that: what one stitch holds against a crack, and what the holes cost in the plane of the laminate.';

/** Everything the report says about one stitch plan. */
export function stitchingSection(result: StitchingResult, units: UnitSystem): Block[] {
  const { model } = result;
  const id = `stitching-${slug(model.name)}`;
  const facts = (items: readonly Fact[]): Block => ({ kind: 'facts', items });
  return [
    heading(
      2,
      model.title === undefined ? `Stitch plan ${model.name}` : `${model.title} (stitch plan ${model.name})`,
      id,
    ),
    ...listOf(model.note === undefined ? [] : [model.note]),
    { kind: 'paragraph', text: whatToRead },
    facts(setUp(model)),
    stitchDrawing(model, id, units),
    heading(3, 'Density', `${id}-density`),
    facts(density(model)),
    heading(3, 'Thread', `${id}-thread`),
    facts(thread(model)),
    ...totals(model, id),
    heading(3, 'Needle and holes', `${id}-needle`),
    facts(needle(model)),
    { kind: 'notes', notes: model.summary.notes },
    ...stitchHoldingBlocks(result, id, units),
    ...stitchPriceBlocks(result, id, units),
  ];
}
