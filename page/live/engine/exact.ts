import type { ExactRequest } from '../../../src/solid/exact/exact-part.js';
import type { ExactPackage } from '../state/exact-package.js';
import type { ExactTask, ExactText } from './exact-worker.js';

/** Writes STEP files with the package that a person handed over. */
export type WriteExact = (exact: ExactPackage, request: ExactRequest) => Promise<ExactText>;

/**
 * A writer of STEP files. Each gets a thread and a kernel of its own, since booleans of threads keep memory that only ends
 * with them. The package's script stands after ours in one text: a page that may load nothing imports nothing either.
 *
 * @param ours the script of the thread
 */
export function exactWriter(ours: ArrayBuffer): WriteExact {
  return ({ script, wasm }, request) =>
    new Promise((resolve) => {
      const url = URL.createObjectURL(new Blob([ours, '\n', script], { type: 'text/javascript' }));
      const worker = new Worker(url);
      const end = (answer: ExactText) => {
        worker.terminate();
        URL.revokeObjectURL(url);
        resolve(answer);
      };
      worker.addEventListener('message', ({ data }: MessageEvent<ExactText>) => end(data));
      worker.addEventListener('error', (event) => {
        event.preventDefault();
        end({ refused: 'the script that was handed over does not run here; forget it and hand over another' });
      });
      worker.postMessage({ wasm, request } satisfies ExactTask);
    });
}
