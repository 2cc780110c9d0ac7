import { allocateBatch, evaluateBatch, layout, makeQbarTable, STRIDE } from '../src/laminate/index.js';
import type { Answer, Job } from './job.js';

/** The kernel, ready to run on a job: `perPly` fills the table with one row per ply, `cached` with one per angle beforehand. */
export function withKernel({ laminates, material }: Job, angles: readonly number[]) {
  const plies = laminates.reduce((sum, { angles: list }) => sum + list.length, 0);
  const table = makeQbarTable([material], angles);
  const every = laminates.flatMap((laminate) => laminate.angles);
  const { batch, out } = allocateBatch(laminates.length, plies, table);
  laminates.forEach(({ thicknesses }, k) => {
    batch.thickness.set(thicknesses, batch.plyOffsets[k]!);
    batch.plyOffsets[k + 1] = batch.plyOffsets[k]! + thicknesses.length;
  });
  batch.row.set(every.map((angle) => angles.indexOf(angle)));
  const own = { ...batch, row: Int32Array.from(every.keys()), qbarTable: makeQbarTable([material], every) };
  return {
    cached: () => evaluateBatch(batch, out),
    perPly: () => {
      makeQbarTable([material], every, own.qbarTable);
      evaluateBatch(own, out);
    },
    answers: (): Answer[] => laminates.map((_, k) => answer(out.values.subarray(k * STRIDE, (k + 1) * STRIDE))),
  };
}

function answer(v: Float64Array): Answer {
  const symmetric = (at: number) => [0, 1, 2, 1, 3, 4, 2, 4, 5].map((i) => v[at + i]!);
  const [a, d] = [symmetric(layout.a), symmetric(layout.d)];
  const b = [...v.subarray(layout.b, layout.b + 9)];
  const rows = [0, 1, 2].map((i) => [...a.slice(3 * i, 3 * i + 3), ...b.slice(3 * i, 3 * i + 3)]);
  const lower = [0, 1, 2].map((i) => [b[i]!, b[i + 3]!, b[i + 6]!, ...d.slice(3 * i, 3 * i + 3)]);
  return [
    ...symmetric(layout.A),
    ...symmetric(layout.B),
    ...symmetric(layout.D),
    ...rows.flat(),
    ...lower.flat(),
    ...v.subarray(layout.inPlane, layout.inPlane + 14),
  ];
}
