import {
  allocateBatch,
  type Batch,
  type BatchResult,
  type BatchStrength,
  makeQbarTable,
  makeStrengthTable,
} from '../src/laminate/index.js';
import { angles, type Job, load, strengths } from './job.js';

/** A job as the kernel takes it, with a row of its tables for every angle. */
export function flatJob({ laminates, material }: Job): { batch: Batch; out: BatchResult; strength: BatchStrength } {
  const strength = {
    table: makeStrengthTable([{ ...material, strengths }], angles, 'tsaiWu'),
    loads: Float64Array.from(load),
  };
  const plies = laminates.reduce((sum, { angles: list }) => sum + list.length, 0);
  const { batch, out } = allocateBatch(laminates.length, plies, makeQbarTable([material], angles), strength);
  const rowOf = new Map(angles.map((angle, i) => [angle, i]));
  laminates.forEach(({ angles: list, thicknesses }, k) => {
    const from = batch.plyOffsets[k]!;
    batch.plyOffsets[k + 1] = from + list.length;
    batch.thickness.set(thicknesses, from);
    batch.row.set(
      list.map((angle) => rowOf.get(angle)!),
      from,
    );
  });
  return { batch, out, strength };
}

/** The memory of an array, for another program. */
export const bytes = (array: Float64Array | Int32Array): Buffer =>
  Buffer.from(array.buffer, array.byteOffset, array.byteLength);

/** The least processor time of repeated runs, ns per laminate: what else the machine does counts little. */
export function nanoseconds(run: () => void, laminates: number, repeats: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < repeats; i++) {
    const start = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(start);
    least = Math.min(least, user + system);
  }
  return (least * 1e3) / laminates;
}
