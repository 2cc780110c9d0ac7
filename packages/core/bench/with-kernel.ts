import { evaluateBatch, layout, makeQbarTable, makeStrengthTable, STRIDE } from '../src/laminate/index.js';
import { flatJob } from './flat-job.js';
import { type Answer, type Job, strengths } from './job.js';

/** The kernel, ready to run on a job: `perPly` fills the tables with one row per ply, `cached` with one per angle beforehand. */
export function withKernel(job: Job) {
  const { laminates, material } = job;
  const { batch, out, strength } = flatJob(job);
  const every = laminates.flatMap((laminate) => laminate.angles);
  const row = Int32Array.from(every.keys());
  const qbarTable = makeQbarTable([material], every);
  return {
    cached: () => evaluateBatch(batch, out),
    perPly: () => {
      makeQbarTable([material], every, qbarTable);
      const own = { table: makeStrengthTable([{ ...material, strengths }], every, 'tsaiWu'), loads: strength.loads };
      evaluateBatch({ ...batch, row, qbarTable, strength: own }, out);
    },
    answers: (): Answer[] =>
      laminates.map((_, k) => [
        ...answer(out.values.subarray(k * STRIDE, (k + 1) * STRIDE)),
        out.ratio?.[k] ?? Number.NaN,
      ]),
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
