import { parentPort, workerData } from 'node:worker_threads';
import { asError } from '../as-error.js';
import { type ExactJob, exactJob } from './exact-job.js';

/** What the thread of one part answers. */
export type ExactAnswer = { readonly step: string } | { readonly message: string };

exactJob(workerData as ExactJob)
  .then(
    (step): ExactAnswer => ({ step }),
    (error): ExactAnswer => ({ message: asError(error).message }),
  )
  .then((answer) => parentPort!.postMessage(answer));
