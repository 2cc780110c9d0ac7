/** Points along the arms, as distances from the front, with the row at each where there is one. */
export interface PeelMesh {
  readonly at: readonly number[];
  /** Index into the rows of each row on the mesh, by point. */
  readonly rows: readonly (readonly number[])[];
}

/** Points keep the fineness for this many bending lengths past the last row; beyond, where the arms run straight, steps grow. */
const fineFor = 3;
/** By which share steps grow there, for one point to a bending length. */
const growth = 0.9;

/**
 * Lays points along arms from the front to the grips: one at each row, between them even steps no longer than `step`, and past the last row steps
 * that grow once the bend is over.
 *
 * @param length of the opened arms
 * @param rows with their distance from the front, in any order, from 0 to below `length`
 * @param bend bending length of the arm
 * @param fineness points to a bending length
 */
export function peelMesh(
  length: number,
  rows: readonly { readonly index: number; readonly distance: number }[],
  bend: number,
  fineness: number,
): PeelMesh {
  const step = bend / fineness;
  const at: number[] = [0];
  const found: number[][] = [[]];
  let here = 0;
  const evenly = (to: number): void => {
    const count = Math.max(1, Math.ceil((to - here) / step - 1e-9));
    for (let i = 1; i <= count; i++) {
      at.push(i === count ? to : here + ((to - here) * i) / count);
      found.push([]);
    }
    here = to;
  };
  for (const { index, distance } of [...rows].sort((a, b) => a.distance - b.distance)) {
    if (distance > here) evenly(distance);
    found.at(-1)?.push(index);
  }
  const fine = Math.min(length, here + fineFor * bend);
  if (fine > here) evenly(fine);
  let h = step;
  while (here < length) {
    h *= 1 + growth / fineness;
    // No sliver at the end.
    here = length - here < 1.5 * h ? length : here + h;
    at.push(here);
    found.push([]);
  }
  return { at, rows: found };
}
