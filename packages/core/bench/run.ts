/**
 * Laminates per second: the batch kernel beside the same job written with general matrix libraries, in one run.
 *
 * Everyone gets the same laminates and must give the same numbers, which is checked before anything is timed: A, B, D, the
 * inverse, both sets of constants and the least Tsai-Wu strength ratio under one load. Two ways: the ply stiffness at an angle computed for every ply by everyone, or known
 * beforehand to everyone.
 */
import { Bench } from 'tinybench';
import { againstC } from './against-c.js';
import { againstNumpy } from './against-numpy.js';
import { bridging } from './bridging.js';
import { type Answer, angles, type Job, makeJob } from './job.js';
import { memory } from './memory.js';
import { search } from './search.js';
import { specimens } from './specimens.js';
import { studies } from './studies.js';
import { wholeCommand } from './whole-command.js';
import { withKernel } from './with-kernel.js';
import { withMathjs } from './with-mathjs.js';
import { withMlMatrix } from './with-ml-matrix.js';

const sizes = [8, 16, 32];
const write = (line: string) => process.stdout.write(`${line}\n`);

/** Stops unless two lists of answers agree block by block, to 1e-9 of the block's largest entry. */
function demandEqual(name: string, answers: readonly Answer[], expected: readonly Answer[]): void {
  // A, B, D, the four blocks of the inverse row by row are of different units; thickness 1 scales do not matter in ratios.
  const blocks = [...answers.keys()].flatMap(
    (k) =>
      [
        [k, 0, 9],
        [k, 18, 27],
        [k, 63, 66],
        [k, 70, 73],
      ] as const,
  );
  for (const [k, from, to] of blocks) compare(name, answers[k]!.slice(from, to), expected[k]!.slice(from, to));
  for (const [k, answer] of answers.entries()) {
    const inverse = (rows: readonly number[], columns: readonly number[], list: Answer) =>
      rows.flatMap((i) => columns.map((j) => list[27 + 6 * i + j]!));
    for (const rows of [
      [0, 1, 2],
      [3, 4, 5],
    ]) {
      for (const columns of [
        [0, 1, 2],
        [3, 4, 5],
      ]) {
        compare(name, inverse(rows, columns, answer), inverse(rows, columns, expected[k]!));
      }
    }
    compare(
      name,
      [...answer.slice(66, 70), ...answer.slice(73, 77)],
      [...expected[k]!.slice(66, 70), ...expected[k]!.slice(73, 77)],
    );
    compare(name, answer.slice(9, 18), expected[k]!.slice(9, 18));
    compare(name, answer.slice(77), expected[k]!.slice(77));
  }
}

function compare(name: string, list: readonly number[], expected: readonly number[]): void {
  const scale = Math.max(...expected.map(Math.abs));
  list.forEach((value, i) => {
    if (!(Math.abs(value - expected[i]!) <= 1e-9 * scale)) throw new Error(`${name}: ${value} for ${expected[i]}`);
  });
}

/** Seconds per laminate, by the median of the timed runs. */
async function secondsPerLaminate(run: () => unknown, job: Job): Promise<number> {
  const bench = new Bench({ time: 500, warmupTime: 300 });
  bench.add('job', () => {
    run();
  });
  await bench.run();
  const result = bench.tasks[0]?.result;
  if (result === undefined || !('latency' in result)) throw new Error('the timing did not complete');
  return result.latency.p50 / 1e3 / job.laminates.length;
}

write('laminates per second (median of runs); answers agree to 1e-9 before timing');
const ways = [
  {
    kernel: 'cached',
    others: 'perPly',
    title: 'each as it is typically used: the kernel with its table of ply stiffness, the libraries ply by ply',
  },
  { kernel: 'perPly', others: 'perPly', title: 'ply stiffness computed for every ply, by everyone' },
  { kernel: 'cached', others: 'cached', title: 'ply stiffness known beforehand, to everyone' },
] as const;

for (const way of ways) {
  write('');
  write(way.title);
  write('plies      kernel   ml-matrix      mathjs   kernel/ml-matrix   kernel/mathjs');
  for (const plies of sizes) {
    const job = makeJob(200, plies);
    const small: Job = { ...job, laminates: job.laminates.slice(0, 20) };
    const kernel = withKernel(job);
    const mlMatrix = withMlMatrix(small, angles);
    const mathjs = withMathjs(small, angles);
    kernel[way.kernel]();
    const expected = kernel.answers().slice(0, small.laminates.length);
    demandEqual('ml-matrix', mlMatrix[way.others](), expected);
    demandEqual('mathjs', mathjs[way.others](), expected);
    const times = [
      await secondsPerLaminate(kernel[way.kernel], job),
      await secondsPerLaminate(mlMatrix[way.others], small),
      await secondsPerLaminate(mathjs[way.others], small),
    ];
    const [k = 1, ml = 1, mj = 1] = times;
    const rate = (seconds: number) => String(Math.round(1 / seconds)).padStart(11);
    write(
      `${String(plies).padStart(5)} ${rate(k)} ${rate(ml)} ${rate(mj)} ${(ml / k).toFixed(0).padStart(18)} ${(mj / k).toFixed(0).padStart(15)}`,
    );
  }
}

againstC(write);
againstNumpy(write);
memory(write);
bridging(write);
specimens(write);
search(write);
studies(write);
wholeCommand(write);
