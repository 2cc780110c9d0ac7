import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { allocateBatch, type Batch, type BatchResult, evaluateBatch, makeQbarTable } from '../src/laminate/index.js';
import { angles, makeJob } from './job.js';

const laminates = 100_000;
const plies = 16;
const repeats = 15;

/** The job of `makeJob` as flat arrays. */
function flatJob(): { batch: Batch; out: BatchResult } {
  const job = makeJob(laminates, plies);
  const { batch, out } = allocateBatch(laminates, laminates * plies, makeQbarTable([job.material], angles));
  job.laminates.forEach(({ angles: list, thicknesses }, k) => {
    batch.plyOffsets[k + 1] = (k + 1) * plies;
    batch.thickness.set(thicknesses, k * plies);
    batch.row.set(
      list.map((angle) => angles.indexOf(angle)),
      k * plies,
    );
  });
  return { batch, out };
}

const bytes = (array: Float64Array | Int32Array): Buffer =>
  Buffer.from(array.buffer, array.byteOffset, array.byteLength);

/** Nanoseconds per laminate of the C program and the sum of all it computed; undefined when it cannot be compiled. */
function withC({ qbarTable, thickness, row }: Batch): { ns: number; sum: number } | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'selvage-bench-'));
  try {
    const program = join(folder, 'laminates');
    const source = fileURLToPath(new URL('c/laminates.c', import.meta.url));
    if (spawnSync('gcc', ['-O3', '-o', program, source, '-lm']).status !== 0) return undefined;
    const args = [laminates, plies, qbarTable.length / 6, repeats].map(String);
    const input = Buffer.concat([bytes(qbarTable), bytes(thickness), bytes(row)]);
    const { status, stdout } = spawnSync(program, args, { input, encoding: 'utf8' });
    const [ns, sum] = stdout.trim().split(' ').map(Number);
    return status === 0 && ns !== undefined && sum !== undefined ? { ns, sum } : undefined;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The kernel beside a plain C program of the same job, compiled with gcc -O3: 10^5 laminates of 16 plies, best of repeated runs. */
export function againstC(write: (line: string) => void): void {
  write('');
  write(`${laminates} laminates of ${plies} plies, ns per laminate (best of ${repeats} runs)`);
  const { batch, out } = flatJob();
  const c = withC(batch);
  if (c === undefined) {
    write('skipped: no gcc that compiles packages/core/bench/c/laminates.c');
    return;
  }
  let best = Number.POSITIVE_INFINITY;
  for (let run = 0; run < repeats; run++) {
    const start = performance.now();
    evaluateBatch(batch, out);
    best = Math.min(best, performance.now() - start);
  }
  const ns = (best * 1e6) / laminates;
  const sum = out.values.reduce((total, value) => total + Math.abs(value), 0);
  if (!(Math.abs(sum / c.sum - 1) < 1e-9)) throw new Error(`the C program answers ${c.sum}, the kernel ${sum}`);
  write(`kernel ${ns.toFixed(0)}   C ${c.ns.toFixed(0)}   kernel/C ${(ns / c.ns).toFixed(2)}`);
}
