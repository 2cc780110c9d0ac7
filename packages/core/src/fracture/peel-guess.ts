import type { PeelControl, PeelEquilibrium } from './peel-case.js';
import type { HoldingRow, PeelModel } from './peel-model.js';

/** Where a control lies on the line from one state (0) to another (1); not farther than as far again. */
export function along(from: PeelEquilibrium, to: PeelEquilibrium, control: PeelControl): number {
  let t = (control.length - from.length) / (to.length - from.length);
  if (to.length === from.length) {
    const root = Math.sqrt(from.release);
    t =
      'release' in control
        ? (Math.sqrt(control.release) - root) / (Math.sqrt(to.release) - root)
        : (control.displacement - from.displacement) / (to.displacement - from.displacement);
  }
  return Number.isFinite(t) ? Math.min(Math.max(t, 0), 2) : 1;
}

/** Values of a near state on a new mesh: shapes keep their distance from the front, forces their place on the arm. */
export function carriedOver(
  { size, places }: PeelModel,
  near: PeelEquilibrium,
  length: number,
  at: readonly number[],
): Float64Array {
  const z = new Float64Array(at.length * size);
  const last = near.at.length - 1;
  const onArm = new Set(places.flatMap(({ H, V }) => (H === undefined ? [V] : [H, V])));
  const read = (components: readonly number[], shift: number): void => {
    let k = 0;
    at.forEach((s, point) => {
      const from = Math.min(Math.max(s - shift, 0), near.at[last] ?? 0);
      while (k < last - 1 && (near.at[k + 1] ?? 0) < from) k++;
      const [s0, s1] = [near.at[k] ?? 0, near.at[k + 1] ?? 1];
      const t = (from - s0) / (s1 - s0);
      for (const i of components) {
        z[point * size + i] = (1 - t) * (near.z[k * size + i] ?? 0) + t * (near.z[(k + 1) * size + i] ?? 0);
      }
    });
  };
  const all = Array.from({ length: size }, (_, i) => i);
  read(
    all.filter((i) => !onArm.has(i)),
    0,
  );
  read([...onArm], length - near.length);
  return z;
}

/** Lifts the arms of a guess so that a row which is kept at its opening has that opening: a miss would seem a huge force. */
export function bringTo(
  { size, places, gap }: PeelModel,
  z: Float64Array,
  at: readonly number[],
  point: number,
  { start, memory }: HoldingRow,
): void {
  const place = at[point] ?? 0;
  // The rows' line may lean: one lift leaves a little of the miss, four leave nothing.
  for (let round = 0; round < 4; round++) {
    const lift = (start + memory.opening - gap(z, point)) / 2;
    at.forEach((s, k) => {
      const share = place > 0 ? Math.min(1, s / place) : 1;
      for (const { y } of places) z[k * size + y] = (z[k * size + y] ?? 0) + share * lift;
    });
  }
}
