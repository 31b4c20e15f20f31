import { createExactKernel, type ExactScript } from '../../../src/solid/exact/exact-kernel.js';
import { type ExactRequest, exactPart } from '../../../src/solid/exact/exact-part.js';
import { Invoker } from './invoker.js';

/** What one file is written from. */
export interface ExactTask {
  readonly wasm: ArrayBuffer;
  readonly request: ExactRequest;
}

/** The text of the file, or why there is none. */
export type ExactText = { readonly step: string } | { readonly refused: string };

/** The script that a person handed over stands after this one; it takes its `Function` here, and leaves what it exports. */
const shared = globalThis as { exactFunction?: typeof Invoker; exactScript?: ExactScript };
shared.exactFunction = Invoker;

addEventListener('message', async ({ data }: MessageEvent<ExactTask>) => {
  const answer: ExactText = await write(data).then(
    (step) => ({ step }),
    (error: unknown) => ({ refused: error instanceof Error ? error.message : String(error) }),
  );
  postMessage(answer);
});

async function write({ wasm, request }: ExactTask): Promise<string> {
  const made = WebAssembly.compile(wasm).then((module) => createExactKernel(shared.exactScript!, module));
  const kernel = await made.catch(() => {
    throw new Error(
      'the file that was handed over holds no exact kernel that runs here; forget it and hand over another',
    );
  });
  return exactPart(kernel, request).step;
}
