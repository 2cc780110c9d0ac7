import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { evaluateBatch, layout, STRIDE } from '../src/laminate/index.js';
import { tsaiWuCoefficients } from '../src/laminate/strength/index.js';
import { bytes, flatJob, nanoseconds } from './flat-job.js';
import { makeJob, strengths } from './job.js';

const plies = 16;
/** The smaller batch keeps more of NumPy's intermediate arrays near the processor's cache. */
const sizes = [10_000, 100_000];
const repeats = 5;

/** The kernel beside a vectorised NumPy batch of the same job. */
export function againstNumpy(write: (line: string) => void): void {
  for (const laminates of sizes) compare(laminates, write);
}

function compare(laminates: number, write: (line: string) => void): void {
  write('');
  write(`${laminates} laminates of ${plies} plies, ns of processor time per laminate (best of ${repeats} runs)`);
  const { batch, out, strength } = flatJob(makeJob(laminates, plies));
  const { F1, F2, F11, F22, F66, F12 } = tsaiWuCoefficients(strengths);
  const coefficients = Float64Array.of(F1, F2, F11, F22, F66, F12);
  const parts = [batch.qbarTable, strength.table.stress, coefficients, strength.loads, batch.thickness, batch.row];
  const script = fileURLToPath(new URL('python/laminates.py', import.meta.url));
  const args = [script, ...[laminates, plies, batch.qbarTable.length / 6, repeats].map(String)];
  const env = { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1' };
  const { status, stdout } = spawnSync('python3', args, {
    input: Buffer.concat(parts.map(bytes)),
    encoding: 'utf8',
    env,
  });
  if (status !== 0) {
    write('skipped: no python3 with NumPy');
    return;
  }
  const [numpy = 0, ...sums] = stdout.trim().split(' ').map(Number);
  const kernel = nanoseconds(() => evaluateBatch(batch, out), laminates, repeats);
  const sum = (at: number): number => {
    let total = 0;
    for (let k = 0; k < laminates; k++) for (let i = 0; i < 6; i++) total += Math.abs(out.values[k * STRIDE + at + i]!);
    return total;
  };
  const own = [sum(layout.A), sum(layout.D), out.ratio?.reduce((total, ratio) => total + ratio, 0) ?? 0];
  own.forEach((value, i) => {
    if (!(Math.abs(value / sums[i]! - 1) < 1e-9)) throw new Error(`NumPy answers ${sums[i]}, the kernel ${value}`);
  });
  write(`kernel ${kernel.toFixed(0)}   NumPy ${numpy.toFixed(0)}   NumPy/kernel ${(numpy / kernel).toFixed(1)}`);
}
