import { fileURLToPath } from 'node:url';
import { createExactKernel, type ExactKernel, type ExactScript } from '../../src/solid/exact/exact-kernel.js';
import { compiled, exactPackage, exactWriter } from '../../src/work/exact/exact-writer.js';

/** Whether the optional package of exact bodies is installed; tests that need it say so in their names where it is not. */
export const HAS_EXACT = isThere();
export const NEEDS_EXACT = HAS_EXACT ? '' : ' (NOT RUN: npm install brings the optional package)';

function isThere(): boolean {
  try {
    exactPackage([import.meta.url]);
    return true;
  } catch {
    return false;
  }
}

let module: Promise<WebAssembly.Module> | undefined;

/** An exact kernel of one's own, of what was compiled once. */
export async function exactKernel(): Promise<ExactKernel> {
  const { script, wasm } = exactPackage([import.meta.url]);
  module ??= compiled(wasm);
  const { default: load } = (await import(script)) as { default: ExactScript };
  return createExactKernel(load, await module);
}

/** The package's script and its WebAssembly, as files. */
export function exactFiles(): [script: string, wasm: string] {
  const { script, wasm } = exactPackage([import.meta.url]);
  return [fileURLToPath(script), wasm];
}

/** The command's writer of STEP files. */
export const commandWriter = () => exactWriter(process.cwd());
