import { parentPort, workerData } from 'node:worker_threads';
import type { ExactRequest } from '../../solid/exact/exact-part.js';
import { asError } from '../as-error.js';
import { type ExactPackage, exactJob } from './exact-job.js';

/** What the thread of one part is given. */
export interface ExactJobData {
  readonly from: ExactPackage;
  readonly request: ExactRequest;
}

/** What it answers. */
export type ExactAnswer = { readonly step: string } | { readonly message: string };

const { from, request } = workerData as ExactJobData;
exactJob(from, request)
  .then(
    (step): ExactAnswer => ({ step }),
    (error): ExactAnswer => ({ message: asError(error).message }),
  )
  .then((answer) => parentPort!.postMessage(answer));
