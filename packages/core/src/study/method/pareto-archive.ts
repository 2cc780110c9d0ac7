import { fail } from '../../problem/index.js';
import { demandFiniteResults, demandWhole } from './check.js';
import { sweep } from './pareto-front.js';
import { compareRows, numbersBelow } from './rows.js';

/** The best genomes met so far: plain data, in an order that does not depend on that of the offers. */
export interface ParetoArchive {
  /** Numbers per genome. */
  readonly genes: number;
  /** Width of the steps of each objective; 0 keeps every difference. */
  readonly steps: readonly number[];
  readonly count: number;
  /** Flat. */
  readonly genomes: readonly number[];
  /** Flat, one per step and genome; rising by their first unequal one. */
  readonly objectives: readonly number[];
}

/**
 * An archive with nothing in it.
 *
 * Without steps it keeps everything that is not dominated. With steps the objectives are divided into boxes, and one genome is kept per box
 * that no other box dominates: what is left out is then no better than something kept by more than one step in any objective,
 * and of m objectives that cover k steps each no more than k^(m-1) genomes are kept. What is kept is not dominated by anything offered.
 *
 * A limit on the number that works by crowding would bound memory too, but its result would depend on the order of the offers.
 *
 * @param genes numbers per genome, whole, 1 or more
 * @param steps one per objective (1 to 20), in its unit, finite, 0 or more
 * @throws out-of-range
 * @source boxes: Laumanns, Thiele, Deb & Zitzler 2002, laumanns-2002
 */
export function emptyArchive(genes: number, steps: readonly number[]): ParetoArchive {
  demandWhole('the number of genes', genes, 1, 100_000);
  demandWhole('the number of objectives', steps.length, 1, 20);
  for (const step of steps) {
    if (!(step >= 0 && Number.isFinite(step))) {
      fail({ code: 'out-of-range', message: `a step is ${step}`, allowed: 'a finite number, 0 or more' });
    }
  }
  return { genes, steps: [...steps], count: 0, genomes: [], objectives: [] };
}

/**
 * The archive after more genomes were offered, in any order and any portions: all that counts is what was offered.
 *
 * Of genomes in one box, or with equal objectives, the one kept has the smallest first unequal objective, then the smallest first unequal gene.
 *
 * @param genomes flat; only such as meet their constraints
 * @param objectives flat, one per step and genome, to be made small
 * @throws contradiction for tables that do not fit each other; not-computable for a number that is not finite
 */
export function addToArchive(
  archive: ParetoArchive,
  genomes: ArrayLike<number>,
  objectives: ArrayLike<number>,
): ParetoArchive {
  const { genes, steps } = archive;
  const width = steps.length;
  if (genomes.length % genes !== 0 || (genomes.length / genes) * width !== objectives.length) {
    fail({
      code: 'contradiction',
      message: `${genomes.length} genes and ${objectives.length} objectives`,
      allowed: `${genes} genes and ${width} objectives per genome`,
    });
  }
  demandFiniteResults('objective', objectives);
  const count = archive.count + genomes.length / genes;
  const allGenomes = joined(archive.genomes, genomes);
  const all = joined(archive.objectives, objectives);
  const boxes = all.map((value, i) => boxOf(value, steps[i % width] ?? 0));

  const order = numbersBelow(count);
  order.sort(
    (i, j) =>
      compareRows(boxes, width, i, j) || compareRows(all, width, i, j) || compareRows(allGenomes, genes, i, j) || i - j,
  );
  const kept = sweep(boxes, width, order, false);
  kept.sort((i, j) => compareRows(all, width, i, j));
  const rows = (table: Float64Array, size: number): number[] =>
    Array.from(kept).flatMap((i) => [...table.subarray(i * size, (i + 1) * size)]);
  return { genes, steps, count: kept.length, genomes: rows(allGenomes, genes), objectives: rows(all, width) };
}

/**
 * One archive from two: that of all that was offered to either.
 * @throws contradiction for archives of different genomes, objectives or steps
 */
export function mergeArchives(a: ParetoArchive, b: ParetoArchive): ParetoArchive {
  if (a.genes !== b.genes || a.steps.join() !== b.steps.join()) {
    fail({
      code: 'contradiction',
      message: `archives of ${a.genes} genes with the steps ${a.steps.join(', ')} and of ${b.genes} genes with the steps ${b.steps.join(', ')}`,
      allowed: 'archives of the same genes and steps',
    });
  }
  return addToArchive(a, b.genomes, b.objectives);
}

const boxOf = (value: number, step: number): number => (step > 0 ? Math.floor(value / step) : value);

/** Both lists; adding 0 turns -0 into 0. */
function joined(a: ArrayLike<number>, b: ArrayLike<number>): Float64Array {
  const out = new Float64Array(a.length + b.length);
  out.set(a);
  out.set(b, a.length);
  return out.map((value) => value + 0);
}
