import { readFile } from 'node:fs/promises';
import { createExactKernel, type ExactScript } from '../../solid/exact/exact-kernel.js';
import { type ExactRequest, exactPart } from '../../solid/exact/exact-part.js';

/** Where the optional package lies on this disk. */
export interface ExactPackage {
  /** address of its script */
  readonly script: string;
  /** file of its WebAssembly */
  readonly wasm: string;
}

/** Loads the exact kernel, writes one file with it, and lets go of both. */
export async function exactJob({ script, wasm }: ExactPackage, request: ExactRequest): Promise<string> {
  const [{ default: load }, bytes] = await Promise.all([
    import(script) as Promise<{ default: ExactScript }>,
    readFile(wasm),
  ]);
  return exactPart(await createExactKernel(load, bytes), request).step;
}
