import { Worker } from 'node:worker_threads';
import type { SearchProblem } from '@selvage/core';
import { type Done, perform, type SearchJob, type Task } from './search-job.js';

/** Those who do the work of a search. */
export interface Crew {
  readonly size: number;
  /** What came of a piece of work; rejects when a worker fails. */
  readonly perform: (task: Task) => Promise<Done>;
  readonly close: () => Promise<void>;
}

interface Order {
  readonly task: Task;
  readonly resolve: (done: Done) => void;
  readonly reject: (error: unknown) => void;
}

/** Pieces of work that a thread holds: one in hand, one so that it need not wait for the next. */
const mostHeld = 2;

/**
 * A crew of this thread and `size - 1` others. Whoever is free takes the next piece of work; threads that are still being set up take none. This thread looks up between
 * two pieces, so that answers and an interrupt are heard.
 */
export function hire(problem: SearchProblem, job: SearchJob, size: number): Crew {
  const waiting: Order[] = [];
  /** Orders that each thread holds, in the order of its answers; a thread is in it once it is ready. */
  const held = new Map<Worker, Order[]>();
  let failed: { readonly error: unknown } | undefined;
  let busy = false;

  const fail = (error: unknown): void => {
    failed ??= { error };
    for (const order of [...[...held.values()].flat(), ...waiting.splice(0)]) order.reject(failed.error);
    held.clear();
  };
  const handOut = (): void => {
    for (let most = 1; most <= mostHeld; most++) {
      for (const [worker, orders] of held) {
        const order = orders.length < most ? waiting.shift() : undefined;
        if (order === undefined) continue;
        orders.push(order);
        worker.postMessage(order.task);
      }
    }
    if (busy) return;
    const own = waiting.shift();
    if (own === undefined) return;
    busy = true;
    setImmediate(() => {
      try {
        own.resolve(perform(problem, own.task));
      } catch (error) {
        own.reject(error);
      }
      busy = false;
      handOut();
    });
  };
  const workers = Array.from({ length: size - 1 }, () => {
    const worker = new Worker(new URL('./search-worker.mjs', import.meta.url), { workerData: job });
    worker.on('message', (answer: 'ready' | Done) => {
      if (answer === 'ready') held.set(worker, []);
      else held.get(worker)?.shift()?.resolve(answer);
      handOut();
    });
    worker.on('error', fail);
    return worker;
  });
  return {
    size,
    perform: (task) =>
      new Promise((resolve, reject) => {
        if (failed !== undefined) return reject(failed.error);
        waiting.push({ task, resolve, reject });
        handOut();
      }),
    close: async () => {
      await Promise.all(workers.map((worker) => worker.terminate()));
    },
  };
}
