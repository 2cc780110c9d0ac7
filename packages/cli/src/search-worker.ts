import { parentPort, workerData } from 'node:worker_threads';
import { perform, problemOf, type SearchJob, type Task } from './search-job.js';

/** The other end of `search-workers.ts`: says that it is ready, then does one piece of work after the other. */
const problem = problemOf(workerData as SearchJob);
parentPort?.on('message', (task: Task) => parentPort?.postMessage(perform(problem, task)));
parentPort?.postMessage('ready');
