import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../provenance/index.js';
import { type Seam, underThreadOf } from './areal-fraction.js';
import { inMillimetres, requireNotNegative, requirePositive } from './check.js';
import { meanRun, penetrationDensity, rowLengthPerArea } from './density.js';
import { type SewnRows, sewnRows } from './sewn-rows.js';
import { hasUnderThread, type ThreadShare } from './stitch-type.js';
import { bundleArea } from './thread.js';
import type { Field } from './types.js';

/** One amount for each thread, and for both together. */
export interface PerThread {
  readonly needle: number;
  readonly under: number;
  readonly total: number;
}

/** What the length of thread follows from: the seam, the stack that it is sewn through, what is lost. */
export interface ConsumptionInput extends Seam {
  /** Thickness of the uncompacted stack under the presser foot, m, above 0: not the cured thickness. */
  readonly dryThickness: number;
  /** Thread lost, as a share of the thread sewn in and its tails; 0 when not given. */
  readonly waste?: number;
  /** Length left hanging at each end of a row, of each thread (a doubled one counts once), m; 0 when not given. */
  readonly tails?: number;
  /** The stitched rectangle; gives totals for a field pattern. Edge rows carry their lengths themselves. */
  readonly field?: Field;
}

/** Totals of a part: edge rows, or a field pattern with its field. */
export interface ThreadTotals {
  /** Stitches: passes of the needle along the rows; the closing hole of an edge row is not one of them. */
  readonly stitches: number;
  /** Holes made, closing holes included. */
  readonly penetrations: number;
  readonly rows: readonly (SewnRows & { readonly thread: PerThread })[];
  /** Length of all rows, m. */
  readonly rowLength: number;
  /** Thread that stays in the part, m and kg. */
  readonly sewn: PerThread;
  readonly sewnMass: PerThread;
  /** Thread to have at hand, with tails and waste, m and kg. */
  readonly needed: PerThread;
  readonly neededMass: PerThread;
}

/** Length and mass of the threads that stitches take. */
export interface ThreadConsumption {
  /** m per stitch, m per m of row, m per m^2; without tails and waste. */
  readonly perStitch: PerThread;
  readonly perRowLength: PerThread;
  readonly perArea: PerThread;
  /** The parts of `perArea` that lie on the faces and that cross the thickness, m/m^2. */
  readonly surfacePerArea: PerThread;
  readonly throughPerArea: PerThread;
  /** kg per m of row, kg/m^2. */
  readonly massPerRowLength: PerThread;
  readonly massPerArea: PerThread;
  /** Dry thread added to the laminate, kg/m^2. */
  readonly addedArealMass: number;
  /** Thread spread evenly over the area at its packing, m: of the thread on the faces, across the thickness, and all of it. */
  readonly addedThickness: { readonly surface: number; readonly through: number; readonly total: number };
  readonly totals?: ThreadTotals;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/**
 * Thread that a seam takes up.
 *
 * Per stitch and thread: a m + b T, m the run from hole to hole, T the dry thickness, a and b those of the stitch type
 * (`stitchTypes`); per area times N; mass times linear density. Straight, taut thread on a stack that the stitch does not compress.
 * Added thickness: thread volume per area with the gaps between its fibres, sum of length/area x t/(rho phi), as an even layer;
 * it holds where the tool does not fix the thickness, and over areas of many pitches. In a closed tool the same volume raises the fibre fraction.
 * @throws out-of-range dry thickness not above 0, waste or tails below 0, see `checkPattern`, `checkThread`
 * @source constants recalled, not re-read (sewing engineering); class numbers iso-4915
 */
export function threadConsumption(input: ConsumptionInput): ThreadConsumption {
  const { pattern, type, needleThread, dryThickness, waste = 0, tails = 0 } = input;
  requirePositive('dryThickness', dryThickness, inMillimetres);
  requireNotNegative('waste', waste);
  requireNotNegative('tails', tails, inMillimetres);
  const under = underThreadOf(input);
  const N = penetrationDensity(pattern);
  const surface = perThread((thread) => type[thread].run * meanRun(pattern));
  const through = perThread((thread) => type[thread].depth * dryThickness);
  const perStitch = perThread((thread) => surface[thread] + through[thread]);
  const perArea = scaled(perStitch, N);
  const massOf = (length: PerThread) =>
    perThread((thread) => length[thread] * (thread === 'needle' ? needleThread : under.thread).linearDensity);
  const layer = (length: PerThread) =>
    perThread((thread) => length[thread] * bundleArea(thread === 'needle' ? needleThread : under.thread)).total;
  const surfacePerArea = scaled(surface, N);
  const throughPerArea = scaled(through, N);
  const massPerArea = massOf(perArea);
  const perRowLength = scaled(perArea, 1 / rowLengthPerArea(pattern));
  const rows = sewnRows(pattern, input.field);
  const amounts = rows && totals(rows, input, massOf);
  return {
    perStitch,
    perRowLength,
    perArea,
    surfacePerArea,
    throughPerArea,
    massPerRowLength: massOf(perRowLength),
    massPerArea,
    addedArealMass: massPerArea.total,
    addedThickness: {
      surface: layer(surfacePerArea),
      through: layer(throughPerArea),
      total: layer(perArea),
    },
    ...(amounts && { totals: amounts }),
    notes: uniqueNotes([...under.notes, ...notesOn(input)]),
    sources: uniqueSources(type.sources),
  };
}

function perThread(amount: (thread: 'needle' | 'under') => number): PerThread {
  const [needle, under] = [amount('needle'), amount('under')];
  return { needle, under, total: needle + under };
}

const scaled = (amounts: PerThread, factor: number): PerThread => perThread((thread) => amounts[thread] * factor);

function totals(
  rows: readonly SewnRows[],
  { type, dryThickness, waste = 0, tails = 0 }: ConsumptionInput,
  massOf: (length: PerThread) => PerThread,
): ThreadTotals {
  const ofRow = (row: SewnRows, share: ThreadShare) =>
    row.stitches * (share.run * row.run + share.depth * dryThickness);
  const withThread = rows.map((row) => ({ ...row, thread: perThread((thread) => ofRow(row, type[thread])) }));
  const sum = (amount: (row: (typeof withThread)[number]) => number) =>
    withThread.reduce((total, row) => total + amount(row), 0);
  const sewn = perThread((thread) => sum((row) => row.thread[thread]));
  const ends = 2 * sum((row) => row.rows);
  const inUse = { needle: 1, under: hasUnderThread(type) ? 1 : 0 };
  const needed = perThread((thread) => (sewn[thread] + ends * tails * inUse[thread]) * (1 + waste));
  return {
    stitches: sum((row) => row.stitches),
    penetrations: sum((row) => row.penetrations),
    rows: withThread,
    rowLength: sum((row) => row.length),
    sewn,
    sewnMass: massOf(sewn),
    needed,
    neededMass: massOf(needed),
  };
}

function notesOn({ pattern, type, waste }: ConsumptionInput): Note[] {
  const notes: Note[] = [
    {
      level: 'assumption',
      text: 'thread length is that of straight, taut paths over an uncompressed dry stack; tension and compression of the stack change it',
    },
  ];
  if (waste === undefined) {
    notes.push({
      level: 'assumption',
      text: 'no waste allowance given: thread needed is thread sewn; 10 to 15 % is common practice, no source',
    });
  }
  if (type.id === '304' && pattern.kind !== 'zigzag') {
    notes.push({
      level: 'warning',
      text: `stitch type 304 sews a zigzag, the pattern is ${pattern.kind} and has no swing: counted as straight stitches`,
    });
  }
  return notes;
}
