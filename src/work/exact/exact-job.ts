import { createExactKernel, type ExactScript } from '../../solid/exact/exact-kernel.js';
import { type ExactRequest, exactPart } from '../../solid/exact/exact-part.js';

/** What one file is written from; plain data, so that it can go to a thread. */
export interface ExactJob {
  /** address of the optional package's script */
  readonly script: string;
  /** its WebAssembly, compiled once for all threads */
  readonly wasm: WebAssembly.Module;
  readonly request: ExactRequest;
}

/** Loads the exact kernel, writes one file with it, and lets go of both. */
export async function exactJob({ script, wasm, request }: ExactJob): Promise<string> {
  const { default: load } = (await import(script)) as { default: ExactScript };
  return exactPart(await createExactKernel(load, wasm), request).step;
}
