/** The first of two rows of a row-major table by their first unequal number: below 0 for i, above 0 for j, 0 when they are equal. */
export function compareRows(table: ArrayLike<number>, width: number, i: number, j: number): number {
  for (let p = i * width, q = j * width, end = p + width; p < end; p++, q++) {
    const [a, b] = [table[p] ?? 0, table[q] ?? 0];
    if (a < b) return -1;
    if (a > b) return 1;
  }
  return 0;
}

/** Whether row i of a row-major table is nowhere above row j. */
export function nowhereAbove(table: ArrayLike<number>, width: number, i: number, j: number): boolean {
  for (let p = i * width, q = j * width, end = p + width; p < end; p++, q++) {
    if ((table[p] ?? 0) > (table[q] ?? 0)) return false;
  }
  return true;
}

/** 0, 1, ... count - 1. */
export const numbersBelow = (count: number): Int32Array => Int32Array.from({ length: count }, (_, i) => i);
