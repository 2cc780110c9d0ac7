import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../provenance/index.js';
import type { Working } from '../working/index.js';
import { arealFraction } from './areal-fraction.js';
import { type ConsumptionInput, type ThreadConsumption, threadConsumption } from './consumption.js';
import { holeDensity, meanRun, penetrationDensity, rowLengthPerArea } from './density.js';
import { showDensity } from './density-steps.js';
import { fractionNotes, holes } from './holes.js';
import { nearestNeighbour } from './nearest-neighbour.js';
import { needleDiameter, needleFor } from './needle.js';
import { patternNotes } from './pattern-notes.js';
import { type RowsMet, rowsMetAcross, rowsMetAlong } from './rows-met.js';
import { sewingTime } from './sewing-time.js';
import { showHoles, showSewingTime, showSpacing } from './spacing-steps.js';
import { hasUnderThread, type StitchTypeId, stitchType, withStrands } from './stitch-type.js';
import { threadDiameter } from './thread.js';
import { showConsumption, showThreads } from './thread-steps.js';

/** Everything that says how a laminate is stitched. */
export interface StitchPlan extends Omit<ConsumptionInput, 'type'> {
  readonly type: StitchTypeId;
  /** Strands of thread in the needle together, 1 when not given: a doubled hand thread has 2. */
  readonly strands?: number;
  /** Metric needle number. */
  readonly needleNumber?: number;
  /** Width of the hole or resin pocket, m. */
  readonly holeWidth?: number;
  readonly sewing?: {
    /** Stitches per second. */
    readonly rate: number;
    /** s for each row; s once. */
    readonly setup?: number;
    readonly handling?: number;
  };
}

/** What a report says of a stitch plan; SI units. */
export interface StitchSummary {
  /** Strands that cross a plane at one hole, on the side of the lock that holds less fibre. */
  readonly strands: number;
  /** Of one strand, m. */
  readonly threadDiameter: number;
  readonly underThreadDiameter?: number;
  /** Round bundle of the needle thread's legs in one hole, m. */
  readonly bundleDiameter: number;
  /** 1/m^2: passes of the needle; distinct holes. */
  readonly penetrationDensity: number;
  readonly holeDensity: number;
  /** m/m^2 */
  readonly rowLengthPerArea: number;
  /** From hole to hole along the thread, m. */
  readonly meanRun: number;
  /** On the basis of fibre area, and of thread with the gaps between its fibres; on the side of the lock that holds less fibre. */
  readonly arealFraction: number;
  readonly bundleArealFraction: number;
  /** On the basis of fibre area, on either side of the lock. */
  readonly arealFractionAbove: number;
  readonly arealFractionBelow: number;
  /** Both threads, without tails and waste: m, m/m, m/m^2, kg/m, kg/m^2. */
  readonly threadLengthPerStitch: number;
  readonly threadLengthPerRowLength: number;
  readonly threadLengthPerArea: number;
  readonly threadMassPerRowLength: number;
  readonly threadMassPerArea: number;
  readonly addedArealMass: number;
  /** Thread as an even layer, m. */
  readonly addedThickness: number;
  /** m */
  readonly nearestNeighbour: number;
  readonly rowsMetAcross?: RowsMet;
  readonly rowsMetAlong: RowsMet;
  /** Usual metric needle numbers for the needle thread. */
  readonly usualNeedle: { readonly from: number; readonly to: number };
  /** m */
  readonly needleDiameter?: number;
  readonly holeWidth: number;
  /** Share of the width left along a row. */
  readonly netWidth: number;
  /** Stitches of the part; absent for a field pattern without a field. */
  readonly stitches?: number;
  /** s; absent without stitches or without a sewing rate. */
  readonly sewingTime?: number;
  /** The same, thread by thread and row by row. */
  readonly consumption: Omit<ThreadConsumption, 'notes' | 'sources'>;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/**
 * Everything a report says of one stitch plan: density, areal fraction, thread, spacing, holes, time.
 * Geometry only: what the stitches hold is not part of it.
 * @param working takes down the steps
 * @throws out-of-range any value of the plan outside its range: see `checkPattern`, `checkThread`, {@link threadConsumption}
 */
export function stitchSummary(plan: StitchPlan, working?: Working): StitchSummary {
  const { pattern, needleThread, needleNumber } = plan;
  const seam = { ...plan, type: withStrands(stitchType(plan.type), plan.strands ?? 1) };
  const fraction = arealFraction(seam);
  const consumed = threadConsumption(seam);
  const { notes: threadNotes, sources: threadSources, ...consumption } = consumed;
  const hole = holes(seam);
  const needle = needleFor(needleThread);
  const legs = fraction.above.fibre <= fraction.below.fibre ? fraction.above.legs : fraction.below.legs;
  const across = rowsMetAcross(pattern);
  const totals = consumption.totals;
  const rows = totals?.rows.reduce((sum, row) => sum + row.rows, 0) ?? 0;
  const bundleDiameter = threadDiameter(needleThread, seam.type.legsAbove.needle);
  const sewn = totals && plan.sewing && { ...plan.sewing, stitches: totals.stitches, rows };
  const time = sewn && sewingTime(sewn);
  const notes = uniqueNotes([
    ...patternNotes(pattern),
    ...fraction.notes,
    ...fractionNotes(fraction.fibre),
    ...threadNotes,
    ...needle.notes,
    ...hole.notes,
  ]);
  if (working !== undefined) {
    showDensity(pattern, working);
    showThreads(seam, fraction, working);
    showConsumption(seam, consumed, working);
    if (sewn !== undefined && time !== undefined) showSewingTime(sewn, time, working);
    showHoles(plan, hole, bundleDiameter, working);
    showSpacing(pattern, working);
    working.notes(notes);
  }
  return {
    strands: legs.needle + legs.under,
    threadDiameter: threadDiameter(needleThread),
    ...(hasUnderThread(seam.type) && { underThreadDiameter: threadDiameter(plan.underThread ?? needleThread) }),
    bundleDiameter,
    penetrationDensity: penetrationDensity(pattern),
    holeDensity: holeDensity(pattern),
    rowLengthPerArea: rowLengthPerArea(pattern),
    meanRun: meanRun(pattern),
    arealFraction: fraction.fibre,
    bundleArealFraction: fraction.bundle,
    arealFractionAbove: fraction.above.fibre,
    arealFractionBelow: fraction.below.fibre,
    threadLengthPerStitch: consumption.perStitch.total,
    threadLengthPerRowLength: consumption.perRowLength.total,
    threadLengthPerArea: consumption.perArea.total,
    threadMassPerRowLength: consumption.massPerRowLength.total,
    threadMassPerArea: consumption.massPerArea.total,
    addedArealMass: consumption.addedArealMass,
    addedThickness: consumption.addedThickness.total,
    nearestNeighbour: nearestNeighbour(pattern).distance,
    ...(across && { rowsMetAcross: across }),
    rowsMetAlong: rowsMetAlong(pattern),
    usualNeedle: { from: needle.from, to: needle.to },
    ...(needleNumber !== undefined && { needleDiameter: needleDiameter(needleNumber) }),
    holeWidth: hole.width,
    netWidth: hole.netWidth,
    ...(totals && { stitches: totals.stitches }),
    ...(time !== undefined && { sewingTime: time }),
    consumption,
    notes,
    sources: uniqueSources(fraction.sources, threadSources, needle.sources),
  };
}
