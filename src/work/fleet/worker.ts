import { createKernel } from '../../solid/kernel.js';
import { type Job, type JobResult, makeEntry } from './make-entry.js';

/** One kernel a thread, loaded while the first job is read. */
const kernel = createKernel();
kernel.catch(() => undefined);

/** What a worker thread runs for each job. */
export default function work(job: Job): Promise<JobResult> {
  return makeEntry(job, { kernel });
}
