import { workerData } from 'node:worker_threads';
import { worker } from 'workerpool';
import { perform, problemOf, type SearchJob, type Task } from './search-job.js';

/** The other end of `search-workers.ts`: sets the search up, then does one piece of it after the other. */
const problem = problemOf(workerData as SearchJob);
worker({ ready: () => true, perform: (task: Task) => perform(problem, task) });
