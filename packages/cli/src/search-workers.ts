import { fileURLToPath } from 'node:url';
import { pool, TerminateError } from 'workerpool';
import type { Done, SearchJob, Task } from './search-job.js';

/** Threads that do pieces of a search while this one does others. */
export interface Crew {
  /** The threads and this one. */
  readonly size: number;
  /** How many threads wait for a piece: they are set up and have answered. @throws what a thread has failed with */
  readonly free: () => number;
  /** What a thread makes of a piece; rejects when it fails. */
  readonly perform: (task: Task) => Promise<Done>;
  readonly close: () => Promise<void>;
}

/** This thread alone. */
const alone: Crew = {
  size: 1,
  free: () => 0,
  perform: () => Promise.reject(new Error('no thread but this one')),
  close: async () => undefined,
};

/** A crew of this thread and `size - 1` others, each of which sets the search up for itself. */
export function hire(job: SearchJob, size: number): Crew {
  if (size === 1) return alone;
  const threads = pool(fileURLToPath(new URL('./search-worker.mjs', import.meta.url)), {
    workerType: 'thread',
    maxWorkers: size - 1,
    workerThreadOpts: { workerData: job },
    // There is nothing that a thread would have to clean up.
    workerTerminateTimeout: 1,
  });
  let failed: { readonly error: unknown } | undefined;
  const ask = async (method: 'ready' | 'perform', params: readonly Task[]): Promise<unknown> => {
    try {
      return await threads.exec(method, [...params]);
    } catch (thrown) {
      const ended = () => new Error('a worker of the search has ended before its work was done');
      const error = thrown instanceof TerminateError ? (thrown.cause ?? ended()) : thrown;
      failed ??= { error };
      throw error;
    }
  };
  // The pool starts a thread for each of these, which is not free before it has answered; a failure is told by `free`.
  for (let i = 1; i < size; i++) ask('ready', []).catch(() => undefined);
  return {
    size,
    free() {
      if (failed !== undefined) throw failed.error;
      return threads.stats().idleWorkers;
    },
    perform: (task) => ask('perform', [task]) as Promise<Done>,
    async close() {
      // A thread that has failed may never say that it has ended.
      await threads.terminate(true, 1000).catch(() => undefined);
    },
  };
}
