import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';
import { EXACT_PACKAGE } from '../../solid/exact/exact-kernel.js';
import type { ExactWriter } from '../../solid/exact/exact-part.js';
import { fault } from '../../units/faults.js';
import { type ExactJob, exactJob } from './exact-job.js';
import type { ExactAnswer } from './worker.js';

/** Where the optional package lies on this disk. */
export interface ExactPackage {
  /** address of its script */
  readonly script: string;
  /** file of its WebAssembly */
  readonly wasm: string;
}

/** The bundled worker lies beside this file's bundle; run from the sources there is none, and this thread does the work. */
const WORKER = new URL('./exact-worker.js', import.meta.url);

/**
 * A writer of STEP files. Each part gets a thread and a kernel of its own, since booleans of threads keep memory that
 * only ends with them. All share one compiled kernel: compiling it takes longer than most bodies, and its code some
 * 200 MB.
 *
 * @param cwd where the package is looked for besides the place of this program
 * @throws InputError the optional package is not installed, with how to install it
 */
export function exactWriter(cwd: string): ExactWriter {
  const { script, wasm: file } = exactPackage([import.meta.url, pathToFileURL(join(cwd, 'any.js')).href]);
  let wasm: Promise<WebAssembly.Module> | undefined;
  return async (request) => {
    wasm ??= compiled(file);
    const job = { script, wasm: await wasm, request };
    return existsSync(WORKER) ? inThread(job) : exactJob(job);
  };
}

/** The WebAssembly in a file, ready for any number of threads. */
export async function compiled(file: string): Promise<WebAssembly.Module> {
  return WebAssembly.compile(await readFile(file));
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

/** The thread has ended, and its memory with it, before there is an answer. */
async function inThread(job: ExactJob): Promise<string> {
  const worker = new Worker(WORKER, { workerData: job });
  const answer = await new Promise<ExactAnswer>((resolve, reject) => {
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', (code) => reject(new Error(`the thread of the exact kernel ended with ${code}`)));
  });
  await worker.terminate();
  if ('step' in answer) return answer.step;
  throw new Error(answer.message);
}
