import { evaluateBatch } from '../src/laminate/index.js';
import { flatJob } from './flat-job.js';
import { makeJob } from './job.js';

/** What the heap gains while 10^6 laminates of 16 plies go through one batch, by Node's own count, without a collection asked for. */
export function memory(write: (line: string) => void): void {
  const { batch, out } = flatJob(makeJob(1000, 16));
  const evaluate = (times: number): void => {
    for (let i = 0; i < times; i++) evaluateBatch(batch, out);
  };
  evaluate(100);
  const before = process.memoryUsage();
  evaluate(1000);
  const after = process.memoryUsage();
  write('');
  write(
    `memory over 10^6 laminates: heap ${after.heapUsed - before.heapUsed} bytes, array buffers ${after.arrayBuffers - before.arrayBuffers} bytes`,
  );
}
