import { addToArchive, emptyArchive, type ParetoArchive } from '../method/pareto-archive.js';
import { compareRows } from '../method/rows.js';

/**
 * The best candidates met so far: plain data that depends on what was offered alone, not on its order or portions.
 *
 * With several objectives what no other beats, one candidate for each set of equal objectives; with one objective the first so many in order. Of candidates with equal objectives
 * the one with the smaller first unequal gene stands first.
 */
export interface Leaders extends ParetoArchive {
  /** With one objective: how many are kept. */
  readonly most: number;
}

export const noLeaders = (genes: number, width: number, most: number): Leaders => ({
  ...emptyArchive(genes, new Array<number>(width).fill(0)),
  most,
});

/** The leaders after more were offered; all must keep to the limits. */
export function addLeaders(leaders: Leaders, genomes: ArrayLike<number>, objectives: ArrayLike<number>): Leaders {
  if (genomes.length === 0) return leaders;
  const { genes, steps, most } = leaders;
  if (steps.length > 1) return { ...addToArchive(leaders, genomes, objectives), most };
  const allGenomes = [...leaders.genomes, ...Array.from(genomes)];
  const all = [...leaders.objectives, ...Array.from(objectives, (value) => value + 0)];
  const order = all.map((_, i) => i);
  order.sort((i, j) => compareRows(all, 1, i, j) || compareRows(allGenomes, genes, i, j));
  // A genome offered twice counts once.
  const kept = order.filter((i, k) => k === 0 || compareRows(allGenomes, genes, order[k - 1] ?? 0, i) !== 0);
  kept.length = Math.min(most, kept.length);
  return {
    genes,
    steps,
    most,
    count: kept.length,
    genomes: kept.flatMap((i) => allGenomes.slice(i * genes, (i + 1) * genes)),
    objectives: kept.map((i) => all[i] ?? 0),
  };
}

/** Whether row i of one table comes before row j of another by the first unequal number, or equals it. */
export function notAfter(a: Int32Array, i: number, b: Int32Array, j: number, width: number): boolean {
  for (let k = 0; k < width; k++) {
    const x = a[i * width + k]!;
    const y = b[j * width + k]!;
    if (x !== y) return x < y;
  }
  return true;
}

/**
 * Leaders in flat tables. A list of numbers changes its kind with what is in it, and each time the loop over all candidates would be compiled anew, in every thread.
 */
export interface Bar {
  readonly count: number;
  readonly most: number;
  readonly genes: number;
  readonly width: number;
  readonly genomes: Int32Array;
  readonly objectives: Float64Array;
}

export const barOf = ({ count, most, genes, steps, genomes, objectives }: Leaders): Bar => ({
  count,
  most,
  genes,
  width: steps.length,
  genomes: Int32Array.from(genomes),
  objectives: Float64Array.from(objectives),
});

/** Whether an offer cannot become a leader, judged without allocating anything. */
export function isBeaten(bar: Bar, genomes: Int32Array, objectives: Float64Array, k: number): boolean {
  const { count, width, most, genes, objectives: front } = bar;
  if (width === 1) {
    if (count < most) return false;
    const last = front[count - 1]!;
    const own = objectives[k]!;
    return own > last || (own === last && notAfter(bar.genomes, count - 1, genomes, k, genes));
  }
  for (let i = 0; i < count; i++) {
    let above = false;
    let equal = true;
    for (let j = 0; j < width; j++) {
      const other = front[i * width + j]!;
      const own = objectives[k * width + j]!;
      if (other > own) {
        above = true;
        break;
      }
      if (other < own) equal = false;
    }
    if (!above && (!equal || notAfter(bar.genomes, i, genomes, k, genes))) return true;
  }
  return false;
}

/** The candidate that misses its limits by least, for a search that finds none that keeps to them. */
export interface Closest {
  readonly violation: number;
  readonly genome: readonly number[];
}

/** The closer of two; at equal violations the one with the smaller first unequal gene. */
export function closer(a: Closest | undefined, b: Closest | undefined): Closest | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  if (a.violation !== b.violation) return a.violation < b.violation ? a : b;
  return notAfter(Int32Array.from(a.genome), 0, Int32Array.from(b.genome), 0, a.genome.length) ? a : b;
}

/** What came of some candidates. */
export interface Tally {
  /** Candidates evaluated; of these the ones that could not be computed, and those that were computed and miss a limit. */
  readonly evaluated: number;
  readonly failed: number;
  readonly missed: number;
  readonly leaders: Leaders;
  readonly closest?: Closest;
  /** Why the first that could not be computed could not. */
  readonly reason?: string;
}

/** Both together. */
export function addTally(a: Tally, b: Tally): Tally {
  const closest = closer(a.closest, b.closest);
  const reason = a.reason ?? b.reason;
  return {
    evaluated: a.evaluated + b.evaluated,
    failed: a.failed + b.failed,
    missed: a.missed + b.missed,
    leaders: addLeaders(a.leaders, b.leaders.genomes, b.leaders.objectives),
    ...(closest === undefined ? {} : { closest }),
    ...(reason === undefined ? {} : { reason }),
  };
}
