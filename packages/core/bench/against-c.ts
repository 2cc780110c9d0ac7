import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Batch, type BatchStrength, evaluateBatch } from '../src/laminate/index.js';
import { tsaiWuCoefficients } from '../src/laminate/strength/index.js';
import { bytes, flatJob, nanoseconds } from './flat-job.js';
import { makeJob, strengths } from './job.js';

const laminates = 100_000;
const plies = 16;
const repeats = 15;

interface Answer {
  /** Nanoseconds per laminate: A, B, D, inverse and constants; and with the Tsai-Wu ratio of one load. */
  readonly stiff: number;
  readonly strong: number;
  /** Of the magnitudes of everything in `values`, of the ratios, of the weakest faces. */
  readonly sums: readonly number[];
}

/** Undefined when the program cannot be compiled. */
function withC({ qbarTable, thickness, row }: Batch, { table, loads }: BatchStrength): Answer | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'selvage-bench-'));
  try {
    const program = join(folder, 'laminates');
    const source = fileURLToPath(new URL('c/laminates.c', import.meta.url));
    if (spawnSync('gcc', ['-O3', '-o', program, source, '-lm']).status !== 0) return undefined;
    const rows = qbarTable.length / 6;
    const { F1, F2, F11, F22, F66, F12 } = tsaiWuCoefficients(strengths);
    const coefficients = Float64Array.from(Array.from({ length: rows }, () => [F1, F2, F11, F22, F66, F12]).flat());
    const input = Buffer.concat([qbarTable, table.stress, coefficients, loads, thickness, row].map(bytes));
    const args = [laminates, plies, rows, repeats].map(String);
    const { status, stdout } = spawnSync(program, args, { input, encoding: 'utf8' });
    const [stiff, strong, ...sums] = stdout.trim().split(' ').map(Number);
    return status === 0 && stiff !== undefined && strong !== undefined ? { stiff, strong, sums } : undefined;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const magnitude = (values: ArrayLike<number>): number => {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += Math.abs(values[i]!);
  return sum;
};

/** The kernel beside a plain C program of the same job, compiled with gcc -O3: 10^5 laminates of 16 plies, best of repeated runs. */
export function againstC(write: (line: string) => void): void {
  write('');
  write(`${laminates} laminates of ${plies} plies, ns of processor time per laminate (best of ${repeats} runs);`);
  write('C works out every ratio, the kernel only those that can be the least');
  const { batch, out, strength } = flatJob(makeJob(laminates, plies));
  const c = withC(batch, strength);
  if (c === undefined) {
    write('skipped: no gcc that compiles packages/core/bench/c/laminates.c');
    return;
  }
  const { strength: _, ...stiffnessOnly } = batch;
  const stiff = nanoseconds(() => evaluateBatch(stiffnessOnly, out), laminates, repeats);
  const strong = nanoseconds(() => evaluateBatch(batch, out), laminates, repeats);
  const sums = [out.values, out.ratio, out.weakest].map((values) => magnitude(values ?? []));
  sums.forEach((sum, i) => {
    if (!(Math.abs(sum / c.sums[i]! - 1) < 1e-9))
      throw new Error(`the C program answers ${c.sums[i]}, the kernel ${sum}`);
  });
  const line = (name: string, kernel: number, plain: number): void =>
    write(
      `${name.padEnd(42)} kernel ${kernel.toFixed(0)}   C ${plain.toFixed(0)}   kernel/C ${(kernel / plain).toFixed(2)}`,
    );
  line('A, B, D, inverse, constants', stiff, c.stiff);
  line('the same and the least Tsai-Wu ratio', strong, c.strong);
}
