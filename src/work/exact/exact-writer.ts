import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';
import { EXACT_PACKAGE } from '../../solid/exact/exact-kernel.js';
import type { ExactWriter } from '../../solid/exact/exact-part.js';
import { fault } from '../../units/faults.js';
import { type ExactPackage, exactJob } from './exact-job.js';
import type { ExactAnswer, ExactJobData } from './worker.js';

/** The bundled worker lies beside this file's bundle; run from the sources there is none, and this thread does the work. */
const WORKER = new URL('./exact-worker.js', import.meta.url);

/**
 * A writer of STEP files. Each part gets a thread and a kernel of its own, since booleans of threads keep memory that
 * only ends with them.
 *
 * @param cwd where the package is looked for besides the place of this program
 * @throws InputError the optional package is not installed, with how to install it
 */
export function exactWriter(cwd: string): ExactWriter {
  const from = exactPackage([import.meta.url, pathToFileURL(join(cwd, 'any.js')).href]);
  return (request) => (existsSync(WORKER) ? inThread({ from, request }) : exactJob(from, request));
}

/** @throws InputError it lies beside none of the places */
export function exactPackage(places: readonly string[]): ExactPackage {
  for (const place of places) {
    const { resolve } = createRequire(place);
    try {
      const wasm = resolve(EXACT_PACKAGE.wasm);
      // its entry for require is another script than the one that is imported
      return { wasm, script: pathToFileURL(wasm.replace(/\.wasm$/, '.js')).href };
    } catch {
      // not beside this one
    }
  }
  throw fault('--formats', 'step', `needs an optional package: npm install ${EXACT_PACKAGE.name}`);
}

function inThread(data: ExactJobData): Promise<string> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(WORKER, { workerData: data });
    worker.once('message', (answer: ExactAnswer) => {
      if ('step' in answer) resolve(answer.step);
      else reject(new Error(answer.message));
      worker.terminate();
    });
    worker.once('error', reject);
    worker.once('exit', (code) => reject(new Error(`the thread of the exact kernel ended with ${code}`)));
  });
}
