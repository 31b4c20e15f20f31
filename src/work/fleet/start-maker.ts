import { existsSync } from 'node:fs';
import { createKernel } from '../../solid/kernel.js';
import { localMaker, type Maker, threadMaker } from './makers.js';

/** The bundled worker lies beside this file's bundle; run from the sources there is none, and this thread does the work. */
const WORKER = new URL('./fleet-worker.js', import.meta.url);

/** A maker of so many threads. */
export function startMaker(jobs: number): Maker {
  return existsSync(WORKER) ? threadMaker(jobs, WORKER) : localMaker({ kernel: createKernel() });
}
