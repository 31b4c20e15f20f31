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
  const options = { filename: file.href, minThreads: jobs, maxThreads: jobs, isolateWorkers: false };
  const pool = import('tinypool').then(({ Tinypool }) => new Tinypool(options));
  pool.catch(() => undefined);
  return { width: jobs, make: async (job) => (await pool).run(job), close: async () => (await pool).destroy() };
}

/** Makes parts in this thread, one after the other. */
export function localMaker(bench: Bench): Maker {
  return { width: 1, make: (job) => makeEntry(job, bench), close: async () => undefined };
}
