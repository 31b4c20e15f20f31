import { Tinypool } from 'tinypool';
import { type Bench, type Job, type JobResult, makeEntry } from './make-entry.js';

/** Makes parts, several at a time. */
export interface Maker {
  /** how many jobs it takes at a time */
  readonly width: number;
  readonly make: (job: Job) => Promise<JobResult>;
  readonly close: () => Promise<void>;
}

/**
 * Makes parts in worker threads, each with a kernel of its own.
 * @param jobs number of threads
 * @param file the worker's file
 */
export function threadMaker(jobs: number, file: URL): Maker {
  const pool = new Tinypool({ filename: file.href, minThreads: jobs, maxThreads: jobs, isolateWorkers: false });
  return { width: jobs, make: (job) => pool.run(job), close: () => pool.destroy() };
}

/** Makes parts in this thread, one after the other. */
export function localMaker(bench: Bench): Maker {
  return { width: 1, make: (job) => makeEntry(job, bench), close: async () => undefined };
}
