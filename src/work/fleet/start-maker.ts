import { existsSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';
import { createKernel } from '../../solid/kernel.js';
import { localMaker, type Maker, threadMaker } from './makers.js';

/** The bundled worker lies beside this file's bundle; run from the sources there is none, and this thread does the work. */
const WORKER = new URL('./fleet-worker.js', import.meta.url);

/**
 * How the engine shall treat long runs of the same work; unknown flags are passed over. Measured on 400 parts, these
 * spare a quarter of the processor time.
 *
 * A full collection throws away the compiled code of every callback that no part in hand holds, and the next part
 * compiles it again: a heap of 128 MB to begin with makes that rare. Compiling only what stays hot leaves the second
 * processor to the second worker.
 */
const LONG_RUN = ['--initial-heap-size=128', '--interrupt-budget=270000'];

/** A maker of so many threads. */
export function startMaker(jobs: number): Maker {
  if (!existsSync(WORKER)) return localMaker({ kernel: createKernel() });
  for (const flag of LONG_RUN) setFlagsFromString(flag);
  return threadMaker(jobs, WORKER);
}
