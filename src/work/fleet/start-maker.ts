import { existsSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';
import { createKernel } from '../../solid/kernel.js';
import { longRunFlags } from './long-run-flags.js';
import { localMaker, type Maker, threadMaker } from './makers.js';

/** The bundled worker lies beside this file's bundle; run from the sources there is none, and this thread does the work. */
export const WORKER = new URL('./fleet-worker.js', import.meta.url);

/** A maker of so many threads. */
export function startMaker(jobs: number): Maker {
  if (!existsSync(WORKER)) return localMaker({ kernel: createKernel() });
  for (const flag of longRunFlags(process.versions.v8)) setFlagsFromString(flag);
  return threadMaker(jobs, WORKER);
}
