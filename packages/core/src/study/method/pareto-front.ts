import { fail } from '../../problem/index.js';
import { demandFiniteResults, demandWhole } from './check.js';
import { crowdingDistance } from './crowding.js';
import { compareRows, nowhereAbove, numbersBelow } from './rows.js';

/**
 * The rows of a table of objectives that no other row dominates: nowhere larger and somewhere smaller. Equal rows stand or fall together.
 *
 * Rows are sorted by their first unequal number, after which a row can only be dominated by one before it: with one or two objectives the work
 * is that of sorting, with more it grows with rows times front.
 *
 * @param objectives flat, row-major, finite
 * @param width objectives per row, 1 to 20
 * @returns row numbers, sorted by their first unequal objective, equal rows by their number
 * @throws out-of-range for the width; contradiction for rows that are not complete; not-computable for a number that is not finite
 */
export function nonDominatedRows(objectives: ArrayLike<number>, width: number): Int32Array {
  demandWhole('the number of objectives', width, 1, 20);
  if (objectives.length % width !== 0) {
    fail({
      code: 'contradiction',
      message: `${objectives.length} numbers do not make rows of ${width}`,
      allowed: `a multiple of ${width}`,
    });
  }
  demandFiniteResults('objective', objectives);
  const order = numbersBelow(objectives.length / width);
  order.sort((i, j) => compareRows(objectives, width, i, j) || i - j);
  return sweep(objectives, width, order, true);
}

/**
 * The rows that no row before them dominates, of rows sorted by their first unequal number.
 * @param equals whether a row equal to one kept is kept too
 */
export function sweep(table: ArrayLike<number>, width: number, order: Int32Array, equals: boolean): Int32Array {
  const kept: number[] = [];
  const distinct: number[] = [];
  for (const row of order) {
    const last = distinct.at(-1);
    if (last !== undefined && compareRows(table, width, last, row) === 0) {
      if (equals) kept.push(row);
    } else if (last === undefined || !dominated(table, width, row, last, distinct)) {
      kept.push(row);
      distinct.push(row);
    }
  }
  return Int32Array.from(kept);
}

/** With two objectives the last row kept has the least second one. */
function dominated(
  table: ArrayLike<number>,
  width: number,
  row: number,
  last: number,
  front: readonly number[],
): boolean {
  if (width <= 2) return nowhereAbove(table, width, last, row);
  for (const member of front) if (nowhereAbove(table, width, member, row)) return true;
  return false;
}

/**
 * A few rows that stand for a front: the most crowded row is taken away, again and again, until so many are left.
 *
 * The ends stay longest; of rows equally crowded the last goes. What is left follows from the order of the rows, which is that of
 * an archive or of {@link nonDominatedRows}.
 *
 * @param objectives flat, row-major, a front
 * @param most rows to be left, whole, 1 or more
 * @returns row numbers, rising
 * @throws out-of-range
 * @source crowding distance: Deb, Pratap, Agarwal & Meyarivan 2002, section III B
 */
export function representativeRows(objectives: ArrayLike<number>, width: number, most: number): readonly number[] {
  demandWhole('the number of objectives', width, 1, 20);
  demandWhole('the number of rows to be left', most, 1, Number.MAX_SAFE_INTEGER);
  let rows = [...numbersBelow(objectives.length / width)];
  while (rows.length > most) {
    const distance = crowdingDistance(objectives, width, rows);
    const least = distance.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
    const crowded = distance.lastIndexOf(least);
    rows = rows.filter((_, place) => place !== crowded);
  }
  return rows;
}
